import type { BarRecord } from '#model/bar-record.ts'
import { useLimits } from '#engine/inspect/checked.ts'
import { type MatesOfRack, type MatesWish, proposeMates } from '#engine/inspect/mates-of-rack.ts'
import { measuredBarsOf } from '#engine/rack/measured-bars.ts'
import { checksOf } from '#store/checks.ts'
import { eventsOf } from '#store/events.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { barNamed } from '#tasks/rack/bar-named.ts'

/** Bars by ids or labels; left out: every measured bar of the rack. */
export type MatesAsked = { readonly wish: MatesWish; readonly bars?: readonly string[] }

/** @throws Refusal `bar-not-known`; as `proposeMates` */
export function matesOfShop(store: Store, { wish, bars }: MatesAsked): Promise<MatesOfRack & { readonly bars: readonly BarRecord[] }> {
  return atOneMoment(store, async (tx) => {
    const shop = await recordOf(tx, 'shop', 'shop'), records = await recordsOf(tx, 'bar')
    const asked = bars === undefined ? records : await Promise.all(bars.map((bar) => barNamed(tx, bar)))
    const measured = measuredBarsOf({ shop, bars: asked, checks: await checksOf(tx), events: await eventsOf(tx) })
    return { ...proposeMates(measured, wish, useLimits(shop.limitsUm)), bars: asked.filter(({ id }) => measured.some((one) => one.id === id)) }
  })
}
