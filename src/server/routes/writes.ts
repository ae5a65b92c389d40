import { z } from '@hono/zod-openapi'
import { barEventSchema } from '#model/bar-event.ts'
import { type Change, changeSchema, recordKinds } from '#model/change.ts'
import { checkSchema } from '#model/check.ts'
import { deedSchema } from '#model/deed.ts'
import { toldSchema, unservedSchema } from '#model/setup-record.ts'
import { type Doors, openRoute } from '#server/open-route.ts'
import { keepDeed } from '#store/deeds.ts'
import type { Store } from '#store/store.ts'
import { addTold } from '#store/told.ts'
import { addUnserved, unservedOf } from '#store/unserved.ts'
import { inTransaction } from '#store/store.ts'

const aSide = z.object({ change: z.string(), value: z.json(), person: z.string() })
const appliedSchema = z.object({
  stood: z.array(z.string()),
  clashes: z.array(z.object({ kind: z.enum(recordKinds), record: z.string(), field: z.string(), stands: aSide, aside: aSide })),
})
const nothing = { changes: [], checks: [], events: [] }
/** Items of one request; larger lots go in several. */
const most = 5000

/** Who belongs to the shop is the owner's to say; in what units a person counts, the person's. */
const isOfPeople = ({ kind, fields }: Change): boolean => kind === 'person' && Object.hasOwn(fields, 'initials')

/** What devices bring. Ids are theirs, so that sending again changes nothing; each request is kept whole or not at all. */
export function addWriteRoutes(doors: Doors, store: Store): void {
  openRoute(doors, { method: 'post', path: '/api/deeds', summary: 'One thing a person did: changes, checks and events together. New initials are for the owner to give.', body: deedSchema, owner: ({ changes }) => changes.some(isOfPeople), answer: appliedSchema },
    async (c, deed) => c.json(await keepDeed(store, deed)))
  openRoute(doors, { method: 'post', path: '/api/changes', summary: 'Edits of records, field by field. New initials are for the owner to give.', body: z.array(changeSchema).max(most), owner: (changes) => changes.some(isOfPeople), answer: appliedSchema },
    async (c, changes) => c.json(await keepDeed(store, { ...nothing, changes })))
  openRoute(doors, { method: 'post', path: '/api/checks', summary: 'Visits of bars to the plate or micrometer.', body: z.array(checkSchema).max(500), answer: appliedSchema },
    async (c, checks) => c.json(await keepDeed(store, { ...nothing, checks })))
  openRoute(doors, { method: 'post', path: '/api/events', summary: 'What happened to bars.', body: z.array(barEventSchema).max(most), answer: appliedSchema },
    async (c, events) => c.json(await keepDeed(store, { ...nothing, events })))
  openRoute(doors, { method: 'post', path: '/api/unserved', summary: 'Questions that nothing in the rack served; each counts once a day. Answers how many were new.', body: z.array(unservedSchema).max(100), answer: z.object({ added: z.number() }) },
    async (c, all) => c.json({ added: await inTransaction(store, async (tx) => {
      let added = 0
      for (const one of all) if (await addUnserved(tx, one)) added += 1
      return added
    }) }))
  openRoute(doors, { method: 'get', path: '/api/unserved', summary: 'Every question that nothing in the rack served, oldest first.', answer: z.array(unservedSchema) }, async (c) => c.json(await unservedOf(store)))
  openRoute(doors, { method: 'post', path: '/api/told', summary: 'What was handed to someone on paper, as it was.', body: z.array(toldSchema).max(100), answer: z.object({ kept: z.number() }) },
    async (c, all) => {
      await inTransaction(store, async (tx) => { for (const one of all) await addTold(tx, one) })
      return c.json({ kept: all.length })
    })
}
