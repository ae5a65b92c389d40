import type { RejectionReason } from '#model/setup.ts'
import { inPlanOf, isAvailable, standOf } from '#engine/setup/footings.ts'
import { isTooThick } from '#engine/setup/places.ts'
import { isCutInto, isMatched, isThicknessKnown, restsOnBars, type Search } from '#engine/setup/search.ts'
import { onTopOf, stackSeatMm, type Stack } from '#engine/setup/stacking.ts'
import { touchMm } from '#engine/setup/tolerance.ts'
import { isInEndCut } from '#engine/setup/travel.ts'

/** Every reason why one or two bars do not serve, in the fixed order; none: they do. */
export const reasonsOfFooting = (search: Search, k: number): readonly RejectionReason[] => reasonsOf(search, k, search.footings.seatMm[k]!, null)

/** Likewise for a stack; it stands, and is placed, as its lower pair. */
export const reasonsOfStack = (search: Search, stack: Stack): readonly RejectionReason[] =>
  reasonsOf(search, stack.lower, stackSeatMm(search.footings, stack.lower, stack.upper), stack)

/** What is wrong with a seat height alone. Below a negative window width both may apply. */
export function reasonsOfSeat({ window }: Search, seatMm: number): readonly RejectionReason[] {
  return [...(seatMm < window.lowMm - touchMm ? ['too-low' as const] : []), ...(seatMm > window.highMm + touchMm ? ['too-high' as const] : [])]
}

function reasonsOf(search: Search, k: number, seatMm: number, stack: Stack | null): readonly RejectionReason[] {
  const { footings, obstacles } = search, bars = inPlanOf(footings, k), places = search.placesAt(k)
  const all = stack === null ? [k] : [k, stack.upper], onTop = stack === null ? [] : onTopOf(footings, stack)
  const applies: { readonly [reason in Exclude<RejectionReason, 'too-low' | 'too-high'>]: boolean } = {
    'not-available': !all.every((one) => isAvailable(footings, one)),
    'round-on-two-bars': !restsOnBars(search, standOf(footings, k)),
    'not-matched': !all.every((one) => isMatched(search, one)),
    'thickness-not-measured': !all.every((one) => isThicknessKnown(search, one)),
    'too-thick': isTooThick(obstacles, bars),
    'bar-in-cut': bars.some((bar) => isInEndCut(obstacles, bar.lengthMm)),
    'fouled': places.status === 'fouled' && isCutInto(search, k, onTop),
    'off-balance': places.offBalance,
    'not-carried': places.notCarried,
  }
  const named = (...reasons: (keyof typeof applies)[]) => reasons.filter((reason) => applies[reason])
  return [
    ...named('not-available', 'round-on-two-bars', 'not-matched', 'thickness-not-measured', 'too-thick'),
    ...reasonsOfSeat(search, seatMm),
    ...named('bar-in-cut', 'fouled', 'off-balance', 'not-carried'),
  ]
}
