import { z } from 'zod'
import { atIsoSchema, idSchema } from '#model/change.ts'

/** How heights were come by. `stated`: marked on the bar or box, one reading, no uncertainty. */
export const checkMethods = ['stated', 'micrometer'] as const

/** One reading: the text as typed, and the absolute local height it stands for. */
export const readingSchema = z.strictObject({
  bar: idSchema,
  /** Counted from the marked end, from 0. */
  station: z.number().int().min(0).max(999),
  /** Distance of the station from the marked end; null where nobody said. */
  xMm: z.number().min(0).max(1e6).nullable(),
  text: z.string().max(40),
  heightMm: z.number().positive().max(1e6),
})
export type Reading = z.infer<typeof readingSchema>

/** One visit of some bars to the plate or micrometer. A correction is a new check that names the one it replaces. */
export const checkSchema = z.strictObject({
  id: idSchema,
  method: z.enum(checkMethods),
  replaces: idSchema.nullable(),
  readings: z.array(readingSchema).min(1).max(5000),
  note: z.string().max(2000),
  person: z.string().max(8),
  device: idSchema,
  atIso: atIsoSchema,
})
export type Check = z.infer<typeof checkSchema>
