import type { Finding } from '#model/finding.ts'
import type { Sum } from '#model/sum.ts'
import { longestMm } from '#engine/read/raw-object.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { type Loose, looseOf, seatFindings } from '#engine/setup/seat/loose.ts'
import { longestUm, mostPoints, readSeatPart, refusePart, refuseSeat } from '#engine/setup/seat/read-part.ts'
import { readSupport, refuseSupport } from '#engine/setup/seat/read-support.ts'
import { type Seat, seatOf, type SeatQuestion } from '#engine/setup/seat/seat.ts'
import { seatSum } from '#engine/setup/seat/seat-sum.ts'
import { heldBy, pointsOn, slopeFrom, type Support } from '#engine/setup/seat/support.ts'

type Told = Seat & { readonly loose: Loose; readonly findings: readonly Finding[]; readonly sum: readonly Sum[] }
/** `ifHeld`: the answer if the fixed jaw squares the part, beside that of a free one, where nobody knows which. */
export type SeatAnswer = Told & Ignored & { readonly ifHeld?: Told }

const modes = ['free', 'jaw'] as const
type Case = { readonly question: SeatQuestion; readonly support: Support | null; readonly toleranceUm: number | null }

/**
 * The calculation `seat`: bare `points` with a `mode`, or `bars` as they stand with the part's side at the fixed jaw.
 *
 * @throws Refusal with a malformed code, then `size-not-positive`, `uncertainty-negative`, `too-few-bars`, `bar-off-part`, `too-few-points`, `wish-negative`
 */
export function answerSeat(raw: unknown): SeatAnswer {
  const { value: { question, support, toleranceUm }, ignored } = readCase(raw, (object): Case => {
    const toleranceUm = object.numberOr('toleranceUm', null, longestUm)
    if (!object.has('points') && object.has('bars')) {
      const support = readSupport(object)
      return { question: { part: support.part, points: [], jawSlopeUmPerMm: null }, support, toleranceUm }
    }
    const mode = object.word('mode', modes), points = object.rows('points', [longestMm, longestMm, longestUm], mostPoints)
    return {
      question: {
        part: object.object('part', readSeatPart)!, points: points.map(([xMm, yMm, zUm]) => ({ xMm: xMm!, yMm: yMm!, zUm: zUm! })),
        jawSlopeUmPerMm: mode === 'jaw' ? object.number('jawSlopeUmPerMm', longestUm) : null,
      },
      support: null, toleranceUm,
    }
  })
  if (support !== null) return { ...toldOn(support, toleranceUm), ignored }
  refusePart(question.part)
  refuseSeat(question.points.length, toleranceUm)
  return { ...told(question, null, toleranceUm), ignored }
}

function told(question: SeatQuestion, barOf: readonly number[] | null, toleranceUm: number | null): Told {
  const seat = seatOf(question), loose = seat.status === 'seated' ? looseOf(question.points, seat.gapsUm, barOf, question.part) : { bars: [], corners: [] }
  return { ...seat, loose, findings: seatFindings(seat, loose, question.part, toleranceUm), sum: seatSum(question, seat) }
}

function toldOn(support: Support, toleranceUm: number | null): Told & { readonly ifHeld?: Told } {
  refuseSupport(support)
  const points = pointsOn(support), barOf = points.map(({ bar }) => bar), slope = slopeFrom(support), mode = heldBy(support.side)
  refuseSeat(points.length, toleranceUm)
  const answer = (jawSlopeUmPerMm: number | null) => told({ part: support.part, points, jawSlopeUmPerMm }, barOf, toleranceUm)
  const held = (): Told => {
    const one = answer(slope.value), unsure = cannotTell(support)
    return unsure === null ? one : { ...one, findings: [unsure, ...one.findings] }
  }
  return mode === 'jaw' ? held() : mode === 'free' ? answer(null) : { ...answer(null), ifHeld: held() }
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
