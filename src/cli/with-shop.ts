import type { ShopRecord } from '#model/shop-record.ts'
import { Refusal } from '#model/refusal.ts'
import { SaidRefusal } from '#cli/run-to-its-end.ts'
import { dataFolderFrom } from '#server/config.ts'
import { placeFrom } from '#server/place.ts'
import { openStore } from '#store/open.ts'
import { recordOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'
import { sayRefusal } from '#words/say-refusal.ts'

/**
 * Opens the shop, of the data folder or of TWINREST_DATABASE_URL, for one piece of work and closes it again; refusals are said in the shop's units. A
 * server may have the same folder open.
 */
export async function withShop(folder: string | undefined, work: (store: Store, shop: ShopRecord) => Promise<void>): Promise<void> {
  const place = placeFrom(dataFolderFrom(folder, process.env), process.env), store = await openStore(place.database, place.shop)
  try {
    const shop = await recordOf(store, 'shop', 'shop')
    try {
      await work(store, shop)
    } catch (error) {
      throw error instanceof Refusal ? new SaidRefusal(sayRefusal(error, shop.units)) : error
    }
  } finally {
    await store.close()
  }
}

/** Who did it, for the history: this command, nobody by name. */
export const device = 'command'
