import type { z } from 'zod'
import { barFieldsSchema, type BarFields, matesFieldsSchema, type MatesFields, slotFieldsSchema, type SlotFields } from '#model/bar-record.ts'
import { draftFieldsSchema, type DraftFields, type DraftLook } from '#model/check-draft.ts'
import type { By, Change, Kept, RecordKind } from '#model/change.ts'
import { partOf } from '#model/field-parts.ts'
import { instrumentFieldsSchema, type InstrumentFields } from '#model/instrument-record.ts'
import { jobFieldsSchema, type JobFields } from '#model/job-record.ts'
import { machineRecordSchema, type MachineRecordFields } from '#model/machine-record.ts'
import { outcomeFieldsSchema, type OutcomeFields } from '#model/outcome-record.ts'
import { readAs } from '#model/read-as.ts'
import { type Fact, Refusal } from '#model/refusal.ts'
import { partFieldsSchema, type PartFields, setupFieldsSchema, type SetupFields } from '#model/setup-record.ts'
import { personFieldsSchema, type PersonFields, shopFieldsSchema, type ShopFields } from '#model/shop-record.ts'
import { stockRecordSchema, type StockRecordFields } from '#model/stock-record.ts'
import { viseFieldsSchema, type ViseFields } from '#model/vise-record.ts'

/** The fields of each kind of record. */
export type FieldsOf = {
  readonly bar: BarFields
  readonly mates: MatesFields
  readonly slot: SlotFields
  readonly vise: ViseFields
  readonly part: PartFields
  readonly setup: SetupFields
  readonly shop: ShopFields
  readonly person: PersonFields
  readonly instrument: InstrumentFields
  readonly draft: DraftFields
  readonly outcome: OutcomeFields
  readonly machine: MachineRecordFields
  readonly stock: StockRecordFields
  readonly job: JobFields
}

/** Some fields of a record, or parts of those that are kept part by part. */
export type FieldsToEdit<Kind extends RecordKind> = Partial<FieldsOf[Kind]>
  & (Kind extends 'draft' ? { readonly [cell: `typed.${string}`]: string; readonly [bar: `looks.${string}`]: DraftLook } : unknown)

/** Which fields can be changed part by part. */
const inParts: { readonly [Kind in RecordKind]?: readonly string[] } = { draft: ['typed', 'looks'] }

const schemas = {
  bar: barFieldsSchema, mates: matesFieldsSchema, slot: slotFieldsSchema, vise: viseFieldsSchema,
  part: partFieldsSchema, setup: setupFieldsSchema, shop: shopFieldsSchema, person: personFieldsSchema,
  instrument: instrumentFieldsSchema, draft: draftFieldsSchema, outcome: outcomeFieldsSchema,
  machine: machineRecordSchema, stock: stockRecordSchema, job: jobFieldsSchema,
} as const satisfies { readonly [Kind in RecordKind]: unknown }

/** Fields that came with a later release, and what they are in a record that never had them: an old device may still send one. */
export const laterFields: { readonly [Kind in RecordKind]?: Partial<FieldsOf[Kind]> } = { vise: { measured: null }, shop: { due: null, making: null } }

export const fieldsOfKind = (kind: RecordKind): readonly string[] => Object.keys(schemas[kind].shape)

/**
 * One field of a record as its kind wants it, or one part of a field that is kept part by part.
 *
 * @throws Refusal `unknown-key` with the fields there are; what `readAs` refuses
 */
export function readField(kind: RecordKind, field: string, raw: unknown, path: string): Fact {
  const shape = schemas[kind].shape as { readonly [field: string]: z.ZodType<Fact> }
  const { whole, key } = partOf(field)
  if (!Object.hasOwn(shape, whole) || (key !== null && !inParts[kind]?.includes(whole))) throw new Refusal('unknown-key', { field: path, given: field, needed: fieldsOfKind(kind) })
  if (key === null) return readAs(shape[whole]!, raw, path)
  return (readAs(shape[whole]!, { [key]: raw }, path) as { readonly [key: string]: Fact })[key]!
}

/** The first change of a record: it brings every field. */
export function firstChange<Kind extends RecordKind>(kind: Kind, record: string, fields: FieldsOf[Kind], by: By): Change {
  return changeFrom(kind, record, fields, () => [], by)
}

/** A change of some fields of a record as it stands on this device; what it saw there is taken from the record. */
export function editOf<Kind extends RecordKind>(kind: Kind, kept: Kept<FieldsOf[Kind]>, fields: FieldsToEdit<Kind>, by: By): Change {
  return changeFrom(kind, kept.id, fields, (field) => kept.saw[field] ?? [], by)
}

function changeFrom(kind: RecordKind, record: string, fields: object, sawOf: (field: string) => readonly string[], by: By): Change {
  const values = Object.entries(fields as { [field: string]: Fact })
  return {
    id: by.newId(), kind, record, person: by.person, device: by.device, atIso: by.atIso,
    fields: Object.fromEntries(values.map(([field, value]) => [field, { value, saw: [...sawOf(field)] }])),
  }
}
