import { balanceOf, type ElasticQuestion, reachOf } from '#engine/setup/seat-elastic/springs.ts'
import { springsOn } from '#engine/setup/seat-elastic/stations.ts'
import { steelMPa } from '#engine/setup/hold/strength.ts'
import { gapsOf } from '#engine/setup/seat/plane.ts'
import { seatOf } from '#engine/setup/seat/seat.ts'
import { slopeFrom, type Support } from '#engine/setup/seat/support.ts'

/**
 * The down-force that would close every gap: an upper bound, for jaws, bed and part give as well. Null where no force up to a
 * meganewton does: the load stands so far aside that pressing lifts the other side.
 */
export type Closing = { readonly forceN: number | null; readonly gapUm: number }

const leastN = 1e-3, mostN = 1e6

/** @param gapUm  the largest gap there is to close */
export function closingOf(question: ElasticQuestion, gapUm: number): Closing {
  if (reachOf(question) !== 'inside') return { forceN: null, gapUm }
  const isClosed = (forceN: number): boolean => gapsOf(balanceOf({ ...question, forceN }).plane, question.springs).every((gap) => gap <= 0)
  let open = leastN, closed = leastN
  while (!isClosed(closed)) {
    if (closed >= mostN) return { forceN: null, gapUm }
    open = closed
    closed = Math.min(mostN, closed * 2)
  }
  for (let k = 0; k < 40 && closed - open > 1e-9 * closed; k += 1) {
    const middle = (open + closed) / 2
    if (isClosed(middle)) closed = middle; else open = middle
  }
  return { forceN: closed, gapUm }
}

/** The largest gap over any point as the part lies by itself, in any of the ways it may lie. */
export function gapToClose({ part, springs, jawSlopeUmPerMm }: ElasticQuestion): number {
  const seat = seatOf({ part, points: springs, jawSlopeUmPerMm })
  if (seat.status === 'tips' || seat.status === 'collinear' || seat.status === 'on-edge') return 0
  return Math.max(...(seat.status === 'seated' ? [seat] : seat.facetsAtLoad).flatMap(({ plane }) => gapsOf(plane, springs)))
}

/** What would close the gaps of a rigid part on steel bars as they stand; null where there are none. */
export function closingOn(support: Support, held: boolean): Closing | null {
  const springs = springsOn(support, { barMPa: steelMPa, partMPa: steelMPa, partHeightMm: null })
  const question = { part: support.part, springs, forceN: leastN, jawSlopeUmPerMm: held ? slopeFrom(support).value : null }, gapUm = gapToClose(question)
  return gapUm > 0 ? closingOf(question, gapUm) : null
}
