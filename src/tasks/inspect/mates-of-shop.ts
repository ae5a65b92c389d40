import type { BarRecord } from '#model/bar-record.ts'
import { Refusal } from '#model/refusal.ts'
import { useLimits } from '#engine/rack/use-limits.ts'
import { type MatesOfRack, type MatesWish, proposeMates } from '#engine/inspect/mates-of-rack.ts'
import type { MeasuredBar } from '#engine/inspect/measured-bar.ts'
import { measuredBarsOf } from '#engine/rack/measured-bars.ts'
import { checksOf } from '#store/checks.ts'
import { eventsOf } from '#store/events.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { barNamed } from '#tasks/rack/bar-named.ts'

/** Bars by ids or labels; left out: every measured bar of the rack, of which only those of one thickness and length are put together. */
export type MatesAsked = { readonly wish: MatesWish; readonly bars?: readonly string[] }
export type MatesOfShop = MatesOfRack & { readonly bars: readonly BarRecord[] }

/** @throws Refusal `bar-not-known`; as `proposeMates` */
export function matesOfShop(store: Store, { wish, bars }: MatesAsked): Promise<MatesOfShop> {
  return atOneMoment(store, async (tx) => {
    const shop = await recordOf(tx, 'shop', 'shop'), limits = useLimits(shop.limitsUm)
    const asked = bars === undefined ? await recordsOf(tx, 'bar') : await Promise.all(bars.map((bar) => barNamed(tx, bar)))
    const measured = measuredBarsOf({ shop, bars: asked, checks: await checksOf(tx), events: await eventsOf(tx) }), known = new Map(asked.map((bar) => [bar.id, bar]))
    const needed = wish.want === 'row' ? 2 * wish.vises : 2, lots = bars === undefined ? ofOneSize(measured, known) : [measured], large = lots.filter((lot) => lot.length >= needed)
    if (large.length === 0) throw new Refusal('too-few-bars', { field: 'bars', given: Math.max(0, ...lots.map((lot) => lot.length)), needed })
    const found = large.map((lot) => proposeMates(lot, wish, limits))
    const taken = wish.want === 'row' ? [found.reduce((best, one) => (one.row!.spreadUm < best.row!.spreadUm ? one : best))] : found
    const groups = taken.flatMap((one) => one.groups), used = new Set(groups.flatMap((one) => one.bars))
    return {
      groups: groups.sort((a, b) => a.worstUm - b.worstUm), row: taken[0]!.row, findings: taken.flatMap((one) => one.findings),
      leftOver: measured.flatMap(({ id }) => (used.has(id) ? [] : [id])), bars: measured.map(({ id }) => known.get(id)!),
    }
  })
}

/** Bars whose thickness agrees to half a millimetre and whose length to one. Common practice, no source. */
function ofOneSize(measured: readonly MeasuredBar[], known: ReadonlyMap<string, BarRecord>): readonly (readonly MeasuredBar[])[] {
  const lots = new Map<string, MeasuredBar[]>()
  for (const bar of measured) {
    const { thicknessMm, lengthMm } = known.get(bar.id)!, size = `${Math.round(thicknessMm * 2)}/${Math.round(lengthMm)}`
    lots.set(size, [...lots.get(size) ?? [], bar])
  }
  return [...lots.values()]
}
