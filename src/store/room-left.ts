import { statfsSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { databaseFile } from '#store/open.ts'
import type { Store } from '#store/store.ts'

/** Bytes of the database file, and bytes free on its disk; null for one that is in memory alone. */
export function roomOf({ folder }: Store): { readonly databaseBytes: number; readonly freeBytes: number } | null {
  if (folder === ':memory:') return null
  const { bavail, bsize } = statfsSync(folder)
  return { databaseBytes: statSync(join(folder, databaseFile)).size, freeBytes: bavail * bsize }
}
