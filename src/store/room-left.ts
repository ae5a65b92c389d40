import { statfsSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { databaseFile } from '#store/open.ts'
import type { Store } from '#store/store.ts'

/** Bytes of the database file, and bytes free on its disk; null for one in memory alone, and for PostgreSQL, which looks after its own. */
export function roomOf({ kind, folder }: Store): { readonly databaseBytes: number; readonly freeBytes: number } | null {
  if (kind === 'postgres' || folder === ':memory:') return null
  const { bavail, bsize } = statfsSync(folder)
  return { databaseBytes: statSync(join(folder, databaseFile)).size, freeBytes: bavail * bsize }
}
