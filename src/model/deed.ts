import { z } from 'zod'
import { barEventSchema } from '#model/bar-event.ts'
import { changeSchema } from '#model/change.ts'
import { checkSchema } from '#model/check.ts'

/**
 * One thing a person did, kept whole or not at all: a pair added is two bars, their mates, one check with both heights
 * and two events. Sent again it changes nothing.
 */
export const deedSchema = z.strictObject({
  changes: z.array(changeSchema).max(5000),
  checks: z.array(checkSchema).max(500),
  events: z.array(barEventSchema).max(5000),
})
export type Deed = z.infer<typeof deedSchema>
