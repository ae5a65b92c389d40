import { fitLine } from '#engine/numeric/line-fit.ts'
import { meanOf, totalOf } from '#engine/numeric/total.ts'

/** Readings of one bar: `lines[line][station]` the repeats at that place in µm above the zero, stations in mm from the marked end. */
export type BarReadings = {
  readonly id: string
  readonly stationsMm: readonly number[]
  readonly lines: readonly (readonly (readonly number[])[])[]
  /** Over which taper and twist are told; null: from the first station to the last. */
  readonly lengthMm: number | null
  /** What the indicator showed on the zero again at the end; null: not read. */
  readonly closingZeroUm: number | null
}

export type BarShape = {
  readonly meanHeightMm: number
  /** Largest less smallest station over all lines: the plate stands in for the datum. */
  readonly parallelismUm: number
  /** Positive: higher at the unmarked end. */
  readonly taperUm: number
  /** Null for two readings. */
  readonly taperSeUm: number | null
  /** Positive: the middle is high (crown), negative: low (hollow). Null below three stations. */
  readonly crownUm: number | null
  /** Of two lines, second less first: how much more over the length. Null for one line. */
  readonly twistUm: number | null
  readonly acrossUm: number | null
  readonly driftUm: number | null
  /** Pooled over all places read more than once; null without. */
  readonly repeatabilityUm: number | null
  readonly repeatabilityDof: number
}

/** Stations from the marked end with their mean readings, line by line: what all figures are worked out from. */
export type StationValues = { readonly stationsMm: readonly number[]; readonly lines: readonly (readonly number[])[] }

/** Means of the repeats, in order of the stations. */
export function stationValuesOf({ stationsMm, lines }: BarReadings): StationValues {
  const order = stationsMm.map((_, i) => i).sort((i, j) => stationsMm[i]! - stationsMm[j]!)
  return { stationsMm: order.map((i) => stationsMm[i]!), lines: lines.map((line) => order.map((i) => meanOf(line[i]!))) }
}

/**
 * The shape of a bar, every station with equal weight. Drift is told and never taken out.
 *
 * @param zeroMm  what the zero stands for (a gauge block)
 * @param bar     at least two stations, no two alike, one or two lines, at least one reading at each place (`refuseReadings`)
 * @source SHAPE-RULES
 */
export function shapeOf(bar: BarReadings, zeroMm: number): BarShape {
  const { stationsMm, lines } = stationValuesOf(bar), values = lines.flat()
  const lengthMm = bar.lengthMm ?? stationsMm.at(-1)! - stationsMm[0]!
  const line = fitLine(lines.flatMap(() => stationsMm), values)
  const across = lines.length === 2 ? stationsMm.map((_, i) => lines[1]![i]! - lines[0]![i]!) : null
  const repeats = repeatabilityOf(bar.lines)
  return {
    meanHeightMm: zeroMm + meanOf(values) / 1000,
    parallelismUm: Math.max(...values) - Math.min(...values),
    taperUm: line.slope * lengthMm,
    taperSeUm: line.slopeSe === null ? null : line.slopeSe * lengthMm,
    crownUm: stationsMm.length < 3 ? null : meanOf(lines.map((line) => middleDeparture(stationsMm, line))),
    twistUm: across && fitLine(stationsMm, across).slope * lengthMm,
    acrossUm: across && meanOf(across),
    driftUm: bar.closingZeroUm,
    repeatabilityUm: repeats.sdUm, repeatabilityDof: repeats.dof,
  }
}

/** The middle station less the chord from the first to the last; of an even count the mean of the two in the middle. */
export function middleDeparture(xs: readonly number[], ys: readonly number[]): number {
  const last = xs.length - 1, perMm = (ys[last]! - ys[0]!) / (xs[last]! - xs[0]!)
  return meanOf(middlesOf(xs.length).map((i) => ys[i]! - ys[0]! - perMm * (xs[i]! - xs[0]!)))
}

/** The middle place, or the two of an even count. */
export const middlesOf = (count: number): readonly number[] => (count % 2 === 1 ? [(count - 1) / 2] : [count / 2 - 1, count / 2])

/** Scatter of the repeats, pooled over all places read more than once; null without. */
export function repeatabilityOf(lines: BarReadings['lines']): { sdUm: number | null; dof: number } {
  const places = lines.flat(), dof = places.reduce((sum, repeats) => sum + repeats.length - 1, 0)
  if (dof === 0) return { sdUm: null, dof }
  const squares = totalOf(places.flatMap((repeats) => { const mean = meanOf(repeats); return repeats.map((value) => (value - mean) ** 2) }))
  return { sdUm: Math.sqrt(squares / dof), dof }
}
