import { CompiledQuery } from 'kysely'
import { inPortions } from '#store/portions.ts'
import type { Tables } from '#store/schema.ts'
import type { Store } from '#store/store.ts'

type Row = { readonly [column: string]: string | number | null }
/** What becomes of a row whose key is there already: the whole is refused, the row is left out, or it takes the other's place. */
type AtClash = 'refuse' | 'leave out' | 'replace'

/**
 * Adds rows to a table of records with ids, or of readings, which have none and are refused at a clash. The statement is put
 * together as text: the query builder takes as long for it as the database for the row.
 *
 * @param rows  all with the same columns
 * @returns at `leave out` the ids of those that came in, else none
 */
export async function insertRows(store: Store, table: keyof Tables, rows: readonly Row[], atClash: AtClash): Promise<string[]> {
  const ids: string[] = [], columns = Object.keys(rows[0] ?? {})
  for (const some of inPortions(rows)) {
    const values = some.flatMap((row) => columns.map((column) => row[column]))
    const query = CompiledQuery.raw(`insert into "${table}" (${columns.map(quoted).join(', ')}) values ${placesOf(store, some.length, columns.length)}${endings[atClash](columns)}`, values)
    for (const { id } of (await store.db.executeQuery(query as CompiledQuery<{ id: string }>)).rows) ids.push(id)
  }
  return ids
}

const quoted = (column: string): string => `"${column}"`

const endings: { readonly [Kind in AtClash]: (columns: readonly string[]) => string } = {
  'refuse': () => '',
  'leave out': () => ' on conflict ("shop", "id") do nothing returning "id"',
  'replace': (columns) => ` on conflict ("shop", "id") do update set ${columns.filter((column) => column !== 'shop' && column !== 'id').map((column) => `"${column}" = excluded."${column}"`).join(', ')}`,
}

function placesOf({ kind }: Store, rows: number, columns: number): string {
  const place = (at: number) => (kind === 'sqlite' ? '?' : `$${at}`)
  return Array.from({ length: rows }, (_, row) => `(${Array.from({ length: columns }, (_, column) => place(row * columns + column + 1)).join(', ')})`).join(', ')
}
