import type { Desk } from '#web/setup/desk.ts'
import { figureOf, howItStands, nameOfRest } from '#web/setup/answer/say-choice.ts'
import { sayPart } from '#web/setup/saved/say-setup.ts'
import { isRefused } from '#web/setup/view/view-from.ts'

/** The drawing in words. */
export function describe({ state, view, bench, units, terms }: Desk): string {
  const shown = view.answered?.shown
  const part = state.form.height.trim() === '' ? 'no part yet' : `part ${sayPart(state.form)}`
  const under = shown && !isRefused(shown) ? ` on ${figureOf(shown, bench, units)} ${nameOfRest(shown, bench, units)}, ${howItStands(shown, terms).join(', ')}` : ''
  return `Section and plan: ${bench.vise.name}, ${part}${under}.`
}
