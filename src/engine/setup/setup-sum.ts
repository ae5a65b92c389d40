import type { SetupQuestion } from '#model/setup.ts'
import type { Sum } from '#model/sum.ts'
import type { Found } from '#engine/setup/found.ts'
import { matchUmOf } from '#engine/setup/match.ts'
import { furthestBelowMm } from '#engine/setup/reach.ts'
import type { Search } from '#engine/setup/search.ts'
import { sumOfAtSeat, sumOfWindow } from '#engine/setup/window-sum.ts'

/** How the numbers of an answer came about: the window, and seat, grip, stick-out, air and match of one choice. */
export function sumOfSetup({ question, window, atSeat }: Search, found: Found | null): readonly Sum[] {
  if (found === null) return sumOfWindow(question, window)
  return [...sumOfWindow(question, window), ...seatSums(found), ...sumOfAtSeat(question, found.seatMm, atSeat(found.seatMm)), ...bedAirSums(question, found)]
}

const rules = ['SETUP-RULES']

const sum = (formula: string, name: string, value: number | null, inputs: Sum['inputs']): Sum => ({ formula, result: { name, value }, inputs, sources: rules })

/** The sizes that stand, and how far they differ. */
function seatSums(found: Found): readonly Sum[] {
  const { stand, seatMm } = found, matchUm = matchUmOf(found)
  if (stand === 'bed') return []
  const sizes = standingSizes(found), [firstMm = null, secondMm = null, thirdMm = null, fourthMm = null] = sizes
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
function standingSizes({ stand, stacked, bars }: Found): readonly number[] {
  return bars.map((bar, k) => ((stacked === null ? stand : stacked[k < 2 ? 0 : 1]) === 'lying flat' ? bar.thicknessMm : bar.heightMm))
}

function bedAirSums({ cuts, part }: SetupQuestion, { seatMm }: Found): readonly Sum[] {
  const reachBelowMm = furthestBelowMm(cuts, part.heightMm)
  return reachBelowMm === null ? [] : [sum('bed-air-at-seat', 'bedAirMm', seatMm - reachBelowMm, { seatMm, reachBelowMm })]
}
