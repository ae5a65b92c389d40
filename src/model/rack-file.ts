import { z } from 'zod'
import { barEventSchema } from '#model/bar-event.ts'
import { barFieldsSchema, matesFieldsSchema, slotFieldsSchema } from '#model/bar-record.ts'
import { idSchema } from '#model/change.ts'
import { checkSchema } from '#model/check.ts'
import type { Finding } from '#model/finding.ts'

const withId = <Shape extends z.ZodRawShape>(fields: z.ZodObject<Shape>) => fields.extend({ id: idSchema })

/** A whole rack on its way between shops, nothing lost: bars, mates and slots as they stand, what happened to the bars, and every check of them. */
export const rackFileSchema = z.strictObject({
  slots: z.array(withId(slotFieldsSchema)).max(20_000),
  mates: z.array(withId(matesFieldsSchema)).max(20_000),
  bars: z.array(withId(barFieldsSchema)).max(20_000),
  events: z.array(barEventSchema).max(200_000),
  checks: z.array(checkSchema).max(20_000),
})
export type RackFile = z.infer<typeof rackFileSchema>

/** What came in, or on a dry run would; `known` bars were there before, and stay as they are. */
export type RackFileImport = { readonly dryRun: boolean; readonly bars: number; readonly known: number; readonly events: number; readonly checks: number; readonly notes: readonly Finding[] }
