import type { Finding } from '#model/finding.ts'
import type { Sum } from '#model/sum.ts'
import { type Loose, looseOf, seatFindings } from '#engine/setup/seat/loose.ts'
import { refuseSeat } from '#engine/setup/seat/read-part.ts'
import { refuseSupport } from '#engine/setup/seat/read-support.ts'
import { type Seat, seatOf, type SeatQuestion } from '#engine/setup/seat/seat.ts'
import { seatSum } from '#engine/setup/seat/seat-sum.ts'
import { heldBy, pointsOn, slopeFrom, type Support } from '#engine/setup/seat/support.ts'

export type SeatTold = Seat & { readonly loose: Loose; readonly findings: readonly Finding[]; readonly sum: readonly Sum[] }

/** @param bars  the bar of each point and their ids; null: bare points */
export function seatTold(question: SeatQuestion, bars: { readonly of: readonly number[]; readonly ids: readonly string[] } | null, toleranceUm: number | null): SeatTold {
  const seat = seatOf(question), loose = seat.status === 'seated' ? looseOf(question.points, seat.gapsUm, bars?.of ?? null, question.part) : { bars: [], corners: [] }
  return { ...seat, loose, findings: seatFindings(seat, loose, question, bars?.ids ?? null, toleranceUm), sum: seatSum(question, seat) }
}

/** The seat on bars as they stand, free or as the fixed jaw holds the part. */
export function seatOnSupport(support: Support, held: boolean, toleranceUm: number | null): SeatTold {
  const points = pointsOn(support), bars = { of: points.map(({ bar }) => bar), ids: support.bars.map(({ id }) => id) }
  const told = seatTold({ part: support.part, points, jawSlopeUmPerMm: held ? slopeFrom(support).value : null }, bars, toleranceUm), unsure = held ? cannotTell(support) : null
  return unsure === null ? told : { ...told, findings: [unsure, ...told.findings] }
}

/**
 * As the side at the fixed jaw has it; `ifHeld` beside the free seat where nobody knows.
 *
 * @throws Refusal as `refuseSupport`, `wish-negative`
 */
export function seatsOnSupport(support: Support, toleranceUm: number | null): SeatTold & { readonly ifHeld?: SeatTold } {
  refuseSupport(support)
  refuseSeat(support.bars.length, toleranceUm)
  const mode = heldBy(support.side), seat = seatOnSupport(support, mode === 'jaw', toleranceUm)
  return mode === 'both' ? { ...seat, ifHeld: seatOnSupport(support, true, toleranceUm) } : seat
}

/** About 95 %. @source GUM */
const coverage = 2

/** Where lift, slope or their uncertainty come to more than the bars differ, nobody can tell which bar will be loose. */
function cannotTell(support: Support): Finding | null {
  const { bars, liftUm } = support, middles = bars.map(({ yMm, thicknessMm }) => yMm + thicknessMm / 2), spanMm = Math.max(...middles) - Math.min(...middles)
  const points = pointsOn(support), means = bars.map((_, b) => { const own = points.filter(({ bar }) => bar === b); return own.reduce((sum, { zUm }) => sum + zUm, 0) / own.length })
  const differenceUm = Math.max(...means) - Math.min(...means), slope = slopeFrom(support)
  const jawsUm = Math.max(Math.abs(slope.value) * spanMm, coverage * slope.u * spanMm, Math.abs(liftUm.value), coverage * liftUm.u)
  return spanMm > 0 && jawsUm > differenceUm ? { code: 'cannot-tell-which-bar', facts: { differenceUm, jawsUm } } : null
}
