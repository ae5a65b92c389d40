import { sumOfRest } from '#engine/setup/setup-sum.ts'
import { sumOfWindow } from '#engine/setup/window-sum.ts'
import type { Bar } from '#model/bar.ts'
import type { Sum } from '#model/sum.ts'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { useDesk } from '#web/setup/desk.ts'
import { type Answered, isRefused } from '#web/setup/view/view-from.ts'

/** The third depth: how every number on the screen came about. */
export function Sums() {
  const { view: { answered }, bench } = useDesk()
  return answered === null ? null : <div className="setup-sums"><ShowSum sums={sumsOf(answered, bench.bars)} /></div>
}

/** Of the choice looked at first, then of the window. */
function sumsOf({ question, answer, shown }: Answered, bars: ReadonlyMap<string, Bar>): readonly Sum[] {
  if (shown === null) return answer.sum
  const rest = isRefused(shown) ? { ...shown.rejection, matchUm: null } : shown
  const own = sumOfRest(question, answer.window, { ...rest, stacked: rest.stacked ?? null, bars: rest.bars.flatMap((id) => bars.get(id) ?? []) })
  const window = sumOfWindow(question, answer.window)
  return [...own.slice(window.length), ...window]
}
