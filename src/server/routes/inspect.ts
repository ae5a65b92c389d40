import { z } from '@hono/zod-openapi'
import { idSchema } from '#model/change.ts'
import { checkSchema } from '#model/check.ts'
import { checksFileSchema } from '#model/checks-file.ts'
import { Refusal } from '#model/refusal.ts'
import { givenOf } from '#server/given.ts'
import { type Doors, openRoute } from '#server/open-route.ts'
import type { Store } from '#store/store.ts'
import { checkOfShop } from '#tasks/inspect/check-of-shop.ts'
import { exportChecks, exportChecksCsv } from '#tasks/inspect/export-checks.ts'
import { importChecks } from '#tasks/inspect/import-checks.ts'
import { matesOfShop } from '#tasks/inspect/mates-of-shop.ts'
import { recordCheck } from '#tasks/inspect/record-check.ts'
import { makerFor } from '#tasks/maker.ts'

const text = z.string().max(40)
const readingSchema = z.strictObject({
  bar: text.describe('Its id, or the code on its label.'), reading: text.describe('As typed.'), face: z.enum(['A', 'B']).optional(),
  line: z.union([z.literal(1), z.literal(2)]).optional(), repeat: z.int().min(1).max(20).optional(),
})
const recordSchema = z.strictObject({
  method: z.enum(['stated', 'compare', 'micrometer', 'turn-over']), readings: z.array(readingSchema).min(1).max(5000), unit: z.enum(['mm', 'in']).optional(),
  zero: text.optional(), zeroBar: text.optional(), closing: text.optional(), temperature: text.optional(), places: z.array(text).max(99).optional(),
  instrument: z.string().max(80).optional(), plate: z.string().max(80).optional(), blocks: z.string().max(80).optional(),
  replaces: idSchema.optional(), asFound: z.boolean().optional(), note: z.string().max(2000).optional(),
  person: z.string().max(8).optional(), dryRun: z.boolean().optional(),
})
const importSchema = z.strictObject({ csv: z.string().optional(), file: checksFileSchema.optional(), dryRun: z.boolean().optional() })
const matesSchema = z.strictObject({
  withinUm: z.number().optional().describe('As many pairs as differ by no more.'), vises: z.int().optional().describe('Instead: two bars for each of so many vises.'),
  bars: z.array(text).max(3000).optional().describe('Ids or codes; left out: every measured bar.'),
})
const checked = z.object({ bars: z.array(z.unknown()), pair: z.unknown(), findings: z.array(z.unknown()), sum: z.array(z.unknown()) })

/** Checks: recorded, answered, out and in; mates out of the measured bars. */
export function addInspectRoutes(doors: Doors, store: Store): void {
  openRoute(doors, {
    method: 'post', path: '/api/inspect/record', body: recordSchema, answer: z.object({ check: checkSchema, checked, asks: z.array(z.unknown()) }),
    summary: 'Keep a check given in one piece, read as the screen reads it. With dryRun it is worked out and not kept.',
  }, async (c, { person = '', dryRun, ...given }) => {
    const readings = given.readings.map((one) => ({ ...givenOf(one), bar: one.bar, reading: one.reading }))
    return c.json(await recordCheck(store, { ...givenOf(given), method: given.method, readings }, makerFor(person, 'server'), { dryRun: dryRun === true }))
  })
  openRoute(doors, {
    method: 'get', path: '/api/inspect/checks/{id}', answer: z.object({ check: checkSchema, checked, bars: z.array(z.unknown()), replacedBy: idSchema.nullable() }),
    summary: 'A check with what it says: shapes, uncertainty, what is proved for each use, what to look at again.',
  }, async (c) => c.json(await checkOfShop(store, c.req.param('id')!)))
  openRoute(doors, {
    method: 'post', path: '/api/inspect/mates', body: matesSchema, answer: z.object({ groups: z.array(z.unknown()), row: z.unknown(), leftOver: z.array(z.string()), findings: z.array(z.unknown()), bars: z.array(z.unknown()) }),
    summary: 'The best pairs out of the measured bars, or two for each of several vises, with direction and what each is fit for.',
  }, async (c, { withinUm, vises, bars }) => c.json(await matesOfShop(store, { wish: wishFrom(withinUm, vises), ...(bars === undefined ? {} : { bars }) })))
  openRoute(doors, { method: 'get', path: '/api/inspect/export.csv', summary: 'All checks as CSV, nothing lost.', answer: z.string(), answerType: 'text/csv' },
    async (c) => c.body(await exportChecksCsv(store), 200, { 'content-type': 'text/csv; charset=utf-8', 'content-disposition': 'attachment; filename="checks.csv"' }))
  openRoute(doors, { method: 'get', path: '/api/inspect/export.json', summary: 'All checks as they are kept, with the labels of their bars.', answer: checksFileSchema },
    async (c) => c.json(await exportChecks(store)))
  openRoute(doors, {
    method: 'post', path: '/api/inspect/import', body: importSchema,
    answer: z.object({ dryRun: z.boolean(), checks: z.number(), known: z.number(), readings: z.number(), bars: z.number(), notes: z.array(z.unknown()) }),
    summary: 'Take in checks, as CSV or as data: all of them, or nothing and every complaint with its line. Checks that are there stay as they are.',
  }, async (c, { csv, file, dryRun }) => {
    if (csv === undefined && file === undefined) throw new Refusal('field-missing', { field: 'csv', given: null, needed: ['csv', 'file'] })
    return c.json(await importChecks(store, csv === undefined ? { file: file! } : { csv }, { dryRun: dryRun === true }))
  })
}

function wishFrom(withinUm: number | undefined, vises: number | undefined) {
  if (vises !== undefined) return { want: 'row' as const, vises }
  if (withinUm === undefined) throw new Refusal('field-missing', { field: 'withinUm', given: null, needed: ['withinUm', 'vises'] })
  return { want: 'pairs' as const, withinUm }
}
