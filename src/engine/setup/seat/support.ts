import type { SeatPart } from '#engine/setup/seat/seat.ts'
import type { SupportPoint } from '#engine/setup/seat/plane.ts'
import { leastSquares } from '#engine/numeric/least-squares.ts'
import type { HeightDeparture } from '#model/bar.ts'
import type { Side } from '#model/part.ts'

/** A bar as it stands under the part; its place is the corner with the smallest x and y. */
export type BarUnder = {
  readonly id: string
  readonly xMm: number
  readonly yMm: number
  readonly heightMm: number
  readonly thicknessMm: number
  readonly lengthMm: number
  /** The marked end is on the right. */
  readonly turned: boolean
  /** Departures from the height at stations from the marked end; none: even. */
  readonly heightsUm: readonly HeightDeparture[]
  /** Standard uncertainties: of the height as a whole, and of each station by itself. */
  readonly uUm: number
  readonly stationUUm: number
}

/** A figure with its standard uncertainty. */
export type Figure = { readonly value: number; readonly u: number }

/** What a part is set up on: bars, bed, and what the closed jaws do to it. Slopes rise from the fixed jaw across. */
export type Support = {
  readonly part: SeatPart
  readonly bars: readonly BarUnder[]
  readonly side: Side
  /** Readings of the bed at places in the plan, and the standard uncertainty of it under each bar. */
  readonly bedUm: readonly (readonly [xMm: number, yMm: number, um: number])[]
  readonly bedUUm: number
  /** Of the fixed jaw, from a ground block clamped at working torque; and of the part's side against its underside. */
  readonly jawSlopeUmPerMm: Figure
  readonly squarenessUmPerMm: Figure
  /** By how much closing lifts the part at the moving jaw. */
  readonly liftUm: Figure
}

/** A point with the bar it is on. */
export type PointOnBar = SupportPoint & { readonly bar: number }

/** Free where nothing squares the part at the fixed jaw; `both` where nobody knows. */
export function heldBy(side: Side): 'free' | 'jaw' | 'both' {
  return side === 'machined' ? 'jaw' : side === 'unknown' ? 'both' : 'free'
}

/**
 * Where the part may touch: each bar on its middle line, at its stations under the part and where it comes out from under it.
 * Heights in µm above the first bar, bed included.
 */
export function pointsOn({ part, bars, bedUm }: Support): readonly PointOnBar[] {
  const bed = bedFrom(bedUm)
  return bars.flatMap((bar, b) => {
    const aboveUm = (bar.heightMm - bars[0]!.heightMm) * 1000, yMm = bar.yMm + bar.thicknessMm / 2
    return profileUnder(bar, part.lengthMm).map(([xMm, um]) => ({ xMm, yMm, zUm: aboveUm + um + bed(xMm, yMm), bar: b }))
  })
}

/** The slope across that the closed jaws give a part held by its side, and what the uncertainty of each adds. */
export const slopeFrom = ({ part, jawSlopeUmPerMm, squarenessUmPerMm, liftUm }: Support): Figure => ({
  value: jawSlopeUmPerMm.value + squarenessUmPerMm.value + liftUm.value / part.widthMm,
  u: Math.hypot(jawSlopeUmPerMm.u, squarenessUmPerMm.u, liftUm.u / part.widthMm),
})

/** Departures of a bar by place along the part, from left to right, none beyond the part or the bar. */
function profileUnder(bar: BarUnder, lengthMm: number): readonly (readonly [xMm: number, um: number])[] {
  const stations = bar.heightsUm.map(([atMm, um]) => [bar.xMm + (bar.turned ? bar.lengthMm - atMm : atMm), um] as const).sort(([x], [other]) => x - other)
  const from = Math.max(0, bar.xMm), to = Math.min(lengthMm, bar.xMm + bar.lengthMm)
  const inside = stations.filter(([x]) => x > from && x < to)
  return [[from, departureAt(stations, from)] as const, ...inside, [to, departureAt(stations, to)] as const]
}

/** Straight between stations, even beyond the outer ones. */
function departureAt(stations: readonly (readonly [xMm: number, um: number])[], xMm: number): number {
  const right = stations.findIndex(([x]) => x >= xMm)
  if (right === -1) return stations.at(-1)?.[1] ?? 0
  const [x1, um1] = stations[right]!, [x0, um0] = stations[Math.max(0, right - 1)]!
  return x1 === x0 ? um1 : um0 + ((xMm - x0) / (x1 - x0)) * (um1 - um0)
}

/** The plane through the readings of the bed, by least squares; in line or fewer than three, along what they span. */
function bedFrom(readings: Support['bedUm']): (xMm: number, yMm: number) => number {
  if (readings.length === 0) return () => 0
  const xs = readings.map(([x]) => x), ys = readings.map(([, y]) => y), spans = (values: readonly number[]) => Math.max(...values) - Math.min(...values) > 0
  const columns = [xs.map(() => 1), ...(spans(xs) ? [xs] : []), ...(spans(ys) ? [ys] : [])], um = readings.map(([, , z]) => z)
  const [a = 0, ...slopes] = leastSquares(columns, um).coefficients, along = spans(xs) ? slopes[0]! : 0, across = spans(ys) ? slopes.at(-1)! : 0
  return (xMm, yMm) => a + along * xMm + across * yMm
}
