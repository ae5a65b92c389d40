import Database from 'better-sqlite3'
import { copyFileSync, existsSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { Refusal } from '#model/refusal.ts'
import { examineFile } from '#store/examine.ts'
import { toDisk } from '#store/on-disk.ts'
import { databaseFile } from '#store/open.ts'
import { refusalOf } from '#store/refusal-of.ts'

/** What SQLite lays beside a database while it is open, or after its program was cut off. */
const beside = ['-wal', '-shm']

/**
 * Puts a copy of a database in the place of the one in a data folder. The one before is kept beside it; at every moment
 * there is a whole database under the usual name.
 *
 * @param keptAs  the name the one before is kept under, in the same folder
 * @returns whether there was one before
 * @throws Refusal `shop-is-open` while any program has it open, `file-not-there`, `database-damaged`, `database-not-ours`,
 *   `database-newer-than-program` of the copy, `disk-full`, `data-folder-not-writable`; the shop is then as it was
 */
export function putInPlace(folder: string, copy: string, keptAs: string): boolean {
  const file = join(folder, databaseFile), next = `${file}.restoring`
  examineFile(copy)
  try {
    copyFileSync(copy, next)
    toDisk(next)
    const before = existsSync(file)
    if (before) {
      mindNobodyHasIt(file)
      for (const end of ['', ...beside]) if (existsSync(file + end)) { copyFileSync(file + end, join(folder, keptAs + end)); toDisk(join(folder, keptAs + end)) }
    }
    // A log of the one before must not be taken for one of the copy.
    for (const end of beside) rmSync(file + end, { force: true })
    renameSync(next, file)
    toDisk(folder)
    return before
  } catch (error) {
    rmSync(next, { force: true })
    throw refusalOf(error, folder)
  }
}

/**
 * A database is taken out of its write-ahead mode, which writes all of it into its one file, only by who has it alone. A
 * damaged one is nobody's that works.
 *
 * @source SQLITE-PRAGMA (journal_mode)
 */
function mindNobodyHasIt(file: string): void {
  let raw: Database.Database | undefined
  try {
    raw = new Database(file, { timeout: 500 })
    raw.pragma('journal_mode = DELETE')
  } catch (error) {
    if (error instanceof Database.SqliteError && /^SQLITE_(BUSY|LOCKED)/.test(error.code)) throw new Refusal('shop-is-open', { file })
    if (!(error instanceof Database.SqliteError && /^SQLITE_(CORRUPT|NOTADB)/.test(error.code))) throw error
  } finally {
    raw?.close()
  }
}
