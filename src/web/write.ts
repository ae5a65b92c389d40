import type { BarEvent } from '#model/bar-event.ts'
import type { Change, RecordKind, Saw } from '#model/change.ts'
import type { Check } from '#model/check.ts'
import type { FieldsToEdit } from '#model/record-fields.ts'
import type { Fact } from '#model/refusal.ts'
import type { Told, Unserved } from '#model/setup-record.ts'
import { deviceNow } from '#web/device.ts'
import { recordIn } from '#web/keep/snapshot-with.ts'
import { newId, nowIso } from '#web/new-id.ts'
import { outbox, shopNow } from '#web/shop-store.ts'

/** What the writer stamps on by itself: the id, who, on which device, when. */
type Stamp = 'id' | 'person' | 'device' | 'atIso'

/** One edit of one record: some of its fields, or all of them where it is new (`newId()`). `saw`: what was seen, where it is no longer in the shop's list. */
export type Edit = { [K in RecordKind]: { readonly kind: K; readonly record: string; readonly fields: FieldsToEdit<K>; readonly saw?: Saw } }[RecordKind]

export type Doing = {
  readonly edits?: readonly Edit[]
  /** With an id where a record of the same deed names the check. */
  readonly checks?: readonly (Omit<Check, Stamp> & { readonly id?: string })[]
  readonly events?: readonly Omit<BarEvent, Stamp>[]
}

/**
 * Writes down one thing a person did; it goes to the shop whole or not at all.
 *
 * Each field carries what was seen in it here, so that two people who edit at once find out. The ids of its changes begin alike: where two deeds clash, the
 * same one stands in all records, and a pair is not torn apart. What is added happens at one moment: mates ground together stay mates.
 *
 * @returns the ids of the events, for taking them back
 */
export function writeDeed({ edits = [], checks = [], events = [] }: Doing): readonly string[] {
  const deed = newId(), now = stamp(), atOnce = (): Pick<Check, Stamp> => ({ ...now, id: newId() }), body = {
    changes: edits.filter(({ fields }) => Object.keys(fields).length > 0).map((edit, at) => ({ ...changeFrom(edit), id: `${deed}-${at}` })),
    checks: checks.map((check) => ({ ...atOnce(), ...check })),
    events: events.map((event) => ({ ...event, ...atOnce() })),
  }
  if (body.changes.length + body.checks.length + body.events.length > 0) outbox.put({ door: 'deeds', body })
  return body.events.map(({ id }) => id)
}

/** A key of what is being typed: on the device at once, in the shop a moment later, together with the keys around it. */
export function writeTyped(edit: Edit): void {
  outbox.type({ door: 'deeds', body: { changes: [changeFrom(edit)], checks: [], events: [] } })
}

/** A complete question that nothing served. Its id is made by the asker, so that a question counts once a day. */
export function writeUnserved(unserved: Omit<Unserved, Exclude<Stamp, 'id'>>): void {
  outbox.put({ door: 'unserved', body: [{ ...unserved, ...stamp(), id: unserved.id }] })
}

export function writeTold(told: Omit<Told, Stamp>): void {
  outbox.put({ door: 'told', body: [{ ...told, ...stamp() }] })
}

function changeFrom({ kind, record, fields, saw: told }: Edit): Change {
  const { shop } = shopNow()
  const saw: Saw = told ?? (shop && recordIn(shop, kind, record)?.saw) ?? {}
  const sent: Change['fields'] = {}
  for (const [field, value] of Object.entries(fields)) sent[field] = { value: value as Fact, saw: [...saw[field] ?? []] }
  return { kind, record, ...stamp(), fields: sent }
}

function stamp(): Pick<Check, Stamp> {
  const { id: device, person } = deviceNow()
  return { id: newId(), person: person?.initials ?? '', device, atIso: nowIso() }
}
