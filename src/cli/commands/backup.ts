import { inColumns } from '#cli/columns.ts'
import type { DataOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { Refusal } from '#model/refusal.ts'
import { backupFolderFrom, dataFolderFrom } from '#server/config.ts'
import { placeFrom } from '#server/place.ts'
import { isPostgres } from '#store/postgres/is-postgres.ts'
import { listBackups, makeBackup, restoreBackup } from '#tasks/shop/backup/backups.ts'

export type BackupOptions = DataOptions & { readonly backups?: string; readonly list?: true }

export async function backupCommand({ data, backups, list }: BackupOptions, out: Out): Promise<void> {
  const folder = backupFolderFrom(backups, dataFolderFrom(data, process.env), process.env)
  if (list) {
    const all = listBackups(folder)
    if (all.length === 0) out.say(`There is no backup in ${folder}.\n`)
    else out.answer(inColumns([['backup', 'KiB'], ...all.map(({ name, bytes }) => [name, String(Math.ceil(bytes / 1024))])], [1]))
    return
  }
  await withShop(data, async (store) => {
    const { name } = await makeBackup(store, folder, Date.now())
    out.answer(`${name}\n`)
    out.say(`Made and looked through; it lies in ${folder}.\n`)
  })
}

/** Opens no shop: the one that is there may be what is amiss. */
export async function restoreCommand(file: string, { data, backups }: BackupOptions, out: Out): Promise<void> {
  const dataFolder = dataFolderFrom(data, process.env)
  if (isPostgres(placeFrom(dataFolder, process.env).database)) throw new Refusal('backup-by-database')
  const keptAs = restoreBackup(dataFolder, backupFolderFrom(backups, dataFolder, process.env), file, Date.now())
  out.say(`The shop is as it was in ${file}. ${keptAs === null ? 'There was none before.' : `The one before is kept as ${keptAs} in the data folder.`} Devices stand as they did then: see "twinrest device list" for one that was revoked since.\n`)
}
