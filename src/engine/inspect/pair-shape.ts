import { meanOf } from '#engine/numeric/total.ts'
import { sameStationMm } from '#engine/inspect/refuse-readings.ts'
import { type BarReadings, stationValuesOf } from '#engine/inspect/shape.ts'

/** Two bars that are to be mates, the second against the first. */
export type PairShape = {
  readonly meanDifferenceUm: number
  readonly allWithinUm: number
  /** Largest difference at the same line and station; null where stations or lines do not agree. */
  readonly worstAsLaidUm: number | null
  /** With the second bar turned end for end, which also exchanges its lines; null unless the stations lie evenly about their middle. */
  readonly worstTurnedUm: number | null
  readonly betterWay: 'as laid' | 'turned' | 'either' | null
}



/** µm. Two ways this near are equally good: the rounding of differences. */
const equalUm = 1e-9

/** How two bars read from one zero go together. @source SHAPE-RULES */
export function pairShapeOf(first: BarReadings, second: BarReadings): PairShape {
  const a = stationValuesOf(first), b = stationValuesOf(second), all = [...a.lines.flat(), ...b.lines.flat()]
  const alike = a.lines.length === b.lines.length && a.stationsMm.length === b.stationsMm.length && a.stationsMm.every((x, i) => Math.abs(x - b.stationsMm[i]!) <= sameStationMm)
  const ends = a.stationsMm[0]! + a.stationsMm.at(-1)!
  const even = alike && a.stationsMm.every((x, i) => Math.abs(x + a.stationsMm.at(-1 - i)! - ends) <= sameStationMm)
  const worstAsLaidUm = alike ? worst(a.lines, b.lines) : null
  const worstTurnedUm = even ? worst(a.lines, b.lines.toReversed().map((line) => line.toReversed())) : null
  return {
    meanDifferenceUm: meanOf(b.lines.flat()) - meanOf(a.lines.flat()),
    allWithinUm: Math.max(...all) - Math.min(...all),
    worstAsLaidUm, worstTurnedUm,
    betterWay: worstAsLaidUm === null || worstTurnedUm === null ? null
      : Math.abs(worstAsLaidUm - worstTurnedUm) <= equalUm ? 'either' : worstAsLaidUm < worstTurnedUm ? 'as laid' : 'turned',
  }
}

const worst = (a: readonly (readonly number[])[], b: readonly (readonly number[])[]): number =>
  Math.max(...a.flatMap((line, l) => line.map((value, i) => Math.abs(value - b[l]![i]!))))
