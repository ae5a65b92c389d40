import { z } from '@hono/zod-openapi'
import { mindHere } from '#server/access/admit.ts'
import type { Live } from '#server/live.ts'
import type { Gauge, Metrics } from '#server/metrics.ts'
import { type Doors, openRoute } from '#server/open-route.ts'
import { roomOf } from '#store/room-left.ts'
import type { Store } from '#store/store.ts'
import { listBackups } from '#tasks/shop/backup/backups.ts'
import { mindReady } from '#tasks/shop/readiness.ts'

/** For whoever keeps the server running. */
export function addOperationRoutes(doors: Doors, store: Store, { metrics, live, backupFolder }: { readonly metrics: Metrics; readonly live: Live; readonly backupFolder: string | null }): void {
  openRoute(doors, { method: 'get', path: '/api/health', summary: 'Whether the server answers. Open to all.', answer: z.object({ up: z.literal(true) }) },
    async (c) => c.json({ up: true }))
  openRoute(doors, { method: 'get', path: '/api/ready', summary: 'Whether the shop can be written just now, and has room; 503 and why where not.', answer: z.object({ ready: z.literal(true) }) }, async (c) => {
    await mindReady(store)
    return c.json({ ready: true })
  })
  openRoute(doors, { method: 'get', path: '/api/metrics', summary: 'Counts, times and sizes in the usual text form. For this machine and the owner.', answer: z.string(), answerType: 'text/plain' }, async (c) => {
    await mindHere(c)
    return c.body(metrics.text(gaugesOf(store, live, backupFolder)), 200, { 'content-type': 'text/plain; version=0.0.4; charset=utf-8' })
  })
}

function gaugesOf(store: Store, live: Live, backupFolder: string | null): Gauge[] {
  const room = roomOf(store), last = backupFolder === null ? undefined : listBackups(backupFolder)[0]
  return [
    { name: 'twinrest_live_streams', help: 'Windows that listen to what others do.', value: live.count() },
    ...(room === null ? [] : [
      { name: 'twinrest_database_bytes', help: 'Size of the database.', value: room.databaseBytes },
      { name: 'twinrest_disk_free_bytes', help: 'Room on its disk.', value: room.freeBytes },
    ]),
    ...(last === undefined ? [] : [{ name: 'twinrest_last_backup_time_seconds', help: 'When the last backup was made.', value: Math.round(Date.parse(last.atIso) / 1000) }]),
  ]
}
