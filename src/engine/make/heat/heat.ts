import type { Cited } from '#model/cited.ts'
import type { Finding } from '#model/finding.ts'
import type { CitedBand, HardnessRow, HeatTable, QuenchMedium } from '#model/heat-table.ts'
import type { Situation } from '#model/situation.ts'
import { type Indication, indicationOf } from '#engine/make/heat/indication.ts'
import { type Temper, temperFor } from '#engine/make/heat/temper.ts'

/** Sizes as they go into the furnace. `hrc`: wanted, null where only a reading is judged; `measuredHrc`: read on the bars. */
export type HeatQuestion = {
  readonly table: HeatTable
  readonly hardness: readonly HardnessRow[]
  readonly thicknessMm: number
  readonly heightMm: number | null
  readonly lengthMm: number | null
  readonly hrc: number | null
  readonly measuredHrc: number | null
  readonly stressRelief: boolean
}

/** In °C and minutes at heat, counted from when the bars have reached it. Null: nothing to be told. */
export type HeatStep = Cited & {
  readonly step: 'stress relief' | 'preheat' | 'austenitise' | 'quench' | 'temper'
  readonly fromC: number | null
  readonly toC: number | null
  readonly fromMin: number | null
  readonly toMin: number | null
  readonly medium: QuenchMedium | null
  readonly times: number
}

/** By how much a size comes out larger; smaller where negative. */
export type Growth = Cited & { readonly size: 'height' | 'thickness' | 'length'; readonly sizeMm: number; readonly percent: number; readonly usualUm: number; readonly fromUm: number; readonly toUm: number }

export type Heat = {
  readonly steel: string
  /** What heats through: the smaller of thickness and height. */
  readonly sectionMm: number
  readonly steps: readonly HeatStep[]
  readonly temper: Temper | null
  readonly asQuenchedHrc: CitedBand | null
  readonly growth: readonly Growth[]
  /** Of the hardness measured, or else of the one wanted. */
  readonly indication: Indication | null
  readonly cautions: readonly Situation[]
  readonly findings: readonly Finding[]
}

/**
 * The schedule of hardening bars and tempering them to a wanted hardness, out of one table.
 *
 * A wanted hardness outside the table is refused; a measured one is taken, with a finding.
 *
 * @throws Refusal as `temperFor`
 */
export function heatOf(question: HeatQuestion): Heat {
  const { table, hrc, measuredHrc } = question, sectionMm = Math.min(question.thicknessMm, question.heightMm ?? Infinity), temper = hrc === null ? null : temperFor(table, hrc)
  const growth = growthOf(question), indication = indicationOf(question.hardness, measuredHrc ?? hrc ?? NaN)
  return {
    steel: table.steel, sectionMm, steps: stepsOf(question, sectionMm, temper), temper, asQuenchedHrc: table.asQuenchedHrc, growth, indication,
    cautions: ['furnace', ...(table.quench.medium === 'oil' ? ['quench' as const] : []), 'untempered'],
    findings: [...measuredFindings(question), ...edgeFinding(hrc, temper), ...growthFindings(growth), ...indicationFinding(indication), ...always],
  }
}

const always: readonly Finding[] = [{ code: 'heat-mates-together', facts: {} }, { code: 'skin-loses-carbon', facts: {} }]

function stepsOf({ table, stressRelief }: HeatQuestion, sectionMm: number, temper: Temper | null): readonly HeatStep[] {
  const { stressReliefC, preheatC, austenitiseC, soakMin, quench, quenchToC } = table, plain = { fromMin: null, toMin: null, medium: null, times: 1 }
  const atHeat = (step: HeatStep['step'], { from, to, source, standing }: CitedBand, more: Partial<HeatStep> = {}): HeatStep => ({ step, ...plain, fromC: from, toC: to, source, standing, ...more })
  return [
    ...(stressRelief && stressReliefC !== null ? [atHeat('stress relief', stressReliefC)] : []),
    ...(preheatC === null ? [] : [atHeat('preheat', preheatC)]),
    atHeat('austenitise', austenitiseC, { fromMin: soakFor(soakMin.from, table, sectionMm), toMin: soakFor(soakMin.to, table, sectionMm) }),
    { step: 'quench', ...plain, medium: quench.medium, fromC: quenchToC?.from ?? null, toC: quenchToC?.to ?? null, source: quench.source, standing: quench.standing },
    ...(temper === null ? [] : [temperStep(table, temper, sectionMm)]),
  ]
}

const soakFor = (minutes: number, { soakMin }: HeatTable, sectionMm: number): number => (soakMin.by === 'time' ? minutes : wholeMinutes((minutes * sectionMm) / 25))

function temperStep({ temperHold }: HeatTable, { atC, rows: [, { source, standing }] }: Temper, sectionMm: number): HeatStep {
  const minutes = wholeMinutes(Math.max(temperHold.leastMin, (temperHold.minPer25Mm * sectionMm) / 25))
  return { step: 'temper', fromC: atC, toC: atC, fromMin: minutes, toMin: minutes, medium: null, times: temperHold.times, source, standing }
}

/** Up to the next whole minute; what rounding alone is over starts none. */
const wholeMinutes = (minutes: number): number => Math.ceil(minutes - 1e-9)

function growthOf({ table: { growthPercent }, heightMm, thicknessMm, lengthMm }: HeatQuestion): readonly Growth[] {
  if (growthPercent === null) return []
  const { from, to, usual, source, standing } = growthPercent
  return ([['height', heightMm], ['thickness', thicknessMm], ['length', lengthMm]] as const).flatMap(([size, sizeMm]) =>
    sizeMm === null ? [] : [{ size, sizeMm, percent: usual, usualUm: 10 * usual * sizeMm, fromUm: 10 * from * sizeMm, toUm: 10 * to * sizeMm, source, standing }])
}

function measuredFindings({ table: { steel, asQuenchedHrc, tempering }, measuredHrc }: HeatQuestion): readonly Finding[] {
  if (measuredHrc === null) return []
  if (asQuenchedHrc !== null && measuredHrc > asQuenchedHrc.to) return [{ code: 'measured-above-published', facts: { measuredHrc, steel, fromHrc: asQuenchedHrc.from, toHrc: asQuenchedHrc.to, source: asQuenchedHrc.source } }]
  if (tempering.length === 0) return []
  const highest = Math.max(...tempering.map(({ toHrc }) => toHrc)), lowest = Math.min(...tempering.map(({ fromHrc }) => fromHrc))
  if (measuredHrc > highest) return [{ code: 'measured-above-tempered', facts: { measuredHrc, steel, mostHrc: highest } }]
  return measuredHrc < lowest ? [{ code: 'measured-below-table', facts: { measuredHrc, steel, leastHrc: lowest } }] : []
}

const edgeFinding = (hrc: number | null, temper: Temper | null): readonly Finding[] =>
  temper?.atEdge ? [{ code: 'hardness-at-edge', facts: { hrc, atC: temper.atC, fromHrc: temper.fromHrc, toHrc: temper.toHrc } }] : []

/** Growth never saves stock; shrinkage takes it away and is left on. */
function growthFindings(growth: readonly Growth[]): readonly Finding[] {
  return growth.flatMap(({ size, usualUm, fromUm, toUm }): Finding[] =>
    fromUm < 0 ? [{ code: 'may-shrink', facts: { size, byUm: -fromUm, toUm } }] : usualUm > 0 ? [{ code: 'growth-not-counted', facts: { size, usualUm, fromUm, toUm } }] : [])
}

const indicationFinding = (indication: Indication | null): readonly Finding[] =>
  indication === null ? [] : [{ code: 'conversion-indication', facts: { hrc: indication.hrc, hv: indication.hv, rmMPa: indication.rmMPa } }]
