import { firstChange } from '#model/record-fields.ts'
import type { SetupFields, SetupRecord } from '#model/setup-record.ts'
import { applyChanges } from '#store/changes.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import { inTransaction, type Store } from '#store/store.ts'
import type { Maker } from '#tasks/maker.ts'

/** Keeps a setup that was decided on. @throws Refusal what its fields refuse, `unknown-record` for vise, part and bars */
export function saveSetup(store: Store, fields: SetupFields, by: Maker): Promise<SetupRecord> {
  return inTransaction(store, async (tx) => {
    const id = by.newId()
    await applyChanges(tx, [firstChange('setup', id, fields, by)])
    return recordOf(tx, 'setup', id)
  })
}

/** What was set up in a vise lately, the latest first: *same as last time*. */
export async function lastSetups(store: Store, viseId: string, most = 5): Promise<SetupRecord[]> {
  return (await recordsOf(store, 'setup'))
    .filter((setup) => setup.viseId === viseId && !setup.retired)
    .sort((a, b) => (a.usedAtIso === b.usedAtIso ? (a.id < b.id ? 1 : -1) : a.usedAtIso < b.usedAtIso ? 1 : -1))
    .slice(0, most)
}
