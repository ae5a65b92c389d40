import type { Sum } from '#model/sum.ts'
import { type Use, uses } from '#model/wishes.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { longestMm, type RawObject } from '#engine/read/raw-object.ts'
import { steelApartPerC, steelPerC } from '#engine/inspect/check-uncertainty.ts'
import { readMethods } from '#model/read-methods.ts'
import type { ReadWith } from '#model/read-with.ts'
import { longestUm, mostBars, mostStations } from '#engine/inspect/reading-limits.ts'
import type { BarReadings } from '#engine/inspect/shape.ts'
import { sumOfShapes } from '#engine/inspect/shape-sum.ts'
import { type ShapeQuestion, type ShapesAnswer, shapesOf } from '#engine/inspect/shapes.ts'
import type { UseLimits } from '#engine/inspect/uses-proved.ts'

/**
 * The calculation `shape`: one raw case in, its answer out.
 *
 * @throws Refusal with a malformed code, then as `refuseReadings`, `too-few-bars`, `uncertainty-negative`, `size-not-positive`
 */
export function answerShape(raw: unknown): ShapesAnswer & Ignored & { readonly sum: readonly Sum[] } {
  const { value: question, ignored } = readCase(raw, (object): ShapeQuestion => ({
    zeroMm: object.number('zeroMm'),
    bars: object.list('bars', readBarReadings, mostBars),
    noiseUm: object.numberOr('noiseUm', null, longestUm),
    readWith: object.has('limitsUm') ? object.object('readWith', readReadWith) : object.objectOr('readWith', readReadWith, null),
    limitsUm: object.objectOr('limitsUm', readLimits, null),
  }))
  const answer = shapesOf(question)
  return { ...answer, ignored, sum: sumOfShapes(question, answer) }
}

const readBarReadings = (raw: RawObject): BarReadings => ({
  id: raw.text('id'),
  stationsMm: raw.numbers('stationsMm', longestMm, mostStations), lines: raw.numberTables('lines', longestUm, mostLines),
  lengthMm: raw.numberOr('lengthMm', null), closingZeroUm: raw.numberOr('closingZeroUm', null, longestUm),
})

/** A line near either edge of the bar, or one along its middle. */
const mostLines = 2

const readReadWith = (raw: RawObject): ReadWith => ({
  method: raw.wordOr('method', readMethods, 'compare'),
  resolutionUm: raw.number('resolutionUm', longestUm),
  limitUm: raw.numberOr('limitUm', null, longestUm), repeatabilityUm: raw.numberOr('repeatabilityUm', null, longestUm),
  plateFlatnessUm: raw.numberOr('plateFlatnessUm', null, longestUm),
  blockLimitUm: raw.numberOr('blockLimitUm', null, longestUm), blockUUm: raw.numberOr('blockUUm', null, longestUm),
  betweenC: raw.numberOr('betweenC', null), awayC: raw.numberOr('awayC', null),
  expansionPerC: raw.numberOr('expansionPerC', steelPerC), expansionApartPerC: raw.numberOr('expansionApartPerC', steelApartPerC),
})

const readLimits = (raw: RawObject): UseLimits => Object.fromEntries(
  uses.flatMap((use): [Use, number][] => (raw.has(use) ? [[use, raw.number(use, longestUm)]] : [])),
)
