import { z } from '@hono/zod-openapi'
import { idSchema } from '#model/change.ts'
import { sides } from '#model/part.ts'
import { Refusal } from '#model/refusal.ts'
import { setupFormSchema } from '#model/setup-form.ts'
import { givenOf } from '#server/given.ts'
import { type Doors, openRoute } from '#server/open-route.ts'
import type { Store } from '#store/store.ts'
import { cardOfVise } from '#tasks/setup/card-of-vise.ts'
import { chooseFromCase, chooseFromForm } from '#tasks/setup/choose-for-vise.ts'

const askedSchema = z.strictObject({
  viseId: idSchema.nullable().describe('A vise of the shop; null where the case brings the sizes of one.'),
  form: setupFormSchema.optional().describe('The Set up screen as typed.'),
  case: z.record(z.string(), z.unknown()).optional().describe('Or a case in the keys of calc/setup, without bars: those are the shop\'s.'),
  most: z.int().min(0).optional().describe('Choices to answer at most; of a form.'),
  rejectedMost: z.int().min(0).optional().describe('Rejections to answer at most; of a form.'),
  foretell: z.enum(sides).optional().describe('Also what the best choice will come out as, with this side of the part at the fixed jaw.'),
  only: z.array(idSchema).max(5000).optional().describe('The bars to look at; of a form.'),
})

const answeredSchema = z.object({
  vise: z.unknown(), question: z.unknown().describe('What was asked, every default filled in.'), answer: z.unknown().describe('As of calc/setup.'),
  aroundHoles: z.array(z.unknown()).describe('What would stand at a jaw that holes keep a bar off.'), bars: z.array(z.unknown()).describe('The bars that the answer names.'),
  prediction: z.unknown().describe('What the best choice will come out as; null unless asked for, or where nothing serves. {status: "foretold", ways: [{held, coming: {status, overall: {medianUm, q95Um}, along, across, chanceWithin, contributions}, seat, closing, findings, notKnown}]}, one way or, with the side unknown, free and held; or {status: "not foretold", because}.'),
})

/** The main job over the shop's own facts, and the card to hang by a vise. */
export function addSetupRoutes(doors: Doors, store: Store): void {
  openRoute(doors, {
    method: 'post', path: '/api/setup', body: askedSchema, answer: answeredSchema,
    summary: 'Which bars of the shop to use for a part in a vise, how they stand, and why not the others.',
  }, async (c, asked) => c.json(await chosen(store, asked)))
  openRoute(doors, {
    method: 'get', path: '/api/card/{viseId}', answer: z.object({ vise: z.unknown(), shop: z.unknown(), jaws: z.string(), jawHeightMm: z.number(), openingMm: z.number(), airMm: z.number(), bedAirMm: z.number(), runThroughMm: z.number(), rows: z.array(z.unknown()) }),
    summary: 'What every pair is good for in a vise: the finished height it works from, its grip, the largest drill clear of the bed.',
  }, async (c) => c.json(await cardOfVise(store, c.req.param('viseId')!)))
}

function chosen(store: Store, { viseId, form, case: raw, foretell, ...options }: z.infer<typeof askedSchema>) {
  if (form === undefined) {
    if (raw === undefined) throw new Refusal('field-missing', { field: 'form', given: null, needed: ['form', 'case'] })
    return chooseFromCase(store, viseId, { ...raw, ...options }, givenOf({ foretell }))
  }
  if (viseId === null) throw new Refusal('field-missing', { field: 'viseId', given: null, needed: 'id' })
  return chooseFromForm(store, { viseId, form, ...givenOf({ ...options, foretell }) })
}
