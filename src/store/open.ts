import Database from 'better-sqlite3'
import { Kysely, Migrator, type SqliteDatabase } from 'kysely'
import { accessSync, constants, existsSync, mkdirSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { Refusal } from '#model/refusal.ts'
import { ImmediateDialect } from '#store/immediate.ts'
import { migrationsFor } from '#store/migrations/all.ts'
import type { Tables } from '#store/schema.ts'
import { startShop } from '#store/start-shop.ts'
import type { Store } from '#store/store.ts'

export const databaseFile = 'shop.sqlite'

/** SQLite itself waits with the whole program: long at the start, then hardly; writers wait in `ImmediateDialect`. */
const patienceAtStartMs = 5000, pauseMs = 50

/**
 * Opens the database of a data folder and brings it up to date; makes folder and database where there are none.
 *
 * @param folder  the data folder, or `:memory:` for a database that ends with the process
 * @throws Refusal `data-folder-not-writable`, `database-damaged`, `database-not-ours`, `database-newer-than-program`, `database-busy`; the file is then as it was
 */
export async function openStore(folder: string): Promise<Store> {
  const file = folder === ':memory:' ? folder : fileIn(folder)
  const raw = open(file, folder)
  try {
    examine(raw, file)
    for (const setting of ['journal_mode = WAL', 'synchronous = FULL', 'foreign_keys = ON', 'trusted_schema = OFF', `busy_timeout = ${pauseMs}`]) raw.pragma(setting)
    const db = new Kysely<Tables>({ dialect: new ImmediateDialect({ database: keepingStatements(raw) }) })
    const { error } = await new Migrator({ db, provider: { getMigrations: async () => ({ ...migrations }) } }).migrateToLatest()
    if (error) throw error
    const store: Store = { db, shop: 'shop', close: () => db.destroy() }
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

/** Looks before anything is touched: sound, ours, and not written by a later program. */
function examine(raw: Database.Database, file: string): void {
  const sound = raw.pragma('quick_check(1)', { simple: true })
  if (sound !== 'ok') throw new Refusal('database-damaged', { file, given: String(sound) })
  const tables = raw.prepare<[], string>("select name from sqlite_master where type = 'table'").pluck().all()
  if (tables.length === 0) return
  if (!tables.includes('kysely_migration')) throw new Refusal('database-not-ours', { file, given: tables.slice(0, 5) })
  const run = raw.prepare<[], string>('select name from kysely_migration order by name').pluck().all()
  const newer = run.findLast((name) => !Object.hasOwn(migrations, name))
  if (newer !== undefined) throw new Refusal('database-newer-than-program', { file, given: newer, needed: Object.keys(migrations).at(-1)! })
}

function refusalFrom(error: unknown, file: string, folder: string): unknown {
  if (!(error instanceof Database.SqliteError)) return error
  if (/^SQLITE_(NOTADB|CORRUPT)/.test(error.code)) return new Refusal('database-damaged', { file, given: error.message })
  if (/^SQLITE_(CANTOPEN|READONLY|PERM)/.test(error.code)) return notWritable(folder, error)
  return error
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
