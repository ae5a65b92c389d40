import { z } from 'zod'
import { atIsoSchema } from '#model/change.ts'

const um = z.number().min(-1e5).max(1e5), uUm = z.number().min(0).max(1e5)
/** When and by which way it was found. */
const found = { atIso: atIsoSchema, how: z.string().max(80) }

/** What was measured of a vise; null: not yet. Signs as in the frame: z up, y from the fixed jaw. */
export const viseMeasuredSchema = z.strictObject({
  /** Heights of the bed at places in the vise's frame, from any one zero. */
  bed: z.strictObject({ readings: z.array(z.strictObject({ xMm: z.number(), yMm: z.number(), um })).min(1).max(100), uUm, ...found }).nullable(),
  /** Slope across that the fixed jaw gives a ground block held snug; positive: rising from the fixed jaw. What tightening adds is `jawLift`. */
  jawSlope: z.strictObject({ umPerMm: z.number().min(-100).max(100), uUmPerMm: z.number().min(0).max(100), ...found }).nullable(),
  /** What the moving side rises when it is tightened to working torque, over the part's width read on. */
  jawLift: z.strictObject({ um, uUm, overMm: z.number().positive().max(1e5), ...found }).nullable(),
  /** Bed height against the other vises of its row. */
  rowBed: z.strictObject({ um, uUm, ...found }).nullable(),
})
export type ViseMeasured = z.infer<typeof viseMeasuredSchema>

export const viseNotMeasured: ViseMeasured = { bed: null, jawSlope: null, jawLift: null, rowBed: null }
