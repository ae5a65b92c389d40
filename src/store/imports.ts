import { createHash } from 'node:crypto'
import type { By } from '#model/change.ts'
import type { RackImport } from '#model/rack-import.ts'
import { Refusal } from '#model/refusal.ts'
import type { Store } from '#store/store.ts'

/** What was taken in: the text, and the unit its bare numbers were said to be in. */
export type Imported = { readonly text: string; readonly unit: string | null }

/**
 * What was answered when this was taken in under this id; null where nothing was.
 *
 * @throws Refusal `id-used-twice` where something else was
 */
export async function importUnder(store: Store, id: string, imported: Imported): Promise<RackImport | null> {
  const row = await store.db.selectFrom('import').selectAll().where('shop', '=', store.shop).where('id', '=', id).executeTakeFirst()
  if (!row) return null
  if (row.digest !== digestOf(imported)) throw new Refusal('id-used-twice', { field: 'id', given: id })
  return JSON.parse(row.answer)
}

/** Remembers what was taken in under an id and what was answered, beside the records themselves. */
export async function keepImport(store: Store, id: string, imported: Imported, answer: RackImport, { person, device, atIso }: By): Promise<void> {
  await store.db.insertInto('import').values({ shop: store.shop, person, device, id, digest: digestOf(imported), answer: JSON.stringify(answer), atIso }).execute()
}

function digestOf({ text, unit }: Imported): string {
  return createHash('sha256').update(JSON.stringify([text, unit])).digest('hex')
}
