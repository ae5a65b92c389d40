import type { Kysely } from 'kysely'
import { refusalOf } from '#store/refusal-of.ts'
import type { Tables } from '#store/schema.ts'

/** An open shop database. `shop` names whose rows are meant: one shop for now, written into every row from the start. */
export type Store = {
  readonly db: Kysely<Tables>
  readonly shop: string
  /** Where it lies. */
  readonly folder: string
  readonly close: () => Promise<void>
}

/**
 * Several writes as one: all or none. Inside another such call it is part of that one.
 *
 * @throws Refusal `disk-full`, `data-folder-not-writable`, `database-damaged`, `database-busy`: nothing of it was written
 */
export async function inTransaction<Result>(store: Store, work: (tx: Store) => Promise<Result>): Promise<Result> {
  if (store.db.isTransaction) return await work(store)
  try {
    return await store.db.transaction().execute((db) => work({ ...store, db }))
  } catch (error) {
    throw refusalOf(error, store.folder)
  }
}

/** Several reads of one moment, however much is written meanwhile. */
export async function atOneMoment<Result>(store: Store, read: (tx: Store) => Promise<Result>): Promise<Result> {
  if (store.db.isTransaction) return await read(store)
  try {
    return await store.db.transaction().setAccessMode('read only').execute((db) => read({ ...store, db }))
  } catch (error) {
    throw refusalOf(error, store.folder)
  }
}
