import { z } from '@hono/zod-openapi'
import { idSchema, recordKinds } from '#model/change.ts'
import { readAs } from '#model/read-as.ts'
import type { AnswerKept } from '#server/kept-answers.ts'
import { type Doors, openRoute } from '#server/open-route.ts'
import { snapshotSchema } from '#server/snapshot-schema.ts'
import { historyOf } from '#store/history.ts'
import type { Store } from '#store/store.ts'
import { loadDemo } from '#tasks/shop/load-demo.ts'
import { snapshotOf } from '#tasks/shop/snapshot.ts'

const entrySchema = z.looseObject({ id: idSchema, atIso: z.string(), person: z.string(), device: z.string(), what: z.enum(['change', 'check', 'event', 'told']) })

/** The shop as it stands, and how it came to. */
export function addShopRoutes(doors: Doors, store: Store, answer: AnswerKept): void {
  openRoute(doors, { method: 'get', path: '/api/shop', summary: 'All records, checks and events of the shop. Its ETag differs whenever anything was written; 304 where If-None-Match names it.', answer: snapshotSchema },
    (c) => answer(c, snapshotOf))
  openRoute(doors, { method: 'get', path: '/api/history/{kind}/{id}', summary: 'Everything that happened to a record, oldest first. ETag as of the shop.', answer: z.array(entrySchema) },
    async (c) => {
      const kind = readAs(z.enum(recordKinds), c.req.param('kind'), 'kind')
      return await answer(c, (tx) => historyOf(tx, kind, c.req.param('id')!))
    })
  openRoute(doors, { method: 'post', path: '/api/demo', summary: 'Fill an empty shop with invented demo data.', answer: z.object({ loaded: z.literal(true) }) },
    async (c) => {
      await loadDemo(store)
      return c.json({ loaded: true })
    })
}
