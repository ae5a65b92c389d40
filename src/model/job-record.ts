import { z } from 'zod'
import { atIsoSchema, idSchema, type Kept } from '#model/change.ts'
import { machineFieldsSchema } from '#model/machine.ts'
import { spindleSchema } from '#model/machine-record.ts'
import { madeBarSchema, stepKinds } from '#model/make-step.ts'
import { ratesSchema } from '#model/rates.ts'
import { jobRoutes } from '#model/route.ts'
import { stockFields } from '#model/stock-length.ts'
import { uses } from '#model/wishes.ts'

const typed = z.string().max(40)

export const jobNameLetters = 80

/** The order as typed: every size as its text in the unit named, so that it opens as it was left. */
export const orderFormSchema = z.strictObject({
  unit: z.enum(['mm', 'in']),
  heightsBy: z.enum(['list', 'ladder', 'jaw']),
  /** `12, 14, 20`: one height or several. */
  heights: z.string().max(2000),
  from: typed, to: typed, step: typed,
  jawHeight: typed, below: typed, lowest: typed,
  thickness: typed,
  lengthBy: z.enum(['length', 'jaw']),
  length: typed, jawWidth: typed, under: typed,
  pairs: typed, vises: typed,
  use: z.enum(uses),
  /** Empty: soft will do. */
  hrc: typed,
  due: z.iso.date().nullable(),
  /** Whether the faces are worked too, not only the edges. */
  faces: z.boolean(),
  /** What all of it costs bought, and what its certificate says in µm; an empty cost: nobody was asked. */
  offer: z.strictObject({ cost: typed, days: typed, match: typed, parallel: typed }),
})
export type OrderForm = z.infer<typeof orderFormSchema>

const stock = z.array(z.strictObject({ ...stockFields, id: idSchema })).max(1000)

/** The shop as it stood when the route was chosen: a job is not planned anew because a plate was used up since. */
export const plannedWithSchema = z.strictObject({
  lengths: stock, plates: stock,
  machines: z.array(machineFieldsSchema.extend({ id: idSchema, spindle: spindleSchema.nullable() })).max(1000),
  rates: ratesSchema,
  daysLeft: z.number().min(0).max(1e5).nullable(),
})
export type PlannedWith = z.infer<typeof plannedWithSchema>

/** A step that was ticked: by whom, when, and the hours it took as typed; empty: not noted. */
export const tickSchema = z.strictObject({ hours: typed, person: z.string().max(8), atIso: atIsoSchema })

/** From an order to bars in the rack. Texts are kept as typed; what follows from them is worked out anew each time. */
export const jobFieldsSchema = z.strictObject({
  name: z.string().max(jobNameLetters),
  form: orderFormSchema,
  /** Null: not chosen yet, the order is still being written. */
  route: z.enum(jobRoutes).nullable(),
  planned: plannedWithSchema.nullable(),
  /** Bars with their identities, once they are cut; of a regrind the bars of the rack, with the heights they had when it was begun. */
  bars: z.array(madeBarSchema).max(3000),
  /** What was read, by `step/bar/what/place`. */
  typed: z.record(z.string().max(120), typed),
  done: z.partialRecord(z.enum(stepKinds), tickSchema),
  /**
   * Fields of the step cards, by `cutting.diameter`; of a regrind how it is to be ground, by `regrind.cleanUp`; what was taken from the stock, by
   * `stock.` and its record, and what went back to it, by `kept.` and its record.
   */
  tools: z.record(z.string().max(60), typed),
  state: z.enum(['open', 'done', 'dropped']),
  /** The half-done check the bars were handed to. */
  draftId: idSchema.nullable(),
  note: z.string().max(2000),
})
export type JobFields = z.infer<typeof jobFieldsSchema>
export type JobRecord = Kept<JobFields>
