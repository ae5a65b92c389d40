import { z } from 'zod'
import { atIsoSchema, idSchema, type Kept } from '#model/change.ts'
import { standings } from '#model/bar.ts'

const lengthMm = z.number().positive().max(1e6)

/** Who or what of or outside the shop has a bar that is out. */
export const outTos = ['person', 'machine', 'other shop'] as const
export type OutTo = (typeof outTos)[number]

/** Since when it is away from its slot, and the day it is due back; left out: nobody said, or an earlier program wrote it. */
const away = { sinceIso: atIsoSchema.optional(), dueOn: z.iso.date().optional() }

/**
 * Where a bar is: in its slot, in a vise, or out. One field, so that place and holder never come apart.
 *
 * `who` is the name or initials of whoever has it, of the machine or of the other shop; `to` left out, as earlier programs do: a person.
 */
export const whereSchema = z.discriminatedUnion('at', [
  z.strictObject({ at: z.literal('slot') }),
  z.strictObject({ at: z.literal('vise'), viseId: idSchema, ...away }),
  z.strictObject({ at: z.literal('out'), who: z.string().min(1).max(80), to: z.enum(outTos).optional(), ...away }),
])
export type Where = z.infer<typeof whereSchema>

/** What is written down about a bar. Its height is not here: heights come from checks, its trust from events. */
export const barFieldsSchema = z.strictObject({
  /** Eight letters for the label. */
  code: z.string().regex(/^[2-9A-HJ-NP-Z]{8}$/),
  /** What is engraved or painted on it, as people call it: `C`, `35 left`. */
  name: z.string().max(40),
  thicknessMm: lengthMm,
  thicknessStanding: z.enum(standings),
  lengthMm,
  matesId: idSchema.nullable(),
  slotId: idSchema.nullable(),
  where: whereSchema,
  note: z.string().max(2000),
})
export type BarFields = z.infer<typeof barFieldsSchema>
export type BarRecord = Kept<BarFields>

/** Bars that are used together; the bars name their mates. */
export const matesFieldsSchema = z.strictObject({ name: z.string().max(40), note: z.string().max(2000) })
export type MatesFields = z.infer<typeof matesFieldsSchema>
export type MatesRecord = Kept<MatesFields>

/** A place in the rack. */
export const slotFieldsSchema = z.strictObject({ code: z.string().regex(/^[2-9A-HJ-NP-Z]{8}$/), name: z.string().min(1).max(20) })
export type SlotFields = z.infer<typeof slotFieldsSchema>
export type SlotRecord = Kept<SlotFields>
