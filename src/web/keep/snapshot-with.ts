import type { Change, RecordKind, Saw } from '#model/change.ts'
import { partOf, withPart } from '#model/field-parts.ts'
import type { Fact } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { Entry } from '#web/keep/entry.ts'

type AnyRecord = { readonly id: string; readonly saw: Saw }

const lists = {
  bar: 'bars', mates: 'mates', slot: 'slots', vise: 'vises', part: 'parts', setup: 'setups', person: 'people',
  instrument: 'instruments', draft: 'drafts', outcome: 'outcomes', machine: 'machines', stock: 'stock', job: 'jobs',
} as const satisfies { readonly [kind in Exclude<RecordKind, 'shop'>]: keyof ShopSnapshot }

/** The shop as it stands once an entry of this device is in it: what a screen shows without waiting for the server. */
export function snapshotWith(snapshot: ShopSnapshot, entry: Entry): ShopSnapshot {
  if (entry.door !== 'deeds') return snapshot
  const { changes, checks, events } = entry.body
  const after = changes.reduce(changed, snapshot)
  return { ...after, checks: joined(after.checks, checks), events: joined(after.events, events) }
}

/** The record a change is about, as it stands here; undefined where it is new. */
export function recordIn(snapshot: ShopSnapshot, kind: RecordKind, id: string): AnyRecord | undefined {
  const records: readonly AnyRecord[] = kind === 'shop' ? [snapshot.shop] : snapshot[lists[kind]]
  return records.find((record) => record.id === id)
}

function changed(snapshot: ShopSnapshot, change: Change): ShopSnapshot {
  if (change.kind === 'shop') return { ...snapshot, shop: edited(snapshot.shop, change) }
  const list = lists[change.kind]
  const records: readonly AnyRecord[] = snapshot[list]
  const known = records.some((record) => record.id === change.record)
  // A key typed into a check that was finished elsewhere meanwhile: there is nothing here to show it in.
  if (!known && (change.kind === 'draft' || change.kind === 'job') && change.fields['form'] === undefined) return snapshot
  const next = known
    ? records.map((record) => (record.id === change.record ? edited(record, change) : record))
    : [...records, edited({ id: change.record, saw: {} }, change)]
  return { ...snapshot, [list]: next }
}

/** A change follows those it saw; of what is left beside it the greatest id stands, as on every device. */
function edited<R extends AnyRecord>(record: R, change: Change): R {
  const saw: { [field: string]: readonly string[] } = { ...record.saw }, values: { [field: string]: Fact } = {}
  for (const [field, { value, saw: seen }] of Object.entries(change.fields).sort(wholeFirst)) {
    const standing = saw[field] ?? []
    if (standing.includes(change.id)) continue
    const beside = standing.filter((id) => !seen.includes(id))
    saw[field] = [...beside, change.id]
    if (!beside.every((id) => id < change.id)) continue
    const { whole, key } = partOf(field)
    values[whole] = key === null ? value : withPart(values[whole] ?? (record as { readonly [field: string]: unknown })[whole] as Fact | undefined ?? {}, key, value)
  }
  return { ...record, ...values, saw }
}

const wholeFirst = ([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number => Number(partOf(a).key !== null) - Number(partOf(b).key !== null)

function joined<Item extends { readonly id: string }>(known: readonly Item[], added: readonly Item[]): readonly Item[] {
  if (added.length === 0) return known
  const ids = new Set(known.map(({ id }) => id))
  return [...known, ...added.filter(({ id }) => !ids.has(id))]
}
