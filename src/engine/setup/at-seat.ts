import type { AtSeat, Window } from '#model/setup.ts'
import { deepestOverJawMm } from '#engine/setup/reach.ts'
import { touchMm } from '#engine/setup/tolerance.ts'
import { grippingJawMm, type WindowQuestion } from '#engine/setup/window.ts'

/**
 * Grip, stick-out and air with the part at one seat height.
 *
 * A part below the jaw tops is gripped over its own height only; a round part's grip is the jaw above its line of
 * contact. Stick-out is counted from the higher jaw (negative: below the jaw tops), its ratio to the grip from the lower.
 *
 * @param deepestMm  depth of the deepest cut over a jaw, where the caller asks for many seats and has it already
 * @source SETUP-RULES GEOMETRY
 */
export function atSeatOf(
  { vise, part, cuts }: Pick<WindowQuestion, 'vise' | 'part' | 'cuts'>,
  window: Pick<Window, 'lowMm' | 'highMm'>,
  seatMm: number,
  deepestMm: number | null = deepestOverJawMm(cuts),
): AtSeat {
  const round = part.shape === 'round', radiusMm = part.heightMm / 2, jawMm = grippingJawMm(vise)
  const gripMm = Math.max(0, round ? Math.min(jawMm - seatMm - radiusMm, radiusMm) : Math.min(jawMm - seatMm, part.heightMm))
  const stickOutMm = seatMm + part.heightMm - vise.jawHeightMm
  return {
    gripMm,
    stickOutMm,
    airMm: deepestMm === null ? null : stickOutMm - deepestMm,
    stickOutPerGrip: round || gripMm <= touchMm ? null : (seatMm + part.heightMm - jawMm) / gripMm,
    serves: seatMm >= window.lowMm - touchMm && seatMm <= window.highMm + touchMm,
  }
}
