import { z } from 'zod'
import { barMarks } from '#model/bar-marks.ts'
import { checkMethods } from '#model/check-methods.ts'
import { idSchema, type Kept } from '#model/change.ts'

const typed = z.string().max(40)

/** A bar of a half-done check: one of the rack, or a new one with what was typed about it. */
export const draftBarSchema = z.strictObject({ bar: idSchema, isNew: z.boolean(), name: typed, thickness: typed, length: typed })
export type DraftBar = z.infer<typeof draftBarSchema>

/** A look as it is being taken. */
export const draftLookSchema = z.strictObject({
  wiped: z.boolean(), stoned: z.boolean(), rock: z.enum(['none', 'rocks', 'not tried']), feeler: typed, seen: z.array(z.enum(barMarks)).max(8),
})
export type DraftLook = z.infer<typeof draftLookSchema>

/** What is asked of a check before and beside the readings, all of it as typed. */
export const checkFormSchema = z.strictObject({
  method: z.enum(checkMethods),
  unit: z.enum(['mm', 'in']),
  bars: z.array(draftBarSchema).max(500),
  /** How many stations, and where from the marked end where somebody said; empty: spread evenly. */
  stations: z.number().int().min(1).max(99),
  places: z.array(typed).max(99),
  lines: z.union([z.literal(1), z.literal(2)]),
  repeats: z.number().int().min(1).max(20),
  instrumentId: idSchema.nullable(),
  plateId: idSchema.nullable(),
  blocksId: idSchema.nullable(),
  zeroOn: z.enum(['block', 'bar']),
  zero: typed,
  zeroBar: idSchema.nullable(),
  closing: typed,
  temperature: typed,
  asFound: z.boolean(),
  replaces: idSchema.nullable(),
  note: z.string().max(2000),
})
export type CheckForm = z.infer<typeof checkFormSchema>

/** A check that is not finished: every key is kept, and anybody can go on with it on another device. */
export const draftFieldsSchema = z.strictObject({
  form: checkFormSchema,
  /** Text by cell: `bar/line/face/station/repeat`. */
  typed: z.record(z.string().max(80), typed),
  looks: z.record(idSchema, draftLookSchema),
  state: z.enum(['open', 'kept', 'dropped']),
  /** The check it became. */
  checkId: idSchema.nullable(),
})
export type DraftFields = z.infer<typeof draftFieldsSchema>
export type DraftRecord = Kept<DraftFields>
