import { standingOf } from '#engine/setup/standing.ts'
import type { Choice } from '#model/setup.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { draftFrom } from '#web/setup/state/draft.ts'
import { lastViseId } from '#web/setup/state/same-again.ts'
import { formToAsk, type SetupState } from '#web/setup/state/setup-state.ts'
import { type Bench, benchFrom } from '#web/setup/view/bench.ts'
import { isRefused, type SetupView, viewFrom } from '#web/setup/view/view-from.ts'

/** What stands on the Set up screen of this device: the screens beside it start from there. */
export type ChosenSetup = {
  readonly state: SetupState
  readonly form: SetupState['form']
  readonly bench: Bench
  readonly view: SetupView
  /** Null where nothing serves, or nothing was asked. */
  readonly choice: Choice | null
  /** Between the middles of its two bars; null where there are not two. */
  readonly barsApartMm: number | null
}

/** Null in a shop without a vise. */
export function chosenSetup(shop: ShopSnapshot, units: Units, keep: Parameters<typeof draftFrom>[0]): ChosenSetup | null {
  const state = draftFrom(keep, units.length), known = shop.vises.some(({ id, retired }) => id === state.viseId && !retired)
  const bench = benchFrom(shop, known ? state.viseId : lastViseId(shop.setups, shop.vises))
  if (bench === null) return null
  const form = formToAsk(state), view = viewFrom(form, bench, state.chosen), shown = view.answered?.shown
  const choice = shown && !isRefused(shown) ? shown : null
  return { state, form, bench, view, choice, barsApartMm: choice && barsApart(choice, bench) }
}

function barsApart(choice: Choice, { bars }: Bench): number | null {
  const middles = standingOf(choice, bars).filter(({ fromMm }) => fromMm === 0).flatMap(({ place, acrossMm }) => (place === null ? [] : [place.yMm + acrossMm / 2]))
  return middles.length === 2 ? Math.abs(middles[1]! - middles[0]!) : null
}
