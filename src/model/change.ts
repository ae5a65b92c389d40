import { z } from 'zod'
import type { Fact } from '#model/refusal.ts'

/** Records that are edited field by field. Checks, events and told sheets are only ever added. */
export const recordKinds = ['bar', 'mates', 'slot', 'vise', 'part', 'setup', 'shop', 'person', 'instrument', 'draft', 'outcome', 'machine', 'stock', 'job'] as const
export type RecordKind = (typeof recordKinds)[number]

/** Ids are made on the device: 1 to 40 letters, digits, `-` or `_`. */
export const idSchema = z.string().regex(/^[A-Za-z0-9_-]{1,40}$/)

const fact: z.ZodType<Fact> = z.json() as z.ZodType<Fact>

/** A moment by the clock of a device: UTC with milliseconds, so that the order of the texts is the order of time. */
export const atIsoSchema = z.iso.datetime({ precision: 3 })

/**
 * One edit of one record: for each field its new value and the changes it saw there (the `saw` of the record it was made from).
 *
 * A change that saw another follows it. Two changes of one field that did not see each other are a clash: the
 * greater id stands, on every device alike, and the other is kept and shown; the next change made from the record as it
 * then stands saw both and ends the clash. Different fields never clash.
 */
export const changeSchema = z.strictObject({
  id: idSchema,
  kind: z.enum(recordKinds),
  record: idSchema,
  person: z.string().max(8),
  device: idSchema,
  atIso: atIsoSchema,
  /** By name; a part of a field that is a list by key as `name.key`. */
  fields: z.record(z.string().regex(/^[a-zA-Z]{1,40}(\.[A-Za-z0-9_/-]{1,80})?$/), z.strictObject({ value: fact, saw: z.array(idSchema).max(50) })),
})
export type Change = z.infer<typeof changeSchema>

/** Two changes of one field that did not see each other: which stands, which was kept aside. */
export type Clash = {
  readonly kind: RecordKind
  readonly record: string
  readonly field: string
  readonly stands: { readonly change: string; readonly value: Fact; readonly person: string }
  readonly aside: { readonly change: string; readonly value: Fact; readonly person: string }
}

/**
 * A record as it stands: its id, for each field the value, and in `saw` the changes nobody has followed yet: the one the
 * value came from and, in a clash, those kept aside.
 */
export type Kept<Fields> = Fields & { readonly id: string; readonly saw: Saw }
export type Saw = { readonly [field: string]: readonly string[] }

/** Who does something, on which device, when; `newId` makes an id nobody else makes. */
export type By = { readonly person: string; readonly device: string; readonly atIso: string; readonly newId: () => string }
