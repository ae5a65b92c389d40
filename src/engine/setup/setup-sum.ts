import { atSeatOf } from '#engine/setup/at-seat.ts'
import type { Choice, SetupQuestion, Window } from '#model/setup.ts'
import type { Sum } from '#model/sum.ts'
import type { Found } from '#engine/setup/found.ts'
import { matchUmOf } from '#engine/setup/match.ts'
import { furthestBelowMm } from '#engine/setup/reach.ts'
import type { Search } from '#engine/setup/search.ts'
import { sumOfAtSeat, sumOfWindow } from '#engine/setup/window-sum.ts'

/** How the numbers of an answer came about: the window, and the first choice if there is one. */
export function sumOfSetup({ question, window }: Search, found: Found | null): readonly Sum[] {
  return found === null ? sumOfWindow(question, window) : sumOfRest(question, window, { ...found, matchUm: matchUmOf(found) })
}

/** A way of resting the part, with its bars. */
export type Rest = Pick<Found, 'stand' | 'stacked' | 'bars' | 'seatMm'> & Pick<Choice, 'matchUm'>

/** The window, then seat, match, grip, stick-out and air of one way of resting the part. */
export function sumOfRest(question: SetupQuestion, window: Window, rest: Rest): readonly Sum[] {
  const { seatMm } = rest
  return [...sumOfWindow(question, window), ...seatSums(rest), ...sumOfAtSeat(question, seatMm, atSeatOf(question, window, seatMm)), ...bedAirSums(question, rest)]
}

const rules = ['SETUP-RULES']

const sum = (formula: string, name: string, value: number | null, inputs: Sum['inputs']): Sum => ({ formula, result: { name, value }, inputs, sources: rules })

/** The sizes that stand, and how far they differ. */
function seatSums(rest: Rest): readonly Sum[] {
  const { stand, seatMm, matchUm } = rest
  if (stand === 'bed') return []
  const sizes = standingSizes(rest), [firstMm = null, secondMm = null, thirdMm = null, fourthMm = null] = sizes
  if (stand === 'single') return [sum('seat-on-one', 'seatMm', seatMm, { firstMm })]
  if (stand === 'stack') {
    return [
      sum('seat-on-stack', 'seatMm', seatMm, { firstMm, secondMm, thirdMm, fourthMm }),
      ...(matchUm === null ? [] : [sum('match-of-columns', 'matchUm', matchUm, { firstMm, secondMm, thirdMm, fourthMm })]),
    ]
  }
  return [
    sum('seat-on-two', 'seatMm', seatMm, { firstMm, secondMm }),
    ...(matchUm === null ? [] : [sum('match-of-two', 'matchUm', matchUm, { firstMm, secondMm })]),
  ]
}

/** In the order of the bars. */
function standingSizes({ stand, stacked, bars }: Rest): readonly number[] {
  return bars.map((bar, k) => ((stacked === null ? stand : stacked[k < 2 ? 0 : 1]) === 'lying flat' ? bar.thicknessMm : bar.heightMm))
}

function bedAirSums({ cuts, part }: SetupQuestion, { seatMm }: Rest): readonly Sum[] {
  const reachBelowMm = furthestBelowMm(cuts, part.heightMm)
  return reachBelowMm === null ? [] : [sum('bed-air-at-seat', 'bedAirMm', seatMm - reachBelowMm, { seatMm, reachBelowMm })]
}
