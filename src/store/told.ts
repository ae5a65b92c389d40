import type { Told } from '#model/setup-record.ts'
import { type Fact, Refusal } from '#model/refusal.ts'
import { canonical, freshOf } from '#store/canonical.ts'
import { inTransaction, type Store } from '#store/store.ts'
import { recordOf } from '#store/records.ts'
import type { Tables } from '#store/schema.ts'

/**
 * Keeps what was told to someone, as the data it was drawn from; sent again it changes nothing.
 *
 * @throws Refusal `unknown-record` for a setup or job nobody knows, `id-used-twice`
 */
export async function addTold(store: Store, told: Told): Promise<void> {
  await inTransaction(store, async (tx) => {
    const kept = await tx.db.selectFrom('told').selectAll().where('shop', '=', tx.shop).where('id', '=', told.id).execute()
    if (freshOf([told], new Map(kept.map((row) => [row.id, toldFrom(row)]))).length === 0) return
    await mindSubject(tx, told)
    await tx.db.insertInto('told').values({ shop: tx.shop, ...told, data: canonical(told.data as Fact) }).execute()
  })
}

/** What was told about one setup, check or job, oldest first. */
export async function toldOf(store: Store, about: 'setupId' | 'checkId' | 'jobId', id: string): Promise<Told[]> {
  const rows = await store.db.selectFrom('told').selectAll()
    .where('shop', '=', store.shop).where(about, '=', id).orderBy('atIso').orderBy('id').execute()
  return rows.map(toldFrom)
}

async function mindSubject(store: Store, { setupId, checkId, jobId }: Told): Promise<void> {
  if (setupId !== null) await recordOf(store, 'setup', setupId, 'setupId')
  if (jobId !== null) await recordOf(store, 'job', jobId, 'jobId')
  if (checkId === null) {
    if (setupId === null && jobId === null) throw new Refusal('field-missing', { field: 'setupId', given: null, needed: 'setupId, checkId or jobId' })
    return
  }
  const check = await store.db.selectFrom('check').select('id').where('shop', '=', store.shop).where('id', '=', checkId).executeTakeFirst()
  if (!check) throw new Refusal('check-not-known', { field: 'checkId', given: checkId })
}

function toldFrom({ shop: _shop, what, data, ...rest }: Tables['told']): Told {
  return { ...rest, what: what as Told['what'], data: JSON.parse(data) }
}
