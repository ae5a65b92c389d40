import { z } from 'zod'
import type { Kept } from '#model/change.ts'

const um = z.number().min(0).max(1e5)
const sizeMm = z.number().positive().max(1e5)

/** What the shop measures with, by what it is. A null figure is not known, and leaves its part out of the uncertainty, which is said. */
export const instrumentIsSchema = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('indicator'), resolutionUm: z.number().positive().max(1e4), limitUm: um.nullable(), repeatabilityUm: um.nullable() }),
  z.strictObject({ is: z.literal('micrometer'), resolutionUm: z.number().positive().max(1e4), limitUm: um.nullable(), repeatabilityUm: um.nullable(), fromMm: z.number().min(0).max(1e5), toMm: sizeMm }),
  /** Limit deviation by grade, or the standard uncertainty of the certificate. */
  z.strictObject({ is: z.literal('gauge blocks'), grade: z.string().max(20).nullable(), limitUm: um.nullable(), uUm: um.nullable() }),
  /** Flatness by certificate, or by size and grade. */
  z.strictObject({ is: z.literal('plate'), lengthMm: sizeMm.nullable(), widthMm: sizeMm.nullable(), grade: z.string().max(20).nullable(), flatnessUm: um.nullable() }),
])
export type InstrumentIs = z.infer<typeof instrumentIsSchema>

export const instrumentFieldsSchema = z.strictObject({
  name: z.string().min(1).max(80),
  figures: instrumentIsSchema,
  /** Day by which it is to be calibrated again, `2027-03-31`; null: not kept. */
  dueOn: z.iso.date().nullable(),
  retired: z.boolean(),
  note: z.string().max(2000),
})
export type InstrumentFields = z.infer<typeof instrumentFieldsSchema>
export type InstrumentRecord = Kept<InstrumentFields>
