import { z } from '@hono/zod-openapi'
import { Refusal } from '#model/refusal.ts'
import { shopFileSchema } from '#model/shop-file.ts'
import { type Doors, openRoute } from '#server/open-route.ts'
import { withoutPlaces } from '#server/troubles.ts'
import type { Store } from '#store/store.ts'
import type { BackupKeeper } from '#tasks/shop/backup/backup-keeper.ts'
import { checkBackup, listBackups } from '#tasks/shop/backup/backups.ts'
import { exportShop, importShop } from '#tasks/shop/backup/shop-file.ts'

const backupSchema = z.object({ name: z.string(), atIso: z.string(), bytes: z.number() })
const factsSchema = z.record(z.string(), z.json())
const backupsSchema = z.object({
  backups: z.array(backupSchema), folder: z.string().nullable(), everyHours: z.number(),
  failed: z.object({ atIso: z.string(), refused: z.string().nullable(), facts: factsSchema }).nullable(),
})

/** The whole shop, to be kept elsewhere. All for the owner; a backup is restored on the machine itself. */
export function addBackupRoutes(doors: Doors, store: Store, backups: BackupKeeper | null): void {
  const keeper = () => { if (backups === null) throw new Refusal(store.kind === 'postgres' ? 'backup-by-database' : 'backups-not-kept'); return backups }
  openRoute(doors, { method: 'get', path: '/api/backups', owner: true, summary: 'The backups there are, the newest first; where they lie, told on the machine itself alone; how often one is made; and the last try, where it failed. For the owner.', answer: backupsSchema },
    async (c) => {
      const { folder, everyHours, failed } = keeper(), { here } = c.get('caller'), last = failed()
      return c.json({ backups: listBackups(folder), folder: here ? folder : null, everyHours, failed: last === null ? null : { ...last, facts: withoutPlaces(last.facts) } })
    })
  openRoute(doors, { method: 'post', path: '/api/backups/{name}/check', owner: true, summary: 'Look a backup through in full: its pages, indexes and references; null where nothing is amiss. For the owner.', answer: z.object({ amiss: z.object({ refused: z.string(), facts: factsSchema }).nullable() }) },
    async (c) => {
      const amiss = checkBackup(keeper().folder, c.req.param('name')!)
      return c.json({ amiss: amiss === null ? null : { refused: amiss.code, facts: amiss.facts } })
    })
  openRoute(doors, { method: 'post', path: '/api/backups', owner: true, summary: 'Make a backup now. For the owner.', answer: backupSchema },
    async (c) => c.json(await keeper().make(Date.now())))
  openRoute(doors, { method: 'get', path: '/api/export', owner: true, summary: 'The whole shop as data: everything that ever happened in it. For the owner.', answer: shopFileSchema },
    async (c) => c.json(await exportShop(store), 200, { 'content-disposition': 'attachment; filename="shop.json"' }))
  openRoute(doors, { method: 'post', path: '/api/import', owner: true, summary: 'Take a whole shop into an empty one, all of it or nothing. For the owner.', body: shopFileSchema, answer: z.object({ changes: z.number(), checks: z.number(), events: z.number() }) },
    async (c, file) => c.json(await importShop(store, file)))
}
