import { sql } from 'kysely'
import type { RecordKind } from '#model/change.ts'
import type { Store } from '#store/store.ts'

type Log = 'change' | 'check' | 'event'
type Row = { readonly row: number; readonly id: string }

/** The row that came last into each of the tables that are only ever added to, and out of which the rest of a shop follows; null: none did. */
export type Tips = { readonly [Table in Log]: Row | null }

/** What came into a shop: records that were changed, by kind, checks and events, each by id. */
export type Came = { readonly records: ReadonlyMap<RecordKind, ReadonlySet<string>>; readonly checks: readonly string[]; readonly events: readonly string[] }

/**
 * How far the shop has come; null on PostgreSQL, whose rows do not say in which order they came.
 *
 * @source SQLITE-AUTOINC (a new row is numbered one above the greatest there is)
 */
export async function tipsOf(store: Store): Promise<Tips | null> {
  return store.kind === 'postgres' ? null : { change: await tipOf(store, 'change'), check: await tipOf(store, 'check'), event: await tipOf(store, 'event') }
}

/** What came after these tips; null where rows were taken away since, so that all of the shop has to be looked at. */
export async function cameSince(store: Store, tips: Tips): Promise<Came | null> {
  for (const [table, tip] of Object.entries(tips) as [Log, Row | null][]) if (tip !== null && await idAt(store, table, tip.row) !== tip.id) return null
  const { rows: changes } = await sql<{ kind: RecordKind; record: string }>`select kind, record from change where rowid > ${tips.change?.row ?? 0}`.execute(store.db)
  const records = new Map<RecordKind, Set<string>>()
  for (const { kind, record } of changes) records.set(kind, (records.get(kind) ?? new Set()).add(record))
  return { records, checks: await idsAfter(store, 'check', tips), events: await idsAfter(store, 'event', tips) }
}

async function tipOf({ db }: Store, table: Log): Promise<Row | null> {
  const { rows: [row] } = await sql<Row>`select rowid as row, id from ${sql.table(table)} order by rowid desc limit 1`.execute(db)
  return row ?? null
}

async function idAt({ db }: Store, table: Log, row: number): Promise<string | undefined> {
  return (await sql<{ id: string }>`select id from ${sql.table(table)} where rowid = ${row}`.execute(db)).rows[0]?.id
}

async function idsAfter({ db }: Store, table: Log, tips: Tips): Promise<string[]> {
  return (await sql<{ id: string }>`select id from ${sql.table(table)} where rowid > ${tips[table]?.row ?? 0}`.execute(db)).rows.map(({ id }) => id)
}
