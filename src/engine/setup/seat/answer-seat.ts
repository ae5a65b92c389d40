import { longestMm } from '#engine/read/raw-object.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { longestUm, mostPoints, readSeatPart, refusePart, refuseSeat } from '#engine/setup/seat/read-part.ts'
import { readSupport } from '#engine/setup/seat/read-support.ts'
import type { SeatQuestion } from '#engine/setup/seat/seat.ts'
import { seatsOnSupport, type SeatTold, seatTold } from '#engine/setup/seat/seat-on-support.ts'
import type { Support } from '#engine/setup/seat/support.ts'

/** `ifHeld`: the answer if the fixed jaw squares the part, beside that of a free one, where nobody knows which. */
export type SeatAnswer = SeatTold & Ignored & { readonly ifHeld?: SeatTold }

const modes = ['free', 'jaw'] as const
type Case = { readonly toleranceUm: number | null } & ({ readonly bare: SeatQuestion; readonly on: null } | { readonly bare: null; readonly on: Support })

/**
 * The calculation `seat`: bare `points` with a `mode`, or `bars` as they stand with the part's side at the fixed jaw.
 *
 * @throws Refusal with a malformed code, then `size-not-positive`, `uncertainty-negative`, `too-few-bars`, `bar-off-part`, `too-few-points`, `wish-negative`
 */
export function answerSeat(raw: unknown): SeatAnswer {
  const { value: { bare, on, toleranceUm }, ignored } = readCase(raw, (object): Case => {
    const toleranceUm = object.numberOr('toleranceUm', null, longestUm)
    if (!object.has('points') && object.has('bars')) return { on: readSupport(object), bare: null, toleranceUm }
    const mode = object.word('mode', modes), points = object.rows('points', [longestMm, longestMm, longestUm], mostPoints)
    return {
      on: null, toleranceUm,
      bare: {
        part: object.object('part', readSeatPart)!, points: points.map(([xMm, yMm, zUm]) => ({ xMm: xMm!, yMm: yMm!, zUm: zUm! })),
        jawSlopeUmPerMm: mode === 'jaw' ? object.number('jawSlopeUmPerMm', longestUm) : null,
      },
    }
  })
  if (bare === null) return { ...seatsOnSupport(on, toleranceUm), ignored }
  refusePart(bare.part)
  refuseSeat(bare.points.length, toleranceUm)
  return { ...seatTold(bare, null, toleranceUm), ignored }
}
