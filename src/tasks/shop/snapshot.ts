import type { ShopSnapshot } from '#model/snapshot.ts'
import { checksOf } from '#store/checks.ts'
import { eventsOf } from '#store/events.ts'
import { openDraftsOf, recordOf, recordsOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'

/** All facts of the shop as they stand at one moment. */
export function snapshotOf(store: Store): Promise<ShopSnapshot> {
  return atOneMoment(store, async (tx) => ({
    shop: await recordOf(tx, 'shop', 'shop'),
    people: await recordsOf(tx, 'person'),
    vises: await recordsOf(tx, 'vise'),
    slots: await recordsOf(tx, 'slot'),
    mates: await recordsOf(tx, 'mates'),
    bars: await recordsOf(tx, 'bar'),
    checks: await checksOf(tx),
    events: await eventsOf(tx),
    parts: await recordsOf(tx, 'part'),
    setups: await recordsOf(tx, 'setup'),
    instruments: await recordsOf(tx, 'instrument'),
    drafts: await openDraftsOf(tx),
    outcomes: await recordsOf(tx, 'outcome'),
    machines: await recordsOf(tx, 'machine'),
    stock: await recordsOf(tx, 'stock'),
    jobs: (await recordsOf(tx, 'job')).filter(({ state }) => state !== 'dropped'),
  }))
}
