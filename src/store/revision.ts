import { CompiledQuery } from 'kysely'
import { turnsOf } from '#store/postgres/turn.ts'
import type { Store } from '#store/store.ts'

const versions = CompiledQuery.raw('select data_version as others, total_changes() as own from pragma_data_version') as CompiledQuery<{ others: number; own: number }>

/**
 * Another text after every write, of this program or of another into the same database; now and then without one. Good
 * only as long as the database is open.
 *
 * @source SQLITE-PRAGMA (data_version: others' commits; total_changes(): our own rows)
 */
export async function revisionOf(store: Store): Promise<string> {
  if (store.kind === 'postgres') return String(await turnsOf(store))
  const { rows: [row] } = await store.db.executeQuery(versions)
  return `${row!.others}-${row!.own}`
}
