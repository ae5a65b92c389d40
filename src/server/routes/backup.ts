import { z } from '@hono/zod-openapi'
import { Refusal } from '#model/refusal.ts'
import { shopFileSchema } from '#model/shop-file.ts'
import { type Doors, openRoute } from '#server/open-route.ts'
import type { Store } from '#store/store.ts'
import { listBackups, makeBackup } from '#tasks/shop/backup/backups.ts'
import { exportShop, importShop } from '#tasks/shop/backup/shop-file.ts'

const backupSchema = z.object({ name: z.string(), atIso: z.string(), bytes: z.number() })

/** The whole shop, to be kept elsewhere. All for the owner; a backup is restored on the machine itself. */
export function addBackupRoutes(doors: Doors, store: Store, backupFolder: string | null): void {
  const folder = () => { if (backupFolder === null) throw new Refusal('backups-not-kept'); return backupFolder }
  openRoute(doors, { method: 'get', path: '/api/backups', owner: true, summary: 'The backups there are, the newest first. For the owner.', answer: z.object({ backups: z.array(backupSchema) }) },
    async (c) => c.json({ backups: listBackups(folder()) }))
  openRoute(doors, { method: 'post', path: '/api/backups', owner: true, summary: 'Make a backup now. For the owner.', answer: backupSchema },
    async (c) => c.json(await makeBackup(store, folder(), Date.now())))
  openRoute(doors, { method: 'get', path: '/api/export', owner: true, summary: 'The whole shop as data: everything that ever happened in it. For the owner.', answer: shopFileSchema },
    async (c) => c.json(await exportShop(store), 200, { 'content-disposition': 'attachment; filename="shop.json"' }))
  openRoute(doors, { method: 'post', path: '/api/import', owner: true, summary: 'Take a whole shop into an empty one, all of it or nothing. For the owner.', body: shopFileSchema, answer: z.object({ changes: z.number(), checks: z.number(), events: z.number() }) },
    async (c, file) => c.json(await importShop(store, file)))
}
