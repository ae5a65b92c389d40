import { atSeatOf } from '#engine/setup/at-seat.ts'
import { sumOfAtSeat } from '#engine/setup/window-sum.ts'
import type { Sum } from '#model/sum.ts'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { useDesk } from '#web/setup/desk.ts'
import { type Answered, isRefused } from '#web/setup/view/view-from.ts'

/** The third depth: how every number on the screen came about. */
export function Sums() {
  const { view: { answered } } = useDesk()
  return answered === null ? null : <div className="setup-sums"><ShowSum sums={sumsOf(answered)} /></div>
}

/** Those of the choice looked at, then those of the answer that are not the same numbers of its own first choice. */
function sumsOf({ question, answer, shown }: Answered): readonly Sum[] {
  if (shown === null) return answer.sum
  const { seatMm } = isRefused(shown) ? shown.rejection : shown
  const ofShown = sumOfAtSeat(question, seatMm, atSeatOf(question, answer.window, seatMm))
  const told = new Set(ofShown.map(({ result }) => result.name))
  return [...ofShown, ...answer.sum.filter(({ result }) => !told.has(result.name))]
}
