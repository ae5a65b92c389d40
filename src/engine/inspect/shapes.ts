import type { Finding } from '#model/finding.ts'
import type { ReadWith } from '#model/read-with.ts'
import { Refusal } from '#model/refusal.ts'
import { meanRangeOf } from '#engine/numeric/mean-range.ts'
import type { BudgetAnswer } from '#engine/inspect/budget.ts'
import { checkUncertainty, type CheckUncertainty } from '#engine/inspect/check-uncertainty.ts'
import { type PairShape, pairShapeOf } from '#engine/inspect/pair-shape.ts'
import { findingsOf } from '#engine/inspect/reading-findings.ts'
import { refuseReadings } from '#engine/inspect/refuse-readings.ts'
import { type BarReadings, type BarShape, repeatabilityOf, shapeOf } from '#engine/inspect/shape.ts'
import { type UseLimits, usesProved, type UseVerdict } from '#engine/inspect/uses-proved.ts'
import { commonGuardFactor } from '#engine/inspect/verdict.ts'

/** Bars of one check: two are looked at as a pair as well. */
export type ShapeQuestion = {
  /** What the zero stands for, such as a gauge block. */
  readonly zeroMm: number
  readonly bars: readonly BarReadings[]
  /** Scatter of single readings, where it is known: asks for the range bias. */
  readonly noiseUm: number | null
  /** Asks for the measuring uncertainty. */
  readonly readWith: ReadWith | null
  /** Asks what the bars are good for; needs `readWith`. */
  readonly limitsUm: UseLimits | null
}

export type ShapedBar = { readonly id: string } & BarShape & {
  /** Mean of the range that a perfect bar read as often with this scatter would show. */
  readonly rangeBiasUm?: number
  readonly uncertainty?: Pick<CheckUncertainty, 'height' | 'parallelism'>
  readonly provedToUm?: number
  readonly uses?: readonly UseVerdict[]
}
export type ShapedPair = PairShape & { readonly uncertainty?: Pick<CheckUncertainty, 'difference'>; readonly provedToUm?: number; readonly uses?: readonly UseVerdict[] }

export type ShapesAnswer = { readonly bars: readonly ShapedBar[]; readonly pair?: ShapedPair; readonly findings: readonly Finding[] }

/**
 * What the readings of one check say about its bars.
 *
 * @throws Refusal as `refuseReadings`, `too-few-bars`, `uncertainty-negative`, `size-not-positive` (a limit)
 */
export function shapesOf(question: ShapeQuestion): ShapesAnswer {
  const { bars, zeroMm, noiseUm } = question
  refuseReadings(bars)
  refuseUnfit(question)
  const shaped = bars.map((bar): ShapedBar => {
    const shape = shapeOf(bar, zeroMm), uncertainty = uncertaintyOf(question, [bar])
    return {
      id: bar.id, ...shape,
      ...(noiseUm === null ? {} : { rangeBiasUm: meanRangeOf(bar.lines.flat().length) * noiseUm }),
      ...(uncertainty ? { uncertainty: { height: uncertainty.height, parallelism: uncertainty.parallelism }, ...proof(question, shape.parallelismUm, uncertainty.parallelism) } : {}),
    }
  })
  return { bars: shaped, ...(bars.length === 2 ? { pair: pairOf(question) } : {}), findings: [...bars.flatMap(findingsOf), ...scatterFindings(question)] }
}

/** The second of two bars against the first. */
function pairOf(question: ShapeQuestion): ShapedPair {
  const pair = pairShapeOf(question.bars[0]!, question.bars[1]!), uncertainty = uncertaintyOf(question, question.bars)
  if (!uncertainty || pair.worstAsLaidUm === null) return pair
  const worstUm = Math.min(pair.worstAsLaidUm, pair.worstTurnedUm ?? Infinity)
  return { ...pair, uncertainty: { difference: uncertainty.difference }, ...proof(question, worstUm, uncertainty.difference) }
}

/** Without repeats and with nothing known beforehand the uncertainty lacks its scatter, which has to be said. */
function scatterFindings({ readWith, bars }: ShapeQuestion): readonly Finding[] {
  return !readWith || readWith.repeatabilityUm !== null || repeatabilityOf(bars.flatMap((bar) => bar.lines)).dof > 0 ? [] : [{ code: 'scatter-not-known', facts: {} }]
}

/** The scatter is that of all repeats of the check: one hand, one instrument. */
function uncertaintyOf({ readWith, bars, zeroMm }: ShapeQuestion, judged: readonly BarReadings[]): CheckUncertainty | null {
  if (!readWith) return null
  const places = judged.flatMap((bar) => bar.lines.flat()), scatter = repeatabilityOf(bars.flatMap((bar) => bar.lines))
  return checkUncertainty(readWith, {
    heightMm: Math.max(...judged.map((bar) => shapeOf(bar, zeroMm).meanHeightMm)),
    repeatabilityUm: scatter.sdUm, repeatabilityDof: scatter.dof,
    readings: places.flat().length, perPlace: Math.min(...places.map((repeats) => repeats.length)),
    driftUm: judged.reduce<number | null>((most, { closingZeroUm }) => (closingZeroUm === null || Math.abs(closingZeroUm) < Math.abs(most ?? 0) ? most : closingZeroUm), null),
  })
}

function proof({ limitsUm }: ShapeQuestion, valueUm: number, { u }: BudgetAnswer): { provedToUm: number; uses?: readonly UseVerdict[] } {
  return { provedToUm: valueUm + commonGuardFactor * u, ...(limitsUm ? { uses: usesProved(valueUm, u, limitsUm) } : {}) }
}

function refuseUnfit({ bars, noiseUm, readWith, limitsUm }: ShapeQuestion): void {
  if (bars.length === 0) throw new Refusal('too-few-bars', { field: 'bars', given: 0, needed: 1 })
  const spreads = [['noiseUm', noiseUm] as const, ...Object.entries(readWith ?? {}).map(([key, value]) => [`readWith.${key}`, value] as const)]
  for (const [field, given] of spreads) if (typeof given === 'number' && given < 0) throw new Refusal('uncertainty-negative', { field, given, needed: { least: 0 } })
  for (const [use, given] of Object.entries(limitsUm ?? {})) if (given <= 0) throw new Refusal('size-not-positive', { field: `limitsUm.${use}`, given, needed: { above: 0 } })
}
