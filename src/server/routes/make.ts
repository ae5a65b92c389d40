import { z } from '@hono/zod-openapi'
import { orderFormSchema } from '#model/job-record.ts'
import { routeKinds } from '#model/route.ts'
import { uses } from '#model/wishes.ts'
import { givenOf } from '#server/given.ts'
import { type Doors, openRoute } from '#server/open-route.ts'
import { regrindSchema } from '#server/routes/rack-deeds.ts'
import type { Store } from '#store/store.ts'
import { beginRegrind } from '#tasks/make/begin-regrind.ts'
import { cutsOfJob, jobOfShop, listJobs } from '#tasks/make/jobs-of-shop.ts'
import { beginJob, routesOfShop } from '#tasks/make/routes-of-shop.ts'
import type { AskSlow } from '#tasks/make/slow-calculations.ts'
import { makerFor } from '#tasks/maker.ts'

const any = z.unknown()
const beginSchema = z.strictObject({ form: orderFormSchema, route: z.enum(routeKinds), name: z.string().max(80), person: z.string().max(8) })
const regrindJobSchema = regrindSchema.extend({ use: z.enum(uses), name: z.string().max(80).optional(), person: z.string().max(8) })

/** Making bars over the shop's own machines and stock. Readings and ticks are edits of the job: /api/deeds. */
export function addMakeRoutes(doors: Doors, store: Store, slowly?: AskSlow): void {
  openRoute(doors, {
    method: 'post', path: '/api/make/routes', body: orderFormSchema, answer: z.object({ answer: any, planned: any }),
    summary: 'The ways to an order as typed, side by side, with the machines, stock, rates and experience of the shop.',
  }, async (c, form) => c.json(await routesOfShop(store, form, new Date().toISOString().slice(0, 10))))
  openRoute(doors, { method: 'get', path: '/api/make/jobs', answer: z.array(any), summary: 'All jobs with how far they are, in work first.' }, async (c) => c.json(await listJobs(store)))
  openRoute(doors, { method: 'post', path: '/api/make/jobs', body: beginSchema, answer: z.object({ id: z.string() }), summary: 'Keep an order and the way taken as a job.' },
    async (c, { person, ...asked }) => c.json({ id: await beginJob(store, asked, makerFor(person, 'server')) }))
  openRoute(doors, { method: 'post', path: '/api/make/regrinds', body: regrindJobSchema, answer: z.object({ id: z.string() }), summary: 'Keep the regrinding of bars of the rack as a job; CODE=15 comes out 15 µm lower.' },
    async (c, { person, bars, use, ...asked }) => c.json({ id: await beginRegrind(store, { ...givenOf(asked), bars, use }, makerFor(person, 'server')) }))
  openRoute(doors, { method: 'get', path: '/api/make/jobs/{id}', answer: z.object({ job: any, view: any }), summary: 'A job worked out: steps, blanks, what is left on every bar, packs, presses, findings, sums.' },
    async (c) => c.json(await jobOfShop(store, c.req.param('id')!)))
  openRoute(doors, { method: 'get', path: '/api/make/jobs/{id}/cuts', answer: z.object({ cuts: any, bars: z.array(any), plates: z.array(any) }), summary: 'How the stock of a job is cut, and how far it is proven that no less will do.' },
    async (c) => {
      const { signal } = c.req.raw
      try {
        return c.json(await cutsOfJob(store, c.req.param('id')!, { slowly, signal }) as object)
      } catch (error) {
        // whoever asked has gone: there is nobody to answer, and nothing is amiss
        if (signal.aborted) return c.body(null, 408)
        throw error
      }
    })
}
