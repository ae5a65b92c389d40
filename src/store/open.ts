import Database from 'better-sqlite3'
import { Kysely, Migrator, type SqliteDatabase } from 'kysely'
import { accessSync, constants, existsSync, mkdirSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { Refusal } from '#model/refusal.ts'
import { examine } from '#store/examine.ts'
import { ImmediateDialect } from '#store/immediate.ts'
import { migrationsFor } from '#store/migrations/all.ts'
import { isPostgres } from '#store/postgres/is-postgres.ts'
import { refusalOf } from '#store/refusal-of.ts'
import type { Tables } from '#store/schema.ts'
import { isThere, startShop } from '#store/start-shop.ts'
import { usualShop } from '#store/usual-shop.ts'
import type { Store } from '#store/store.ts'

export const databaseFile = 'shop.sqlite'

/** SQLite itself waits with the whole program: long at the start, then hardly; writers wait in `ImmediateDialect`. */
const patienceAtStartMs = 5000, pauseMs = 50

/**
 * Opens a shop wherever it is kept and brings its tables up to date.
 *
 * @param place  `postgres://…`, a data folder, or `:memory:` for a database that ends with the process
 * @param shop  which of the shops of a PostgreSQL database
 * @param begin  a shop that is not there is begun; left out: only one that has the database to itself
 * @throws Refusal `shop-not-there`, and as `openInstallation` and `openFolder`
 */
export async function openStore(place: string, shop = usualShop, begin = shop === usualShop): Promise<Store> {
  if (!isPostgres(place)) {
    if (!begin && !existsSync(join(place, databaseFile))) throw new Refusal('shop-not-there', { given: place })
    return await openFolder(place)
  }
  // Asked for only where it is needed: the driver takes longer to load than a shop to open.
  const { openInstallation } = await import('#store/postgres/installation.ts')
  const { storeOf, close } = await openInstallation(place), store = { ...storeOf(shop), close }
  try {
    if (begin) await startShop(store)
    else if (!await isThere(store)) throw new Refusal('shop-not-there', { given: shop })
    return store
  } catch (error) {
    await close()
    throw error
  }
}

/**
 * Opens the database of a data folder and brings it up to date; makes folder and database where there are none.
 *
 * @throws Refusal `data-folder-not-writable`, `database-damaged`, `database-not-ours`, `database-newer-than-program`, `database-busy`; the file is then as it was
 */
async function openFolder(folder: string): Promise<Store> {
  const file = folder === ':memory:' ? folder : fileIn(folder)
  const raw = open(file, folder)
  try {
    examine(raw, file)
    for (const setting of ['journal_mode = WAL', 'synchronous = FULL', 'foreign_keys = ON', 'trusted_schema = OFF', `busy_timeout = ${pauseMs}`]) raw.pragma(setting)
    const db = new Kysely<Tables>({ dialect: new ImmediateDialect({ database: keepingStatements(raw) }) })
    const { error } = await new Migrator({ db, provider: { getMigrations: async () => ({ ...migrations }) } }).migrateToLatest()
    if (error) throw error
    const store: Store = { db, kind: 'sqlite', shop: usualShop, folder, hear: null, tell: null, close: () => db.destroy() }
    await startShop(store)
    return store
  } catch (error) {
    raw.close()
    throw refusalFrom(error, file, folder)
  }
}

const migrations = migrationsFor('sqlite')

function fileIn(folder: string): string {
  try {
    makeFolder(resolve(folder))
    accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK)
    const file = join(folder, databaseFile)
    if (existsSync(file)) accessSync(file, constants.R_OK | constants.W_OK)
    return file
  } catch (error) {
    throw notWritable(folder, error)
  }
}

/** Step by step: Node's own way of making all steps at once never ends under a folder such as `/proc`, where none can be made. */
function makeFolder(folder: string): void {
  if (existsSync(folder)) return
  makeFolder(dirname(folder))
  try {
    mkdirSync(folder)
  } catch (error) {
    if (!existsSync(folder)) throw error
  }
}

function open(file: string, folder: string): Database.Database {
  try {
    return new Database(file, { timeout: patienceAtStartMs })
  } catch (error) {
    throw refusalFrom(error, file, folder)
  }
}

function refusalFrom(error: unknown, file: string, folder: string): unknown {
  const refusal = refusalOf(error, folder)
  return refusal instanceof Refusal && refusal.code === 'database-damaged' ? new Refusal('database-damaged', { ...refusal.facts, file }) : refusal
}

function notWritable(folder: string, error: unknown): Refusal {
  return new Refusal('data-folder-not-writable', { folder, given: error instanceof Error && 'code' in error ? String(error.code) : 'unknown' })
}

/** Kysely prepares anew for each query; keeping statements by their text makes reads 1.6 times as fast (measured). */
function keepingStatements(raw: Database.Database): SqliteDatabase {
  const kept = new Map<string, Database.Statement>()
  return {
    close: () => { raw.close() },
    prepare: (text) => {
      const statement = kept.get(text) ?? raw.prepare(text)
      if (kept.size < 500) kept.set(text, statement)
      return statement
    },
  }
}
