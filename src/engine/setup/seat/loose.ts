import type { Finding } from '#model/finding.ts'
import type { SupportPoint } from '#engine/setup/seat/plane.ts'
import type { Seat, SeatPart, SeatQuestion } from '#engine/setup/seat/seat.ts'

/** A bar that does not carry: the least and the largest gap over it. */
export type LooseBar = { readonly bar: number; readonly leastGapUm: number; readonly mostGapUm: number }

export const corners = ['fixed-left', 'fixed-right', 'moving-left', 'moving-right'] as const
export type Corner = (typeof corners)[number]
/** A corner of what carries the part that does not touch: the point nearest to that corner of the part. */
export type LooseCorner = { readonly corner: Corner; readonly point: number; readonly gapUm: number }

export type Loose = { readonly bars: readonly LooseBar[]; readonly corners: readonly LooseCorner[] }

/** Which bars and corners do not touch where the part is settled. @param barOf  the bar of each point; null where nobody said */
export function looseOf(points: readonly SupportPoint[], gapsUm: readonly number[], barOf: readonly number[] | null, part: SeatPart): Loose {
  const bars = [...new Set(barOf ?? [])].sort((a, b) => a - b).map((bar) => {
    const gaps = gapsUm.filter((_, i) => barOf![i] === bar)
    return { bar, leastGapUm: Math.min(...gaps), mostGapUm: Math.max(...gaps) }
  })
  const nearest = corners.map((corner) => ({ corner, point: nearestTo(points, cornerMm(corner, part)) }))
  return { bars: bars.filter(({ leastGapUm }) => leastGapUm > 0), corners: nearest.map((one) => ({ ...one, gapUm: gapsUm[one.point]! })).filter(({ gapUm }) => gapUm > 0) }
}

/**
 * What the seat comes to, for a person: which bar is loose and by how much, why one often is, and whether it matters.
 *
 * @param ids  of the bars; null: they are named by their place in the list
 */
export function seatFindings(seat: Seat, loose: Loose, { part, jawSlopeUmPerMm }: SeatQuestion, ids: readonly string[] | null, toleranceUm: number | null): readonly Finding[] {
  if (seat.status === 'collinear') return [{ code: 'seat-collinear', facts: {} }]
  if (seat.status === 'tips') return [{ code: 'seat-tips', facts: { xMm: part.loadMm[0], yMm: part.loadMm[1] } }]
  if (seat.status === 'on-edge') return [{ code: 'on-edge', facts: {} }]
  if (seat.status === 'tie') return [{ code: 'seat-rocks', facts: { alongUm: seat.rockAlongUm, acrossUm: seat.rockAcrossUm } }]
  const overallUm = Math.abs(seat.tiltAlongUm) + Math.abs(seat.tiltAcrossUm)
  return [
    ...loose.bars.map(({ bar, leastGapUm }) => ({ code: 'bar-loose', facts: { bar: ids?.[bar] ?? bar, gapUm: leastGapUm } })),
    ...(loose.bars.length > 0 && jawSlopeUmPerMm !== null ? [{ code: 'one-often-loose', facts: {} }] : []),
    ...loose.corners.map(({ corner, gapUm }) => ({ code: 'corner-loose', facts: { corner, gapUm } })),
    ...(seat.facetCount > 1 ? [{ code: 'rocks-elsewhere', facts: { ways: seat.facetCount } }] : []),
    ...(toleranceUm === null ? [] : [{ code: overallUm > toleranceUm ? 'tilt-beyond-tolerance' : 'tilt-within-tolerance', facts: { overallUm, toleranceUm } }]),
  ]
}

const cornerMm = (corner: Corner, { lengthMm, widthMm }: SeatPart): readonly [number, number] => [corner.endsWith('left') ? 0 : lengthMm, corner.startsWith('fixed') ? 0 : widthMm]

/** The first of the nearest. */
function nearestTo(points: readonly SupportPoint[], [x, y]: readonly [number, number]): number {
  const away = points.map(({ xMm, yMm }) => Math.hypot(xMm - x, yMm - y))
  return away.indexOf(Math.min(...away))
}
