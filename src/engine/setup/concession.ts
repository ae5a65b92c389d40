import type { Offer, SetupQuestion, Window } from '#model/setup.ts'
import { touchMm } from '#engine/setup/tolerance.ts'
import type { Range } from '#engine/setup/seat-classes.ts'
import { lowLimitsOf } from '#engine/setup/window.ts'

/** What one wish would have to become for a seat outside the window to serve. */
export type Concession = Pick<Offer, 'wish' | 'toMm'>

/** On which side of the window a seat lies: above its high end, or below its low end. */
export type Side = 'above' | 'below'

/** How far outside the window, which is how much of the wish is given up. */
export const lossMm = ({ lowMm, highMm }: Window, side: Side, seatMm: number): number => (side === 'above' ? seatMm - highMm : lowMm - seatMm)

/**
 * The wish that alone would let a seat serve; null where none would, or more than one had to be given up. Grip can be
 * given up to nothing short of 0 (for a round part there is none to give), air to 0 over the jaws and above the bed.
 *
 * @source SETUP-RULES
 */
export function concessionAt(question: SetupQuestion, window: Window, seatMm: number): Concession | null {
  const tooLow = seatMm < window.lowMm - touchMm, tooHigh = seatMm > window.highMm + touchMm
  if (tooLow === tooHigh) return null
  if (tooHigh) {
    const toMm = window.gripWishMm === null ? 0 : window.gripWishMm - lossMm(window, 'above', seatMm)
    return toMm > touchMm ? { wish: 'gripMm', toMm } : null
  }
  const { cutterMm, belowMm } = askedOf(question), cutter = cutterMm > seatMm + touchMm, below = belowMm > seatMm + touchMm
  if (cutter === below) return null
  const toMm = cutter ? question.wishes.airMm - (cutterMm - seatMm) : question.wishes.bedAirMm - (belowMm - seatMm)
  return toMm < -touchMm ? null : { wish: cutter ? 'airMm' : 'bedAirMm', toMm: Math.max(0, toMm) }
}

/** No seat beyond these could serve by giving up one wish. */
export function concededRange({ wishes }: SetupQuestion, { lowMm, highMm, gripWishMm }: Window, side: Side): Range {
  return side === 'above'
    ? { fromMm: Math.max(highMm, lowMm) - 2 * touchMm, toMm: highMm + (gripWishMm ?? 0) }
    : { fromMm: lowMm - Math.max(wishes.airMm, wishes.bedAirMm) - 2 * touchMm, toMm: Math.min(lowMm, highMm) + 2 * touchMm }
}

function askedOf(question: SetupQuestion): { readonly cutterMm: number; readonly belowMm: number } {
  const limits = lowLimitsOf(question)
  return { cutterMm: limits['cutter-over-jaw'] ?? -Infinity, belowMm: Math.max(limits['drill-tip'] ?? -Infinity, limits['through-cut'] ?? -Infinity) }
}
