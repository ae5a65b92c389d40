import { recordKinds } from '#model/change.ts'
import { readAs } from '#model/read-as.ts'
import { Refusal } from '#model/refusal.ts'
import { type ShopFile, shopFileSchema } from '#model/shop-file.ts'
import { recordsOf } from '#store/records.ts'
import { inTransaction, type Store } from '#store/store.ts'
import { everythingOf, putEverything } from '#store/whole.ts'

/** How much came in with a whole shop. */
export type CameIn = { readonly changes: number; readonly checks: number; readonly events: number }

export const exportShop = (store: Store): Promise<ShopFile> => everythingOf(store)

/**
 * Takes in a whole shop, all of it or nothing.
 *
 * @throws Refusal `import-not-empty`, and what `readAs` and the writers of each kind refuse
 */
export async function importShop(store: Store, raw: unknown): Promise<CameIn> {
  const file = readAs(shopFileSchema, raw)
  return await inTransaction(store, async (tx) => {
    for (const kind of recordKinds) {
      if (kind !== 'shop' && (await recordsOf(tx, kind)).length > 0) throw new Refusal('import-not-empty', { kind })
    }
    await putEverything(tx, file)
    return { changes: file.changes.length, checks: file.checks.length, events: file.events.length }
  })
}
