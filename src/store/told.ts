import { canonical } from '#model/canonical.ts'
import type { Told } from '#model/setup-record.ts'
import { type Fact, Refusal } from '#model/refusal.ts'
import { freshOf } from '#store/fresh-of.ts'
import { inTransaction, type Store } from '#store/store.ts'
import { recordOf } from '#store/records.ts'
import type { Tables } from '#store/schema.ts'

/**
 * Keeps what was told to someone, as the data it was drawn from; sent again it changes nothing.
 *
 * @throws Refusal `unknown-record` for a setup, job or half-done check nobody knows, `check-not-known`, `field-missing`, `id-used-twice`
 */
export async function addTold(store: Store, told: Told): Promise<void> {
  await inTransaction(store, async (tx) => {
    const kept = await tx.db.selectFrom('told').selectAll().where('shop', '=', tx.shop).where('id', '=', told.id).execute()
    if (freshOf([told], new Map(kept.map((row) => [row.id, toldFrom(row)]))).length === 0) return
    await mindSubject(tx, told)
    await tx.db.insertInto('told').values({ shop: tx.shop, ...told, data: canonical(told.data as Fact) }).execute()
  })
}

/** The check sheets told about a half-done check, oldest first. */
export async function sheetsOfDraft(store: Store, draft: string): Promise<Told[]> {
  const rows = await store.db.selectFrom('told').selectAll()
    .where('shop', '=', store.shop).where('what', '=', 'check sheet').where('checkId', 'is', null).orderBy('atIso').orderBy('id').execute()
  return rows.map(toldFrom).filter((told) => draftOf(told) === draft)
}

/** What was told about one setup, check or job, oldest first. */
export async function toldOf(store: Store, about: 'setupId' | 'checkId' | 'jobId', id: string): Promise<Told[]> {
  const rows = await store.db.selectFrom('told').selectAll()
    .where('shop', '=', store.shop).where(about, '=', id).orderBy('atIso').orderBy('id').execute()
  return rows.map(toldFrom)
}

/** All that was ever told, oldest first. */
export async function allTold(store: Store): Promise<Told[]> {
  return (await store.db.selectFrom('told').selectAll().where('shop', '=', store.shop).orderBy('atIso').orderBy('id').execute()).map(toldFrom)
}

async function mindSubject(store: Store, told: Told): Promise<void> {
  const { setupId, checkId, jobId } = told, draft = draftOf(told)
  if (draft !== null) { await recordOf(store, 'draft', draft, 'data.draft'); return }
  if (setupId !== null) await recordOf(store, 'setup', setupId, 'setupId')
  if (jobId !== null) await recordOf(store, 'job', jobId, 'jobId')
  if (checkId === null) {
    if (setupId === null && jobId === null && !aboutItself.has(told.what)) throw new Refusal('field-missing', { field: 'setupId', given: null, needed: 'setupId, checkId, jobId, or data.draft of a check sheet' })
    return
  }
  const check = await store.db.selectFrom('check').select('id').where('shop', '=', store.shop).where('id', '=', checkId).executeTakeFirst()
  if (!check) throw new Refusal('check-not-known', { field: 'checkId', given: checkId })
}

/** Sheets of what is kept nowhere else: their data say all. */
const aboutItself: ReadonlySet<Told['what']> = new Set(['table sheet', 'chuck sheet'])

/** The half-done check that a check sheet was told about; null: it is about something else. */
function draftOf({ setupId, checkId, jobId, what, data }: Told): string | null {
  if (what !== 'check sheet' || setupId !== null || checkId !== null || jobId !== null) return null
  const draft = typeof data === 'object' && data !== null && !Array.isArray(data) ? data['draft'] : undefined
  return typeof draft === 'string' ? draft : null
}

function toldFrom({ shop: _shop, what, data, ...rest }: Tables['told']): Told {
  return { ...rest, what: what as Told['what'], data: JSON.parse(data) }
}
