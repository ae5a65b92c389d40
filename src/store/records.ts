import type { Kept, RecordKind, Saw } from '#model/change.ts'
import type { DraftRecord } from '#model/check-draft.ts'
import type { FieldsOf } from '#model/record-fields.ts'
import { type Fact, Refusal } from '#model/refusal.ts'
import { insertRows } from '#store/insert-rows.ts'
import { inPortions } from '#store/portions.ts'
import type { Store } from '#store/store.ts'
import { type AnyRecordRow, columnsOf, type ColumnKind } from '#store/schema.ts'

/** What is written of a record when its changes have been laid together. */
export type Standing = {
  readonly id: string
  readonly values: { readonly [field: string]: Fact }
  readonly saw: Saw
  readonly clashes: number
  /** The greatest of the changes that stand in some field, and who made it. */
  readonly by: { readonly change: string; readonly person: string; readonly device: string }
}

/** All records of a kind as they stand, in the order of their ids. */
export async function recordsOf<Kind extends RecordKind>(store: Store, kind: Kind): Promise<Kept<FieldsOf[Kind]>[]> {
  const rows = await store.db.selectFrom(kind as 'bar').selectAll().where('shop', '=', store.shop).orderBy('id').execute()
  return rows.map((row) => keptFrom(kind, row as AnyRecordRow))
}

/** Those records of a kind that stand under these ids. */
export async function recordsUnder<Kind extends RecordKind>(store: Store, kind: Kind, ids: readonly string[]): Promise<Kept<FieldsOf[Kind]>[]> {
  const found: Kept<FieldsOf[Kind]>[] = []
  for (const some of inPortions(ids)) {
    const rows = await store.db.selectFrom(kind as 'bar').selectAll().where('shop', '=', store.shop).where('id', 'in', some).execute()
    for (const row of rows) found.push(keptFrom(kind, row as AnyRecordRow))
  }
  return found
}

/** Half-done checks; those kept or dropped stay in the database only. */
export async function openDraftsOf(store: Store): Promise<DraftRecord[]> {
  const rows = await store.db.selectFrom('draft').selectAll().where('shop', '=', store.shop).where('state', '=', 'open').orderBy('id').execute()
  return rows.map((row) => keptFrom('draft', row as AnyRecordRow))
}

/** @throws Refusal `unknown-record` with `field`, where nothing of this kind has the id */
export async function recordOf<Kind extends RecordKind>(store: Store, kind: Kind, id: string, field = 'id'): Promise<Kept<FieldsOf[Kind]>> {
  const row = await store.db.selectFrom(kind as 'bar').selectAll()
    .where('shop', '=', store.shop).where('id', '=', id).executeTakeFirst()
  if (!row) throw new Refusal('unknown-record', { field, kind, given: id })
  return keptFrom(kind, row as AnyRecordRow)
}

/** Which of these ids a record of the kind stands under; `before`: some that are known and need not be asked for. */
export async function knownOf(store: Store, kind: RecordKind, ids: readonly string[], before: ReadonlySet<string> = new Set()): Promise<ReadonlySet<string>> {
  const known = new Set(before)
  for (const some of inPortions([...new Set(ids)].filter((id) => !known.has(id)))) {
    const rows = await store.db.selectFrom(kind as 'bar').select('id').where('shop', '=', store.shop).where('id', 'in', some).execute()
    for (const row of rows) known.add(row.id)
  }
  return known
}

/** The bars and slots that carry one of these codes. */
export async function bearersOf(store: Store, codes: readonly string[]): Promise<{ readonly kind: 'bar' | 'slot'; readonly id: string; readonly code: string }[]> {
  const found = []
  for (const kind of ['bar', 'slot'] as const) {
    for (const some of inPortions(codes)) {
      const rows = await store.db.selectFrom(kind).select(['id', 'code']).where('shop', '=', store.shop).where('code', 'in', some).execute()
      found.push(...rows.map((row) => ({ kind, id: row.id, code: String(row.code) })))
    }
  }
  return found
}

/** Writes records as they stand over what stood before. */
export async function putRecords(store: Store, kind: RecordKind, records: readonly Standing[]): Promise<void> {
  await insertRows(store, kind, records.map((record) => rowFrom(store, kind, record)), 'replace')
}

function keptFrom<Kind extends RecordKind>(kind: Kind, row: AnyRecordRow): Kept<FieldsOf[Kind]> {
  const fields = Object.entries(columnsOf[kind] as { [field: string]: ColumnKind }).map(([field, column]) => [field, valueFrom(column, row[field]!)])
  return { id: row.id, ...Object.fromEntries(fields), saw: JSON.parse(row.saw) }
}

function rowFrom(store: Store, kind: RecordKind, { id, values, saw, clashes, by }: Standing): AnyRecordRow {
  const fields = Object.entries(columnsOf[kind] as { [field: string]: ColumnKind }).map(([field, column]) => [field, columnFrom(column, values[field]!)])
  return { shop: store.shop, id, ...by, saw: JSON.stringify(saw), clashes, ...Object.fromEntries(fields) }
}

function valueFrom(column: ColumnKind, value: string | number | null): Fact {
  if (column === 'yes-no') return value === 1
  return column === 'json' && value !== null ? JSON.parse(String(value)) : value
}

function columnFrom(column: ColumnKind, value: Fact): string | number | null {
  if (column === 'yes-no') return value === true ? 1 : 0
  return column === 'json' && value !== null ? JSON.stringify(value) : value as string | number | null
}
