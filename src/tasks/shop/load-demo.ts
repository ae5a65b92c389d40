import { type RecordKind, recordKinds } from '#model/change.ts'
import { editOf } from '#model/record-fields.ts'
import { Refusal } from '#model/refusal.ts'
import { keepDeed } from '#store/deeds.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import { inTransaction, type Store } from '#store/store.ts'
import { makerFor } from '#tasks/maker.ts'
import { demoRates } from '#tasks/shop/demo/demo-make.ts'
import { demoDeed } from '#tasks/shop/demo/demo-deed.ts'

/** What a shop may hold and still be empty: somebody has said who they are and what they count in. */
const settings: readonly RecordKind[] = ['shop', 'person']

/**
 * Fills an empty shop with invented demo data: vises, bars, parts and setups of a shop that never was.
 *
 * @throws Refusal `shop-not-empty` when anything but settings and people is there
 */
export function loadDemo(store: Store): Promise<void> {
  const by = makerFor('', 'demo')
  return inTransaction(store, async (tx) => {
    for (const kind of recordKinds) {
      if (!settings.includes(kind) && (await recordsOf(tx, kind)).length > 0) throw new Refusal('shop-not-empty', { kind })
    }
    const shop = await recordOf(tx, 'shop', 'shop')
    const deed = demoDeed(by, (await recordsOf(tx, 'person')).map((person) => person.initials))
    const named = editOf('shop', shop, { demo: true, making: shop.making ?? demoRates, ...(shop.name === '' ? { name: 'Invented demo shop' } : {}) }, by)
    await keepDeed(tx, { ...deed, changes: [named, ...deed.changes] })
  })
}
