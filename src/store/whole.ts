import type { ImportedFile, ShopFile } from '#model/shop-file.ts'
import type { Change, RecordKind } from '#model/change.ts'
import { applyChanges } from '#store/changes.ts'
import { addChecks, checksOf } from '#store/checks.ts'
import { addEvents, eventsOf } from '#store/events.ts'
import { inPortions } from '#store/portions.ts'
import { atOneMoment, inTransaction, type Store } from '#store/store.ts'
import { addTold, allTold } from '#store/told.ts'
import { addUnserved, unservedOf } from '#store/unserved.ts'

/** Everything that ever happened in the shop, at one moment; the same shop gives the same file. */
export function everythingOf(store: Store): Promise<ShopFile> {
  return atOneMoment(store, async (tx) => ({
    twinrest: 'shop', version: 1, changes: await allChanges(tx), checks: await checksOf(tx), events: await eventsOf(tx),
    told: await allTold(tx), unserved: await unservedOf(tx), imports: await allImports(tx),
  }))
}

/**
 * Puts a whole shop into an empty one, all or nothing: what the new shop was given at its start makes way.
 *
 * @throws Refusal as the writers of each kind
 */
export function putEverything(store: Store, file: ShopFile): Promise<void> {
  return inTransaction(store, async (tx) => {
    if (file.changes.some(({ kind }) => kind === 'shop')) {
      await tx.db.deleteFrom('change').where('shop', '=', tx.shop).where('id', '=', 'first-start').execute()
      await tx.db.deleteFrom('shop').where('shop', '=', tx.shop).execute()
    }
    await applyChanges(tx, file.changes)
    await addChecks(tx, file.checks)
    await addEvents(tx, file.events)
    for (const one of file.told) await addTold(tx, one)
    for (const one of file.unserved) await addUnserved(tx, one)
    for (const some of inPortions(file.imports)) await tx.db.insertInto('import').values(some.map(({ answer, ...rest }) => ({ shop: tx.shop, ...rest, answer: JSON.stringify(answer) }))).execute()
  })
}

async function allChanges({ db, shop }: Store): Promise<Change[]> {
  const rows = await db.selectFrom('change').selectAll().where('shop', '=', shop).orderBy('id').execute()
  return rows.map(({ shop: _shop, kind, fields, ...rest }) => ({ ...rest, kind: kind as RecordKind, fields: JSON.parse(fields) as Change['fields'] }))
}

async function allImports({ db, shop }: Store): Promise<ImportedFile[]> {
  const rows = await db.selectFrom('import').selectAll().where('shop', '=', shop).orderBy('id').execute()
  return rows.map(({ shop: _shop, answer, ...rest }) => ({ ...rest, answer: JSON.parse(answer) as ImportedFile['answer'] }))
}
