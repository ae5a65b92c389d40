import { existsSync, mkdirSync, readdirSync, rmSync, statSync } from 'node:fs'
import { basename, join } from 'node:path'
import { Refusal } from '#model/refusal.ts'
import { copyStore } from '#store/copy.ts'
import { examineFile } from '#store/examine.ts'
import { refusalOf } from '#store/refusal-of.ts'
import { putInPlace } from '#store/restore.ts'
import type { Store } from '#store/store.ts'

/** One backup: a whole database of its own. */
export type Backup = { readonly name: string; readonly atIso: string; readonly bytes: number }

/** Backups kept at most, and for how long. The newest is kept whatever its age. */
export const backupsMost = 30, backupDays = 90

const dayMs = 86_400_000, ofName = /^shop-(\d{4}-\d{2}-\d{2})T(\d{2})-(\d{2})-(\d{2})-(\d{3})Z\.sqlite$/

/** Makes a backup and drops those that are too many or too old. @throws Refusal as `copyStore` */
export async function makeBackup(store: Store, folder: string, nowMs: number): Promise<Backup> {
  const name = `shop-${stampOf(nowMs)}.sqlite`
  try { mkdirSync(folder, { recursive: true }) } catch (error) { throw refusalOf(error, folder) }
  await copyStore(store, join(folder, name))
  for (const old of toDrop(listBackups(folder), nowMs)) rmSync(join(folder, old.name), { force: true })
  return listBackups(folder).find((one) => one.name === name)!
}

/** The newest first. A folder that is not there holds none. */
export function listBackups(folder: string): Backup[] {
  if (!existsSync(folder)) return []
  return readdirSync(folder).filter((name) => ofName.test(name)).sort().reverse().map((name) => ({ name, atIso: atIsoOf(name), bytes: statSync(join(folder, name)).size }))
}

/** Looks a backup through in full, as it was when it was made. @returns what is amiss, as `examineFile` says it, or null. @throws Refusal `file-not-there` */
export function checkBackup(folder: string, name: string): Refusal | null {
  if (!listBackups(folder).some((one) => one.name === name)) throw new Refusal('file-not-there', { given: name })
  try {
    examineFile(join(folder, name))
    return null
  } catch (error) {
    if (error instanceof Refusal) return new Refusal(error.code, { ...error.facts, file: name })
    throw error
  }
}

/** @param backups  the newest first */
export function toDrop(backups: readonly Backup[], nowMs: number): Backup[] {
  return backups.filter(({ atIso }, at) => at > 0 && (at >= backupsMost || nowMs - Date.parse(atIso) > backupDays * dayMs))
}

/**
 * Puts a backup in the shop's place.
 *
 * @param given  a path, or the name of a backup in `backupFolder`
 * @returns the name under which the database before is kept in the data folder; null where there was none
 * @throws Refusal as `putInPlace`
 */
export function restoreBackup(dataFolder: string, backupFolder: string, given: string, nowMs: number): string | null {
  const inFolder = join(backupFolder, basename(given)), file = existsSync(given) ? given : given === basename(given) && existsSync(inFolder) ? inFolder : null
  if (file === null) throw new Refusal('file-not-there', { given })
  const keptAs = `shop-before-restore-${stampOf(nowMs)}.sqlite`
  return putInPlace(dataFolder, file, keptAs) ? keptAs : null
}

/** A moment as part of a file's name, which may hold no colon everywhere. */
const stampOf = (ms: number): string => new Date(ms).toISOString().replaceAll(/[:.]/g, '-')
const atIsoOf = (name: string): string => name.replace(ofName, '$1T$2:$3:$4.$5Z')
