import { canonical } from '#model/canonical.ts'
import { type Change, type Clash, type RecordKind, recordKinds } from '#model/change.ts'
import { withParts } from '#model/field-parts.ts'
import { fieldsOfKind, laterFields, readField } from '#model/record-fields.ts'
import { Refusal } from '#model/refusal.ts'
import { addFresh } from '#store/add-fresh.ts'
import { inTransaction, type Store } from '#store/store.ts'
import { insertRows } from '#store/insert-rows.ts'
import { inPortions } from '#store/portions.ts'
import { putRecords, type Standing } from '#store/records.ts'
import { mindReferences } from '#store/references.ts'
import type { ChangeRow } from '#store/schema.ts'
import { type FieldStanding, sawOf, standingOf } from '#store/standing.ts'

/** The changes that hold (ids of those given, less those kept aside), and the clashes the given ones have a part in. */
export type Applied = { readonly stood: readonly string[]; readonly clashes: readonly Clash[] }

type RecordName = { readonly kind: RecordKind; readonly record: string }
type Laid = RecordName & { readonly standing: ReadonlyMap<string, FieldStanding> }

/**
 * Puts changes on the shelf, all or none, and lays each record they touch together anew.
 *
 * Sent again they change nothing and get the same answer; in whatever order changes arrive, the same stands. A record's
 * first change must bring every field, unless the rest comes in the same call.
 *
 * @throws Refusal `unknown-key`, `field-missing` and what `readAs` refuses, `id-used-twice`, `saw-in-circle`, `unknown-record`,
 *   `jaw-set-not-known`, `code-used-twice`
 */
export async function applyChanges(store: Store, changes: readonly Change[]): Promise<Applied> {
  const read = changes.map((change, at) => ({ ...change, fields: fieldsOf(change, `changes[${at}].fields`) }))
  return inTransaction(store, async (tx) => {
    const fresh = await addFresh(read, (all) => insertRows(tx, 'change', all.map((change) => ({ shop: tx.shop, ...change, fields: canonical(change.fields) })), 'leave out'), (ids) => keptUnder(tx, ids))
    const laid = await layTogether(tx, read)
    const touched = new Set(fresh.map(nameOf))
    const news = laid.filter((record) => touched.has(nameOf(record)))
    await mindReferences(tx, await materialise(tx, news, read))
    const clashes = laid.flatMap(clashesIn)
    const ids = new Set(read.map((change) => change.id))
    const aside = new Set(laid.flatMap(({ standing }) => [...standing.values()]).flatMap((field) => field.aside.map((one) => one.id)))
    return {
      stood: [...ids].filter((id) => !aside.has(id)),
      clashes: clashes.filter((clash) => ids.has(clash.stands.change) || ids.has(clash.aside.change)),
    }
  })
}

/** Every pair of changes that did not see each other and wanted different values, until a later change follows both. */
export async function clashesOf(store: Store): Promise<Clash[]> {
  const clashing: RecordName[] = []
  for (const kind of recordKinds) {
    const rows = await store.db.selectFrom(kind as 'bar').select('id').where('shop', '=', store.shop).where('clashes', '>', 0).orderBy('id').execute()
    clashing.push(...rows.map((row) => ({ kind, record: row.id })))
  }
  return (await layTogether(store, clashing)).flatMap(clashesIn)
}

/** All changes of one record, in the order of their ids. */
export async function changesOf(store: Store, kind: RecordKind, record: string): Promise<Change[]> {
  const rows = await store.db.selectFrom('change').selectAll()
    .where('shop', '=', store.shop).where('kind', '=', kind).where('record', '=', record).execute()
  // Asked for in this order, SQLite goes through the ids of the whole shop.
  return rows.map(changeFrom).sort((a, b) => (a.id < b.id ? -1 : 1))
}

/** The fields of a change, each read by the schema of its kind. */
function fieldsOf(change: Change, path: string): Change['fields'] {
  if (change.kind === 'shop' && change.record !== 'shop') throw new Refusal('value-not-allowed', { field: 'record', given: change.record, needed: 'shop' })
  return Object.fromEntries(Object.entries(change.fields).map(([field, { value, saw }]) => {
    if (saw.includes(change.id)) throw new Refusal('saw-in-circle', { field: `${path}.${field}`, given: change.id })
    return [field, { value: readField(change.kind, field, value, `${path}.${field}`), saw }]
  }))
}

async function keptUnder(store: Store, ids: readonly string[]): Promise<ReadonlyMap<string, Change>> {
  const kept = new Map<string, Change>()
  for (const some of inPortions(ids)) {
    const rows = await store.db.selectFrom('change').selectAll().where('shop', '=', store.shop).where('id', 'in', some).execute()
    for (const row of rows) kept.set(row.id, changeFrom(row))
  }
  return kept
}

/** Every named record once, with all its changes laid together. */
async function layTogether(store: Store, names: readonly RecordName[]): Promise<Laid[]> {
  const byName = new Map<string, RecordName & { changes: Change[] }>()
  for (const { kind, record } of names) byName.set(nameOf({ kind, record }), { kind, record, changes: [] })
  for (const kind of new Set(names.map((name) => name.kind))) {
    for (const some of inPortions([...byName.values()].filter((one) => one.kind === kind))) {
      const rows = await store.db.selectFrom('change').selectAll().where('shop', '=', store.shop)
        .where('kind', '=', kind).where('record', 'in', some.map((one) => one.record)).execute()
      for (const change of rows.map(changeFrom)) byName.get(nameOf(change))!.changes.push(change)
    }
  }
  return [...byName.values()].map(({ kind, record, changes }) => ({ kind, record, standing: standingOf(changes) }))
}

/** Writes what stands of each record; `sent` are the changes to blame when a record is not whole. */
async function materialise(store: Store, laid: readonly Laid[], sent: readonly Change[]): Promise<(Standing & { readonly kind: RecordKind })[]> {
  const records = laid.map(({ kind, record, standing }) => {
    for (const field of fieldsOfKind(kind)) {
      if (standing.has(field) || Object.hasOwn(laterFields[kind] ?? {}, field)) continue
      const at = sent.findIndex((change) => change.kind === kind && change.record === record)
      const path = `changes[${at}].fields.${field}`
      if (sent[at]!.fields[field]) throw new Refusal('saw-in-circle', { field: path, given: sent[at]!.id })
      throw new Refusal('field-missing', { field: path, given: null, needed: `every field of a new ${kind}` })
    }
    const greatest = [...standing.values()].map((field) => field.stands).reduce((a, b) => (a.id > b.id ? a : b))
    return {
      kind, id: record, saw: sawOf(standing),
      values: { ...laterFields[kind] as Standing['values'] | undefined, ...withParts(Object.fromEntries([...standing].map(([field, { value }]) => [field, value]))) },
      clashes: [...standing.values()].filter((field) => field.aside.length > 0).length,
      by: { change: greatest.id, person: greatest.person, device: greatest.device },
    }
  })
  for (const kind of new Set(records.map((record) => record.kind))) await putRecords(store, kind, records.filter((record) => record.kind === kind))
  return records
}

function clashesIn({ kind, record, standing }: Laid): Clash[] {
  return [...standing].flatMap(([field, { stands, aside }]) => {
    const side = (change: Change) => ({ change: change.id, value: change.fields[field]!.value, person: change.person })
    return aside.map((other) => ({ kind, record, field, stands: side(stands), aside: side(other) }))
  })
}

function changeFrom({ shop: _shop, kind, fields, ...rest }: ChangeRow): Change {
  return { ...rest, kind: kind as RecordKind, fields: JSON.parse(fields) }
}

const nameOf = ({ kind, record }: RecordName): string => `${kind} ${record}`
