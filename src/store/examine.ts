import Database from 'better-sqlite3'
import { Refusal } from '#model/refusal.ts'
import { migrationsFor } from '#store/migrations/all.ts'

const migrations = migrationsFor('sqlite')

/**
 * Looks before anything is touched: sound, ours, and not written by a later program.
 *
 * @param check  `quick_check` leaves out that indexes say what their tables do, and takes a fraction of the time
 * @throws Refusal `database-damaged`, `database-not-ours`, `database-newer-than-program`
 */
export function examine(raw: Database.Database, file: string, check: 'quick_check' | 'integrity_check' = 'quick_check'): void {
  const sound = raw.pragma(`${check}(1)`, { simple: true })
  if (sound !== 'ok') throw new Refusal('database-damaged', { file, given: String(sound).replaceAll(/\s*\n\s*/g, ' ') })
  const tables = raw.prepare<[], string>("select name from sqlite_master where type = 'table'").pluck().all()
  if (tables.length === 0) return
  if (!tables.includes('kysely_migration')) throw new Refusal('database-not-ours', { file, given: tables.slice(0, 5) })
  const run = raw.prepare<[], string>('select name from kysely_migration order by name').pluck().all()
  const newer = run.findLast((name) => !Object.hasOwn(migrations, name))
  if (newer !== undefined) throw new Refusal('database-newer-than-program', { file, given: newer, needed: Object.keys(migrations).at(-1)! })
}

/**
 * The same of a file that nobody has open, in full.
 *
 * @throws Refusal as `examine`, `file-not-there`, and `database-not-ours` for a file that holds nothing at all
 */
export function examineFile(file: string): void {
  const raw = opened(file)
  try {
    examine(raw, file, 'integrity_check')
    if (raw.prepare("select 1 from sqlite_master where name = 'kysely_migration'").get() === undefined) throw new Refusal('database-not-ours', { file, given: 'nothing' })
    const stray = (raw.pragma('foreign_key_check') as { readonly table: string }[])[0]
    if (stray !== undefined) throw new Refusal('database-damaged', { file, given: `foreign key of ${stray.table}` })
  } catch (error) {
    throw error instanceof Database.SqliteError ? new Refusal('database-damaged', { file, given: error.message }) : error
  } finally {
    raw.close()
  }
}

function opened(file: string): Database.Database {
  try {
    return new Database(file, { readonly: true, fileMustExist: true })
  } catch (error) {
    if (error instanceof Database.SqliteError && error.code === 'SQLITE_CANTOPEN') throw new Refusal('file-not-there', { given: file })
    throw error
  }
}
