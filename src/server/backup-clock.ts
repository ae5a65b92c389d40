import { Refusal } from '#model/refusal.ts'
import type { Log } from '#server/log.ts'
import type { BackupKeeper } from '#tasks/shop/backup/backup-keeper.ts'
import { listBackups } from '#tasks/shop/backup/backups.ts'

const firstMs = 60_000, lookMs = 600_000

/** Makes a backup whenever the last one is older than `everyHours`; 0: never. One that fails is logged and tried again. @returns stops it */
export function keepBackups({ folder, everyHours, make }: BackupKeeper, log: Log): () => void {
  if (everyHours === 0) return () => {}
  let next = setTimeout(look, firstMs).unref()
  function look(): void {
    next = setTimeout(look, lookMs).unref()
    void backUp()
  }
  async function backUp(): Promise<void> {
    const last = listBackups(folder)[0], beganMs = Date.now()
    if (last !== undefined && beganMs - Date.parse(last.atIso) < everyHours * 3_600_000) return
    try {
      const { name, bytes } = await make(beganMs)
      log({ level: 'info', what: 'backup', name, bytes, ms: Date.now() - beganMs })
    } catch (error) {
      log({ level: 'error', what: 'backup failed', why: error instanceof Refusal ? error.code : error instanceof Error ? (error.stack ?? error.message) : String(error) })
    }
  }
  return () => clearTimeout(next)
}
