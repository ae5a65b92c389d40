import { chmodSync, renameSync, rmSync } from 'node:fs'
import { dirname } from 'node:path'
import { sql } from 'kysely'
import { Refusal } from '#model/refusal.ts'
import { examineFile } from '#store/examine.ts'
import { toDisk } from '#store/on-disk.ts'
import { refusalOf } from '#store/refusal-of.ts'
import type { Store } from '#store/store.ts'

/**
 * A copy of the whole database as it stands at one moment, in one file, while others go on reading and writing. It is
 * looked through in full and lies on the disk before it bears its name.
 *
 * @throws Refusal `backup-by-database`, `disk-full`, `data-folder-not-writable`, `database-damaged`; there is then no file
 * @source SQLITE-PRAGMA (vacuum into)
 */
export async function copyStore(store: Store, file: string): Promise<void> {
  if (store.kind === 'postgres') throw new Refusal('backup-by-database')
  const part = `${file}.part`
  rmSync(part, { force: true })
  try {
    await sql`vacuum into ${part}`.execute(store.db)
    chmodSync(part, 0o600)
    examineFile(part)
    toDisk(part)
    renameSync(part, file)
    toDisk(dirname(file))
  } catch (error) {
    rmSync(part, { force: true })
    throw refusalOf(error, dirname(file))
  }
}
