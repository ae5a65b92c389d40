import type { HardnessRow, HeatTable } from '#model/heat-table.ts'
import type { Sum } from '#model/sum.ts'
import { type Heat, heatOf, type HeatQuestion } from '#engine/make/heat/heat.ts'
import { readHeat, refuseHeat } from '#engine/make/heat/read-heat.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'

/** What a case may name instead of bringing it along. */
export type HeatBooks = { readonly tables: readonly HeatTable[]; readonly hardness: readonly HardnessRow[] }

/** The calculation `heat`: one raw case in, its answer out. @throws Refusal with a malformed code, then as `refuseHeat` and `heatOf` */
export function answerHeat(raw: unknown, { tables, hardness }: HeatBooks): Heat & Ignored & { readonly sum: readonly Sum[] } {
  const { value, ignored } = readCase(raw, (object) => readHeat(object, tables))
  refuseHeat(value)
  const question: HeatQuestion = { ...value, hardness }, heat = heatOf(question)
  return { ...heat, ignored, sum: sumOf(question, heat) }
}

function sumOf({ hrc, table: { soakMin, temperHold, growthPercent } }: HeatQuestion, { sectionMm, steps, temper, growth, indication }: Heat): readonly Sum[] {
  const atHeat = steps.find(({ step }) => step === 'austenitise')!, hold = steps.find(({ step }) => step === 'temper')
  return [
    ...(soakMin.by === 'section' ? [{ formula: 'soak-by-section', result: { name: 'soakMin', value: atHeat.toMin }, inputs: { minPer25: soakMin.to, sectionMm }, sources: [soakMin.source] }] : []),
    ...(temper === null ? [] : [temperSum(temper, hrc)]),
    ...(hold === undefined ? [] : [{ formula: 'temper-hold', result: { name: 'temperMin', value: hold.toMin }, inputs: { minPer25: temperHold.minPer25Mm, sectionMm, leastMin: temperHold.leastMin }, sources: [temperHold.source] }]),
    ...growth.map(({ size, sizeMm, usualUm, percent }) => ({ formula: 'growth-of-size', result: { name: `${size}GrowthUm`, value: usualUm }, inputs: { sizeMm, percent }, sources: [growthPercent!.source] })),
    ...(indication === null ? [] : [{ formula: 'hardness-converted', result: { name: 'hv', value: indication.hv }, inputs: { hrc: indication.hrc }, sources: [indication.source] }]),
  ]
}

function temperSum({ atC, rows: [low, high] }: NonNullable<Heat['temper']>, hrc: number | null): Sum {
  return {
    formula: low === high ? 'temper-row' : 'temper-between', result: { name: 'temperC', value: atC }, inputs: { hrc, lowC: low.atC, highC: high.atC },
    sources: [...new Set([low.source, high.source])],
  }
}
