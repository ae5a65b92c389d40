import { z } from 'zod'
import { atIsoSchema, idSchema, type Kept } from '#model/change.ts'
import { ways } from '#model/wishes.ts'
import { setupFormSchema } from '#model/setup-form.ts'

/** A part that comes back: its number and what was typed about it. */
export const partFieldsSchema = z.strictObject({
  name: z.string().min(1).max(80),
  note: z.string().max(2000),
  form: setupFormSchema,
  retired: z.boolean(),
})
export type PartFields = z.infer<typeof partFieldsSchema>
export type PartRecord = Kept<PartFields>

/** A setup that was decided on: what was asked, as typed, and which bars were taken. */
export const setupFieldsSchema = z.strictObject({
  title: z.string().max(80),
  operation: z.string().max(80),
  viseId: idSchema,
  partId: idSchema.nullable(),
  form: setupFormSchema,
  bars: z.array(idSchema).max(8),
  stand: z.enum(ways),
  usedAtIso: atIsoSchema,
  retired: z.boolean(),
})
export type SetupFields = z.infer<typeof setupFieldsSchema>
export type SetupRecord = Kept<SetupFields>

/** A complete question that nothing in the rack served. Added once for each question and day. */
export const unservedSchema = z.strictObject({
  id: idSchema,
  viseId: idSchema,
  form: setupFormSchema,
  lowMm: z.number(),
  highMm: z.number(),
  person: z.string().max(8),
  device: idSchema,
  atIso: atIsoSchema,
})
export type Unserved = z.infer<typeof unservedSchema>

/** What was told to someone: a printed sheet is a fact, kept as the data it was drawn from. */
export const toldSchema = z.strictObject({
  id: idSchema,
  /** What it is about: one of the three; or none of them, of a check sheet whose data name the half-done check as `draft`, and of the sheet of a table or chuck, which is about nothing but itself. */
  setupId: idSchema.nullable(),
  checkId: idSchema.nullable().default(null),
  jobId: idSchema.nullable().default(null),
  what: z.enum(['setup sheet', 'row sheet', 'table sheet', 'chuck sheet', 'check sheet', 'certificate', 'route sheet', 'cut list', 'buying list']),
  data: z.json(),
  person: z.string().max(8),
  device: idSchema,
  atIso: atIsoSchema,
})
export type Told = z.infer<typeof toldSchema>
