import type { Facts } from '#model/refusal.ts'
import { Refusal } from '#model/refusal.ts'
import type { Store } from '#store/store.ts'
import { type Backup, makeBackup } from '#tasks/shop/backup/backups.ts'

/** A backup that did not come about; `refused` null: by a fault, whose reason is in the log. */
export type BackupFailed = { readonly atIso: string; readonly refused: string | null; readonly facts: Facts }

/** Who makes the backups of a shop that is served, at their hour and on request. */
export type BackupKeeper = {
  readonly folder: string
  /** How old the last may grow before the next is made; 0: none is made by itself. */
  readonly everyHours: number
  /** @throws Refusal as `makeBackup` */
  readonly make: (nowMs: number) => Promise<Backup>
  /** The last try, where it failed. */
  readonly failed: () => BackupFailed | null
}

export function backupKeeper(store: Store, folder: string, everyHours: number): BackupKeeper {
  let failed: BackupFailed | null = null
  return {
    folder, everyHours, failed: () => failed,
    async make(nowMs) {
      try {
        const made = await makeBackup(store, folder, nowMs)
        failed = null
        return made
      } catch (error) {
        failed = { atIso: new Date(nowMs).toISOString(), ...(error instanceof Refusal ? { refused: error.code, facts: error.facts } : { refused: null, facts: {} }) }
        throw error
      }
    },
  }
}
