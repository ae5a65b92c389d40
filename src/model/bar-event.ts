import { z } from 'zod'
import { atIsoSchema, idSchema } from '#model/change.ts'

/** What happens to a bar and bears on its trust. Only ever added; an event may undo an earlier one. */
export const barEventKinds = ['added', 'looked over', 'knocked', 'drilled', 'stoned', 'reground', 'made drill bar', 'in work', 'gone', 'undone'] as const
export type BarEventKind = (typeof barEventKinds)[number]

export const barEventSchema = z.strictObject({
  id: idSchema,
  bar: idSchema,
  kind: z.enum(barEventKinds),
  /** The event taken back, for `undone`; null otherwise. */
  undoes: idSchema.nullable(),
  note: z.string().max(2000),
  person: z.string().max(8),
  device: idSchema,
  atIso: atIsoSchema,
})
export type BarEvent = z.infer<typeof barEventSchema>
