import { z } from 'zod'
import { atIsoSchema, idSchema } from '#model/change.ts'

/**
 * What happens to a bar and bears on its trust. Only ever added; an event may undo an earlier one.
 *
 * `signed out`: to a vise, machine or person of the shop; `to another shop`: its own kind, since it bears on trust at once. Coming back says how: `back`
 * from a vise or machine of the shop, with nothing to tell; `back fine`, `back nicked`, `back drilled`, `back not looked at` of a loan.
 */
export const barEventKinds = [
  'added', 'looked over', 'knocked', 'drilled', 'stoned', 'reground', 'made drill bar', 'in work', 'gone', 'undone',
  'signed out', 'to another shop', 'back', 'back fine', 'back nicked', 'back drilled', 'back not looked at',
  'on the chuck', 'demagnetised', 'marked anew',
] as const
export type BarEventKind = (typeof barEventKinds)[number]

export const barEventSchema = z.strictObject({
  id: idSchema,
  bar: idSchema,
  kind: z.enum(barEventKinds),
  /** The event taken back, for `undone`; null otherwise. */
  undoes: idSchema.nullable(),
  /** Of signing out: who or what took it, as called that day. */
  note: z.string().max(2000),
  person: z.string().max(8),
  device: idSchema,
  atIso: atIsoSchema,
})
export type BarEvent = z.infer<typeof barEventSchema>
