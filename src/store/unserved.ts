import { createHash } from 'node:crypto'
import { canonical } from '#model/canonical.ts'
import { Refusal } from '#model/refusal.ts'
import type { Unserved } from '#model/setup-record.ts'
import { inTransaction, type Store } from '#store/store.ts'
import { recordOf } from '#store/records.ts'
import type { Tables } from '#store/schema.ts'

/**
 * Remembers a question that nothing in the rack served: once for each question and day (UTC). Devices send one question of a day under one id,
 * whoever asks it, when and however it is typed; under other ids it is known again by what was typed.
 *
 * @returns whether it was new
 * @throws Refusal `unknown-record` for a vise nobody knows, `id-used-twice` for an id under which another vise, day or other heights were asked for
 */
export async function addUnserved(store: Store, unserved: Unserved): Promise<boolean> {
  return inTransaction(store, async (tx) => {
    const before = await tx.db.selectFrom('unserved').selectAll().where('shop', '=', tx.shop).where('id', '=', unserved.id).executeTakeFirst()
    if (before) {
      if (askedFor(before) !== askedFor(unserved)) throw new Refusal('id-used-twice', { field: 'id', given: unserved.id })
      return false
    }
    await recordOf(tx, 'vise', unserved.viseId, 'viseId')
    const question = createHash('sha256').update(canonical([unserved.viseId, unserved.form])).digest('hex')
    const added = await tx.db.insertInto('unserved')
      .values({ shop: tx.shop, ...unserved, form: canonical(unserved.form), question, day: dayOf(unserved.atIso) })
      .onConflict((clash) => clash.columns(['shop', 'question', 'day']).doNothing()).returning('id').executeTakeFirst()
    return added !== undefined
  })
}

/** Every question nothing served, oldest first. */
export async function unservedOf(store: Store): Promise<Unserved[]> {
  const rows = await store.db.selectFrom('unserved').selectAll().where('shop', '=', store.shop).orderBy('atIso').orderBy('id').execute()
  return rows.map(unservedFrom)
}

const askedFor = ({ viseId, lowMm, highMm, atIso }: Omit<Unserved, 'form'>): string => canonical([viseId, lowMm, highMm, dayOf(atIso)])

const dayOf = (atIso: string): string => atIso.slice(0, 10)

function unservedFrom({ shop: _shop, question: _question, day: _day, form, ...rest }: Tables['unserved']): Unserved {
  return { ...rest, form: JSON.parse(form) }
}
