import { z } from '@hono/zod-openapi'
import { barEventSchema } from '#model/bar-event.ts'
import { barFieldsSchema, matesFieldsSchema, slotFieldsSchema } from '#model/bar-record.ts'
import { idSchema } from '#model/change.ts'
import { checkSchema } from '#model/check.ts'
import { draftFieldsSchema } from '#model/check-draft.ts'
import { instrumentFieldsSchema } from '#model/instrument-record.ts'
import { jobFieldsSchema } from '#model/job-record.ts'
import { machineRecordSchema } from '#model/machine-record.ts'
import { outcomeFieldsSchema } from '#model/outcome-record.ts'
import { partFieldsSchema, setupFieldsSchema } from '#model/setup-record.ts'
import { personFieldsSchema, shopFieldsSchema } from '#model/shop-record.ts'
import { stockRecordSchema } from '#model/stock-record.ts'
import { viseFieldsSchema } from '#model/vise-record.ts'

/** A record as it stands: its fields, its id, and for each field the changes nobody has followed yet. */
const kept = <Shape extends z.ZodRawShape>(fields: z.ZodObject<Shape>) => fields.extend({ id: idSchema, saw: z.record(z.string(), z.array(idSchema)) })

/** All facts of a shop, as they are answered. */
export const snapshotSchema = z.object({
  shop: kept(shopFieldsSchema), people: z.array(kept(personFieldsSchema)), vises: z.array(kept(viseFieldsSchema)), slots: z.array(kept(slotFieldsSchema)),
  mates: z.array(kept(matesFieldsSchema)), bars: z.array(kept(barFieldsSchema)), checks: z.array(checkSchema), events: z.array(barEventSchema),
  parts: z.array(kept(partFieldsSchema)), setups: z.array(kept(setupFieldsSchema)),
  instruments: z.array(kept(instrumentFieldsSchema)), drafts: z.array(kept(draftFieldsSchema)), outcomes: z.array(kept(outcomeFieldsSchema)),
  machines: z.array(kept(machineRecordSchema)), stock: z.array(kept(stockRecordSchema)), jobs: z.array(kept(jobFieldsSchema)),
})
