import { z } from 'zod'
import { idSchema, type Kept } from '#model/change.ts'

const um = z.number().min(-1e6).max(1e6)

/** Thickness variation across and along that was foretold, with the shares that do not depend on the shop. */
const foretoldSchema = z.strictObject({ meanUm: um, sdUm: z.number().min(0).max(1e6) })

/** What a part came out as after the cut, beside what was foretold. */
export const outcomeFieldsSchema = z.strictObject({
  setupId: idSchema,
  foretold: z.strictObject({ along: foretoldSchema, across: foretoldSchema }).nullable(),
  /** As typed; and in µm: unmarked end less marked end, moving jaw less fixed jaw. */
  text: z.strictObject({ along: z.string().max(40), across: z.string().max(40) }),
  measuredUm: z.strictObject({ along: um.nullable(), across: um.nullable() }),
  retired: z.boolean(),
  note: z.string().max(2000),
})
export type OutcomeFields = z.infer<typeof outcomeFieldsSchema>
export type OutcomeRecord = Kept<OutcomeFields>
