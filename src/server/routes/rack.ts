import { z } from '@hono/zod-openapi'
import { idSchema } from '#model/change.ts'
import { type Doors, openRoute } from '#server/open-route.ts'
import type { Store } from '#store/store.ts'
import { makerFor } from '#tasks/maker.ts'
import { exportRack } from '#tasks/rack/export-rack.ts'
import { importRack } from '#tasks/rack/import-rack.ts'

const importSchema = z.strictObject({
  id: idSchema.describe('Of this file, made by the sender: sent again it is answered and not taken in twice.'),
  csv: z.string(),
  unit: z.enum(['mm', 'in']).optional(),
  dryRun: z.boolean().optional(),
  person: z.string().max(8).optional(),
})
const importedSchema = z.object({
  dryRun: z.boolean(), bars: z.number(), mates: z.number(), newSlots: z.array(z.string()), lowestMm: z.number(), highestMm: z.number(),
  notes: z.array(z.object({ code: z.string(), facts: z.record(z.string(), z.json()) })),
})

/** The rack as a file. */
export function addRackRoutes(doors: Doors, store: Store): void {
  openRoute(doors, {
    method: 'post', path: '/api/rack/import', body: importSchema, answer: importedSchema,
    summary: 'Take in a CSV text: all of it, or nothing and every complaint with its line. With dryRun nothing is taken in.',
  }, async (c, { id, person = '', csv, unit, dryRun }) => c.json(await importRack(store, { id, csv, ...(unit ? { unit } : {}), ...(dryRun === undefined ? {} : { dryRun }) }, makerFor(person, 'server'))))
  openRoute(doors, { method: 'get', path: '/api/rack/export', summary: 'All bars as CSV.', answer: z.string(), answerType: 'text/csv' },
    async (c) => c.body(await exportRack(store), 200, { 'content-type': 'text/csv; charset=utf-8', 'content-disposition': 'attachment; filename="rack.csv"' }))
}
