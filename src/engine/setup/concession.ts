import type { Offer, SetupQuestion, Window } from '#model/setup.ts'
import { touchMm } from '#engine/setup/tolerance.ts'
import type { Range } from '#engine/setup/seat-classes.ts'
import { lowLimitsOf } from '#engine/setup/window.ts'

/** What one wish would have to become for a seat outside the window to serve. */
export type Concession = Pick<Offer, 'wish' | 'toMm'>

/** What a concession depends on. */
export type Conceding = { readonly question: SetupQuestion; readonly window: Window; readonly asked: { readonly cutterMm: number; readonly belowMm: number } }

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
export function concessionAt({ question, window, asked }: Conceding, seatMm: number): Concession | null {
  const tooLow = seatMm < window.lowMm - touchMm, tooHigh = seatMm > window.highMm + touchMm
  if (tooLow === tooHigh) return null
  if (tooHigh) {
    const toMm = window.gripWishMm === null ? 0 : window.gripWishMm - lossMm(window, 'above', seatMm)
    return toMm > touchMm ? { wish: 'gripMm', toMm } : null
  }
  const { cutterMm, belowMm } = asked, cutter = cutterMm > seatMm + touchMm, below = belowMm > seatMm + touchMm
  if (cutter === below) return null
  const toMm = cutter ? question.wishes.airMm - (cutterMm - seatMm) : question.wishes.bedAirMm - (belowMm - seatMm)
  return toMm < -touchMm ? null : { wish: cutter ? 'airMm' : 'bedAirMm', toMm: Math.max(0, toMm) }
}

/** Only seats between these could serve by giving up one wish, in mm; the very ends are left to `concessionAt`. */
export function concededRange({ question, window, asked: { cutterMm, belowMm } }: Conceding, side: Side): Range {
  const { lowMm, highMm, gripWishMm } = window, { airMm, bedAirMm } = question.wishes, slackMm = 2 * touchMm
  if (side === 'above') return { fromMm: Math.max(highMm, lowMm) - slackMm, toMm: highMm + (gripWishMm ?? 0) }
  const leastMm = cutterMm > belowMm ? Math.max(belowMm, cutterMm - airMm) : Math.max(cutterMm, belowMm - bedAirMm)
  return { fromMm: leastMm - slackMm, toMm: Math.min(lowMm, highMm) + slackMm }
}

/** What the cutter, and whatever comes out below, ask of the seat; −Infinity where there is none. */
export function askedOf(question: SetupQuestion): Conceding['asked'] {
  const limits = lowLimitsOf(question)
  return { cutterMm: limits['cutter-over-jaw'] ?? -Infinity, belowMm: Math.max(limits['drill-tip'] ?? -Infinity, limits['through-cut'] ?? -Infinity) }
}
