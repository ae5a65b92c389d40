import { z } from 'zod'
import { idSchema } from '#model/change.ts'
import { checkSchema } from '#model/check.ts'
import type { Finding } from '#model/finding.ts'

/** Checks on their way between shops: as they are kept, with the labels of the bars they are of. */
export const checksFileSchema = z.strictObject({
  bars: z.array(z.strictObject({ id: idSchema, code: z.string().max(8), name: z.string().max(40) })).max(20_000),
  checks: z.array(checkSchema).max(20_000),
})
export type ChecksFile = z.infer<typeof checksFileSchema>

/** What came in, or on a dry run would; `known` were there before. */
export type ChecksImport = { readonly dryRun: boolean; readonly checks: number; readonly known: number; readonly readings: number; readonly bars: number; readonly notes: readonly Finding[] }
