import { createHash } from 'node:crypto'
import { canonical } from '#model/canonical.ts'
import type { Unserved } from '#model/setup-record.ts'
import { freshOf } from '#store/fresh-of.ts'
import { inTransaction, type Store } from '#store/store.ts'
import { recordOf } from '#store/records.ts'
import type { Tables } from '#store/schema.ts'

/**
 * Remembers a question that nothing in the rack served: once for each question, as typed, and day (UTC).
 *
 * @returns whether it was new
 * @throws Refusal `unknown-record` for a vise nobody knows, `id-used-twice`
 */
export async function addUnserved(store: Store, unserved: Unserved): Promise<boolean> {
  return inTransaction(store, async (tx) => {
    const kept = await tx.db.selectFrom('unserved').selectAll().where('shop', '=', tx.shop).where('id', '=', unserved.id).execute()
    if (freshOf([unserved], new Map(kept.map((row) => [row.id, unservedFrom(row)]))).length === 0) return false
    await recordOf(tx, 'vise', unserved.viseId, 'viseId')
    const question = createHash('sha256').update(canonical([unserved.viseId, unserved.form])).digest('hex')
    const added = await tx.db.insertInto('unserved')
      .values({ shop: tx.shop, ...unserved, form: canonical(unserved.form), question, day: unserved.atIso.slice(0, 10) })
      .onConflict((clash) => clash.columns(['shop', 'question', 'day']).doNothing()).returning('id').executeTakeFirst()
    return added !== undefined
  })
}

/** Every question nothing served, oldest first. */
export async function unservedOf(store: Store): Promise<Unserved[]> {
  const rows = await store.db.selectFrom('unserved').selectAll().where('shop', '=', store.shop).orderBy('atIso').orderBy('id').execute()
  return rows.map(unservedFrom)
}

function unservedFrom({ shop: _shop, question: _question, day: _day, form, ...rest }: Tables['unserved']): Unserved {
  return { ...rest, form: JSON.parse(form) }
}
