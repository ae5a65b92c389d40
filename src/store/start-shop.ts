import { firstChange } from '#model/record-fields.ts'
import { newShop } from '#model/shop-record.ts'
import { applyChanges } from '#store/changes.ts'
import { inTransaction, type Store } from '#store/store.ts'
import { knownOf } from '#store/records.ts'

/** Whether the shop was ever begun. */
export const isThere = async (store: Store): Promise<boolean> => (await knownOf(store, 'shop', ['shop'])).size > 0

/** Sees to it that there is a shop record, so that nobody ever meets a shop without units. */
export async function startShop(store: Store): Promise<void> {
  if (await isThere(store)) return
  await inTransaction(store, async (tx) => {
    if (await isThere(tx)) return
    const by = { person: '', device: 'first-start', atIso: new Date().toISOString(), newId: () => 'first-start' }
    await applyChanges(tx, [firstChange('shop', 'shop', newShop, by)])
  })
}
