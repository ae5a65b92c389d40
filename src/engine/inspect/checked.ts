import type { Check, Look } from '#model/check.ts'
import type { Finding } from '#model/finding.ts'
import type { ShopFields } from '#model/shop-record.ts'
import type { Sum } from '#model/sum.ts'
import { aboveUm, barReadingsOf, type CheckBody, meanHeightMm, zeroMmOf } from '#engine/inspect/check-readings.ts'
import { checkFindings } from '#engine/inspect/check-findings.ts'
import type { BarReadings } from '#engine/inspect/shape.ts'
import { sumOfShapes } from '#engine/inspect/shape-sum.ts'
import { type ShapedBar, type ShapedPair, type ShapeQuestion, shapesOf } from '#engine/inspect/shapes.ts'
import { type TurnedOver, turnOverFrom } from '#engine/inspect/turn-over-from.ts'
import { sumOfTurnOver } from '#engine/inspect/turn-over-sum.ts'
import { turnOverGrows } from '#engine/inspect/turn-over-uncertainty.ts'
import { type UseLimits, usesProved, type UseVerdict } from '#engine/inspect/uses-proved.ts'
import { useLimits } from '#engine/rack/use-limits.ts'
import { worstUses } from '#engine/inspect/worst-uses.ts'
import { commonGuardFactor } from '#engine/inspect/verdict.ts'

/** What a check says about one bar. */
export type CheckedBar = {
  readonly id: string
  /** Mean over its places (of face A for `turn-over`: the local height in the middle); null: none was read. */
  readonly heightMm: number | null
  /** Standard uncertainty of that height; null: not known. */
  readonly uHeightUm: number | null
  /** What its profile is drawn from; null below two whole stations. */
  readonly readings: BarReadings | null
  /** Null for `turn-over`, whose readings mix height and bend. */
  readonly shape: ShapedBar | null
  readonly turnOver: TurnedOver | null
  /** Of its single readings, as `height` and `parallelism` follow from them; for `turn-over` before it grows (`turnOverGrows`). Null: not known. */
  readonly budgets: ShapedBar['uncertainty'] | null
  /** Standard uncertainty of its parallelism; null: not known. */
  readonly uUm: number | null
  /** How parallel it is proved to be; null without uncertainty. */
  readonly provedToUm: number | null
  readonly uses: readonly UseVerdict[]
  readonly look: Look | null
}

export type Checked = {
  readonly method: Check['method']
  /** What µm count from. */
  readonly zeroMm: number
  readonly bars: readonly CheckedBar[]
  /** The second of two bars against the first. */
  readonly pair: ShapedPair | null
  /** For each use the worst of both bars and of their difference; empty unless all are judged. */
  readonly pairUses: readonly UseVerdict[]
  /** Highest less lowest mean height of the bars. */
  readonly spreadUm: number | null
  readonly findings: readonly Finding[]
  readonly sum: readonly Sum[]
}

export type CheckedWith = {
  readonly limitsUm: ShopFields['limitsUm']
  /** Length of a bar by its id; null: not known. */
  readonly lengthMmOf: (bar: string) => number | null
}

/** The day of a check is the first ten letters of its time. */
export type CheckedQuestion = CheckBody & Pick<Check, 'atIso'>

/** What a check says: shapes with their uncertainty, what they prove for each use, what to look at again. */
export function checkedOf(check: CheckedQuestion, { limitsUm, lengthMmOf }: CheckedWith): Checked {
  const ids = [...new Set([...check.readings.map(({ bar }) => bar), ...check.looks.map(({ bar }) => bar)])]
  const zeroMm = zeroMmOf(check), limits = useLimits(limitsUm)
  const readingsOf = new Map(ids.flatMap((id) => { const readings = barReadingsOf(check, id, lengthMmOf(id)); return readings ? [[id, readings] as const] : [] }))
  const shaped = check.method === 'stated' || readingsOf.size === 0 ? null : shapesWith(check, [...readingsOf.values()], limits)
  const bars = ids.map((id) => barWith(check, id, shaped?.answer.bars.find((bar) => bar.id === id) ?? null, readingsOf.get(id) ?? null, lengthMmOf(id), limits))
  const pair = check.method === 'turn-over' || ids.length !== 2 ? null : shaped?.answer.pair ?? null
  const heights = bars.flatMap((bar) => bar.heightMm ?? [])
  return {
    method: check.method, zeroMm, bars, pair, pairUses: pair ? worstUses([...bars.map(({ uses }) => uses), pair.uses ?? []]) : [],
    spreadUm: heights.length < 2 ? null : aboveUm(Math.max(...heights), Math.min(...heights)),
    findings: [...readingFindings(check, bars, shaped?.answer.findings ?? []), ...checkFindings(check, bars, pair)],
    sum: check.method === 'turn-over' ? bars.flatMap((bar) => turnOverSums(bar, zeroMm)) : shaped ? sumOfShapes(shaped.question, shaped.answer) : [],
  }
}

/** Of single readings; the zero is one for all bars, and of faces turned over a lone high one may be the bend. */
function readingFindings({ method }: CheckedQuestion, bars: readonly CheckedBar[], findings: readonly Finding[]): readonly Finding[] {
  const turned = bars.flatMap(({ id, turnOver }) => (turnOver?.findings ?? []).map(({ code, facts }) => ({ code, facts: { bar: id, ...facts } })))
  return [...turned, ...findings.filter(({ code }) => code !== 'zero-drifted' && (method !== 'turn-over' || code !== 'lone-high-reading'))]
}

function turnOverSums({ id, turnOver, uUm, provedToUm }: CheckedBar, zeroMm: number): readonly Sum[] {
  if (!turnOver) return []
  const proof: readonly Sum[] = provedToUm === null ? [] : [{
    formula: 'proved-to', result: { name: 'provedToUm', value: provedToUm }, inputs: { valueUm: turnOver.parallelismUm, guardFactor: commonGuardFactor, uUm }, sources: ['ISO-14253-1'],
  }]
  return [...sumOfTurnOver({ zeroMm }, turnOver), ...proof].map((sum) => ({ ...sum, inputs: { bar: id, ...sum.inputs } }))
}

function shapesWith(check: CheckedQuestion, bars: readonly BarReadings[], limitsUm: UseLimits) {
  const readWith = check.took?.readWith ?? null
  const question: ShapeQuestion = { zeroMm: zeroMmOf(check), bars, noiseUm: readWith?.repeatabilityUm ?? null, readWith, limitsUm: readWith && limitsUm }
  return { question, answer: shapesOf(question) }
}

function barWith(check: CheckedQuestion, id: string, shape: ShapedBar | null, readings: BarReadings | null, lengthMm: number | null, limits: UseLimits): CheckedBar {
  const own = check.readings.filter(({ bar }) => bar === id), turnOver = check.method === 'turn-over' ? turnOverFrom(check, id, lengthMm) : null
  const uUm = shape?.uncertainty ? shape.uncertainty.parallelism.u * turnOverGrows(check.method) : null
  const valueUm = check.method === 'turn-over' ? turnOver?.parallelismUm ?? null : shape?.parallelismUm ?? null
  return {
    id, readings, turnOver,
    heightMm: check.method === 'turn-over' ? turnOver?.heightAtMiddleMm ?? null : meanHeightMm(own),
    uHeightUm: shape?.uncertainty ? shape.uncertainty.height.u * turnOverGrows(check.method) : null,
    shape: check.method === 'turn-over' ? null : shape,
    budgets: shape?.uncertainty ?? null,
    uUm, provedToUm: valueUm === null || uUm === null ? null : valueUm + commonGuardFactor * uUm,
    uses: valueUm === null || uUm === null ? [] : usesProved(valueUm, uUm, limits),
    look: check.looks.find(({ bar }) => bar === id) ?? null,
  }
}
