import { z } from 'zod'
import { idSchema, type Kept } from '#model/change.ts'
import { viseMeasuredSchema } from '#model/vise-measured.ts'

const lengthMm = z.number().positive().max(1e6)

/** Jaws that can be fitted to a vise: the height of each above the bed, a step if they have one, their faces. */
export const jawSetSchema = z.strictObject({
  id: idSchema,
  name: z.string().min(1).max(40),
  fixedHeightMm: lengthMm,
  movingHeightMm: lengthMm,
  /** Height above the bed of a step that can carry a part without bars; null without one. */
  stepHeightMm: lengthMm.nullable(),
  face: z.enum(['smooth', 'serrated']),
})
export type JawSet = z.infer<typeof jawSetSchema>

export const viseFieldsSchema = z.strictObject({
  name: z.string().min(1).max(40),
  jawWidthMm: lengthMm,
  openingMm: lengthMm,
  jawSets: z.array(jawSetSchema).min(1).max(20),
  fittedJawSetId: idSchema,
  /** Taken out of use; kept for its history. */
  retired: z.boolean(),
  note: z.string().max(2000),
  measured: viseMeasuredSchema.nullable(),
})
export type ViseFields = z.infer<typeof viseFieldsSchema>
export type ViseRecord = Kept<ViseFields>
