import type { ViseFields, ViseRecord } from '#model/vise-record.ts'
import { editOf, firstChange } from '#model/record-fields.ts'
import type { Units } from '#model/shop-record.ts'
import { type Applied, applyChanges } from '#store/changes.ts'
import { recordOf } from '#store/records.ts'
import { inTransaction, type Store } from '#store/store.ts'
import type { Maker } from '#tasks/maker.ts'

/** @throws Refusal what the fields of a vise refuse, `jaw-set-not-known` */
export function addVise(store: Store, fields: ViseFields, by: Maker): Promise<ViseRecord> {
  return inTransaction(store, async (tx) => {
    const id = by.newId()
    await applyChanges(tx, [firstChange('vise', id, fields, by)])
    return recordOf(tx, 'vise', id)
  })
}

/** Changes some fields of a vise, among them the fitted jaw set. @throws Refusal `unknown-record` and as `addVise` */
export function editVise(store: Store, id: string, fields: Partial<ViseFields>, by: Maker): Promise<Applied> {
  return inTransaction(store, async (tx) => applyChanges(tx, [editOf('vise', await recordOf(tx, 'vise', id, 'vise'), fields, by)]))
}

/** What the shop's numbers are shown and read in from now on. */
export function setUnits(store: Store, units: Units, by: Maker): Promise<Applied> {
  return inTransaction(store, async (tx) => applyChanges(tx, [editOf('shop', await recordOf(tx, 'shop', 'shop'), { units }, by)]))
}
