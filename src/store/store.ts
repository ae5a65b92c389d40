import type { Kysely } from 'kysely'
import type { Tables } from '#store/schema.ts'

/** An open shop database. `shop` names whose rows are meant: one shop for now, written into every row from the start. */
export type Store = {
  readonly db: Kysely<Tables>
  readonly shop: string
  readonly close: () => Promise<void>
}

/** Several writes as one: all or none. Inside another such call it is part of that one. */
export function inTransaction<Result>(store: Store, work: (tx: Store) => Promise<Result>): Promise<Result> {
  if (store.db.isTransaction) return work(store)
  return store.db.transaction().execute((db) => work({ ...store, db }))
}

/** Several reads of one moment, however much is written meanwhile. */
export function atOneMoment<Result>(store: Store, read: (tx: Store) => Promise<Result>): Promise<Result> {
  if (store.db.isTransaction) return read(store)
  return store.db.transaction().setAccessMode('read only').execute((db) => read({ ...store, db }))
}
