import { z } from 'zod'
import { barEventSchema } from '#model/bar-event.ts'
import { atIsoSchema, changeSchema, idSchema } from '#model/change.ts'
import { checkSchema } from '#model/check.ts'
import { toldSchema, unservedSchema } from '#model/setup-record.ts'

const importedSchema = z.strictObject({ id: idSchema, digest: z.string(), answer: z.json(), person: z.string().max(8), device: idSchema, atIso: atIsoSchema })

/**
 * A whole shop as data: everything that ever happened in it, out of which all of it follows. Devices, codes and the
 * passphrase are not in it: they belong to the machine.
 */
export const shopFileSchema = z.strictObject({
  twinrest: z.literal('shop'),
  version: z.literal(1),
  changes: z.array(changeSchema),
  checks: z.array(checkSchema),
  events: z.array(barEventSchema),
  told: z.array(toldSchema),
  unserved: z.array(unservedSchema),
  /** Files of bars that were taken in, so that none comes in twice. */
  imports: z.array(importedSchema),
})
export type ShopFile = z.infer<typeof shopFileSchema>
export type ImportedFile = z.infer<typeof importedSchema>
