import type { Kysely } from 'kysely'
import { refusalOf } from '#store/refusal-of.ts'
import type { Tables } from '#store/schema.ts'
import { writeTogether } from '#store/together.ts'

/** An open shop database. `shop` names whose rows are meant: it stands in every row and every question. */
export type Store = {
  readonly db: Kysely<Tables>
  readonly kind: 'sqlite' | 'postgres'
  readonly shop: string
  /** Wakes whoever listens after each write into the shop, from whichever process; null: whoever wants to know has to look. */
  readonly hear: ((wake: () => void) => () => void) | null
  /** Wakes them; null: nobody is woken. */
  readonly tell: (() => void) | null
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
    return await writeTogether(store, work)
  } catch (error) {
    throw refusalOf(error, store.folder)
  }
}

/** Several reads of one moment, however much is written meanwhile. */
export async function atOneMoment<Result>(store: Store, read: (tx: Store) => Promise<Result>): Promise<Result> {
  if (store.db.isTransaction) return await read(store)
  try {
    const reading = store.db.transaction().setAccessMode('read only')
    return await (store.kind === 'postgres' ? reading.setIsolationLevel('repeatable read') : reading).execute((db) => read({ ...store, db }))
  } catch (error) {
    throw refusalOf(error, store.folder)
  }
}
