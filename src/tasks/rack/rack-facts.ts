import type { RackFacts } from '#engine/rack/bar-from.ts'
import type { ShopRecord } from '#model/shop-record.ts'
import type { SetupRecord } from '#model/setup-record.ts'
import { checksOf } from '#store/checks.ts'
import { eventsOf } from '#store/events.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'

/** All that bears on the bars of the shop today. */
export async function rackFactsOf(tx: Store): Promise<Omit<RackFacts, 'shop' | 'setups'> & { readonly shop: ShopRecord; readonly setups: readonly SetupRecord[]; readonly today: string }> {
  return {
    bars: await recordsOf(tx, 'bar'), checks: await checksOf(tx), events: await eventsOf(tx),
    shop: await recordOf(tx, 'shop', 'shop'), setups: await recordsOf(tx, 'setup'), today: today(),
  }
}

/** By the clock of this machine, UTC as every day here. */
export const today = (): string => new Date().toISOString().slice(0, 10)
