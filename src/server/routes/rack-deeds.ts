import { z } from '@hono/zod-openapi'
import { cameBacks } from '#model/came-back.ts'
import { rackFileSchema } from '#model/rack-file.ts'
import { givenOf } from '#server/given.ts'
import { type Doors, openRoute } from '#server/open-route.ts'
import type { Store } from '#store/store.ts'
import { makerFor } from '#tasks/maker.ts'
import { findInRack } from '#tasks/rack/find-in-rack.ts'
import { exportHistoryCsv, importHistoryCsv } from '#tasks/rack/history-file.ts'
import { labelsOf } from '#tasks/rack/label-sheets.ts'
import { lifeOfBar } from '#tasks/rack/life-of-bar.ts'
import { exportRackFile, importRackFile } from '#tasks/rack/rack-file.ts'
import { holdingsOf, signBarsOut, takeBarsBack } from '#tasks/rack/sign-bars.ts'
import { ladderOfShop, regrindBars, trySetOfShop, whatIsMissing } from '#tasks/rack/work-of-rack.ts'

const text = z.string().max(80), bars = z.array(text).min(1).max(500).describe('Ids, or the codes on their labels.'), person = z.string().max(8).optional(), any = z.unknown()
const counted = {
  vise: text.optional().describe('Name or id; left out: all.'), stacks: z.boolean().optional(), flat: z.boolean().optional(), step: text.optional(), thickness: text.optional(), most: z.int().min(0).max(5).optional(), unit: z.enum(['mm', 'in']).optional(),
}
const outSchema = z.strictObject({ bars, vise: text.optional(), person: text.optional(), machine: text.optional(), otherShop: text.optional(), dueOn: z.iso.date().optional(), by: person.describe('Whose initials it is written under.') })
const backSchema = z.strictObject({ bars, how: z.enum(cameBacks), by: person })
const trySchema = z.strictObject({ ...counted, from: text, to: text, setStep: text, setThickness: text, setLength: text })
const ladderSchema = z.strictObject({
  vise: text.optional(), step: text, thickness: text, below: text.optional().describe('The top height under the jaw.'), lowest: text.optional(), under: text.optional().describe('The length under the jaw width.'),
  vises: z.int().min(1).max(100).optional(), whole: z.boolean().optional().describe('Also heights that the rack has.'), unit: z.enum(['mm', 'in']).optional(),
})
/** How bars are to be ground; left out: as is usual. */
export const regrindSchema = z.strictObject({
  bars, faces: z.union([z.literal(1), z.literal(2)]).optional(), datumFace: z.enum(['A', 'B']).optional(), cleanUpUm: z.number().min(0).max(1e5).optional(), stepUm: z.number().positive().max(1e5).optional(), sparkOut: z.int().min(0).max(1000).optional(),
})
const signed = z.object({ stood: z.array(z.string()), clashes: z.array(any), events: z.array(z.string()), bars: z.array(any) })

/** What keeps the rack honest: found, signed out and back, what is missing, files. */
export function addRackDeedRoutes(doors: Doors, store: Store): void {
  openRoute(doors, { method: 'post', path: '/api/rack/find', summary: 'Bars as hands ask for them: 30-32 t8, 35, A3, look first, the text of a label.', body: z.strictObject({ text: z.string().max(200) }), answer: z.array(any) },
    async (c, { text: typed }) => c.json(await findInRack(store, typed)))
  openRoute(doors, { method: 'post', path: '/api/rack/out', summary: 'Sign bars out, to one of vise, person, machine or another shop.', body: outSchema, answer: signed },
    async (c, { by = '', bars: named, ...to }) => c.json(await signBarsOut(store, { ...givenOf(to), bars: named }, makerFor(by, 'server'))))
  openRoute(doors, { method: 'get', path: '/api/rack/out', summary: 'Who has what now, what is overdue first.', answer: z.array(any) }, async (c) => c.json(await holdingsOf(store)))
  openRoute(doors, { method: 'post', path: '/api/rack/back', summary: 'Take bars back into their slots, as they came back.', body: backSchema, answer: signed },
    async (c, { by = '', bars: named, how }) => c.json(await takeBarsBack(store, { bars: named, how }, makerFor(by, 'server'))))
  openRoute(doors, { method: 'get', path: '/api/rack/life/{bar}', summary: 'The life of a bar and of its mates: what happened, how it is today, what heights it was found to have.', answer: z.object({ lines: z.array(any), bars: z.array(any) }) },
    async (c) => c.json(await lifeOfBar(store, c.req.param('bar')!, { withMates: true })))
  openRoute(doors, { method: 'post', path: '/api/rack/missing', summary: 'What the saved setups and unserved questions ask for and the rack does not have, and which heights to own next.', body: z.strictObject(counted), answer: z.looseObject({ setups: z.number(), served: z.number() }) },
    async (c, asked) => c.json(await whatIsMissing(store, givenOf(asked))))
  openRoute(doors, { method: 'post', path: '/api/rack/try', summary: 'A set of bars as if owned: what it would serve, which stand too high or are too long for the jaws.', body: trySchema, answer: z.looseObject({ heightsMm: z.array(z.number()) }) },
    async (c, { from, to, setStep, setThickness, setLength, ...asked }) => c.json(await trySetOfShop(store, { ...givenOf(asked), from, to, setStep, setThickness, setLength })))
  openRoute(doors, { method: 'post', path: '/api/rack/regrind', summary: 'Worn bars to one new height, from their last profile; CODE=15 comes out 15 µm lower.', body: regrindSchema, answer: z.looseObject({ regrind: any }) },
    async (c, { bars: named, ...wish }) => c.json(await regrindBars(store, { ...givenOf(wish), bars: named })))
  openRoute(doors, { method: 'post', path: '/api/rack/ladder', summary: 'A whole ladder of heights for a vise, as an order, without what the rack has.', body: ladderSchema, answer: z.looseObject({ order: any }) },
    async (c, { step, thickness, ...asked }) => c.json(await ladderOfShop(store, { ...givenOf(asked), step, thickness })))
  openRoute(doors, { method: 'post', path: '/api/rack/labels', summary: 'Labels of bars and slots, each with the text of its code.', body: z.strictObject({ bars: z.array(text).max(3000).optional(), slots: z.boolean().optional() }), answer: z.array(any) },
    async (c, asked) => c.json(await labelsOf(store, givenOf(asked))))
  openRoute(doors, { method: 'get', path: '/api/rack/export.json', summary: 'The whole rack, its history and checks, nothing lost.', answer: rackFileSchema }, async (c) => c.json(await exportRackFile(store)))
  openRoute(doors, { method: 'post', path: '/api/rack/import.json', summary: 'Take in a whole rack: all of it, or nothing. What is there stays as it is.', body: z.strictObject({ file: rackFileSchema, dryRun: z.boolean().optional(), by: person }), answer: z.looseObject({ bars: z.number(), known: z.number() }) },
    async (c, { file, dryRun, by = '' }) => c.json(await importRackFile(store, file, makerFor(by, 'server'), { dryRun: dryRun === true })))
  openRoute(doors, { method: 'get', path: '/api/rack/history.csv', summary: 'What happened to all bars as CSV.', answer: z.string(), answerType: 'text/csv' },
    async (c) => c.body(await exportHistoryCsv(store), 200, { 'content-type': 'text/csv; charset=utf-8', 'content-disposition': 'attachment; filename="history.csv"' }))
  openRoute(doors, { method: 'post', path: '/api/rack/history', summary: 'Take in what happened to bars, as CSV: all of it, or nothing and every complaint with its line.', body: z.strictObject({ csv: z.string(), dryRun: z.boolean().optional() }), answer: z.object({ dryRun: z.boolean(), events: z.number(), known: z.number() }) },
    async (c, { csv, dryRun }) => c.json(await importHistoryCsv(store, csv, { dryRun: dryRun === true })))
}
