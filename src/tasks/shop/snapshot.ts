import type { RecordKind } from '#model/change.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { checksOf, checksUnder } from '#store/checks.ts'
import { eventsOf, eventsUnder } from '#store/events.ts'
import { openDraftsOf, recordOf, recordsOf, recordsUnder } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import type { Came } from '#store/tips.ts'

/** Of one list: the ids asked for, and what it shows under them. */
export type SomeOfList = { readonly list: keyof ShopSnapshot; readonly ids: Iterable<string>; readonly shown: readonly { readonly id: string }[] }

/** All facts of the shop as they stand at one moment. */
export function snapshotOf(store: Store): Promise<ShopSnapshot> {
  return atOneMoment(store, async (tx) => ({
    shop: await recordOf(tx, 'shop', 'shop'),
    people: await recordsOf(tx, 'person'),
    vises: await recordsOf(tx, 'vise'),
    slots: await recordsOf(tx, 'slot'),
    mates: await recordsOf(tx, 'mates'),
    bars: await recordsOf(tx, 'bar'),
    checks: await checksOf(tx),
    events: await eventsOf(tx),
    parts: await recordsOf(tx, 'part'),
    setups: await recordsOf(tx, 'setup'),
    instruments: await recordsOf(tx, 'instrument'),
    drafts: await openDraftsOf(tx),
    outcomes: await recordsOf(tx, 'outcome'),
    machines: await recordsOf(tx, 'machine'),
    stock: await recordsOf(tx, 'stock'),
    jobs: (await recordsOf(tx, 'job')).filter(({ state }) => state !== 'dropped'),
  }))
}

/** What a snapshot shows of these alone. */
export async function someOfSnapshot(store: Store, { records, checks, events }: Came): Promise<SomeOfList[]> {
  const some: SomeOfList[] = []
  if (checks.length > 0) some.push({ list: 'checks', ids: checks, shown: [...(await checksUnder(store, checks)).values()] })
  if (events.length > 0) some.push({ list: 'events', ids: events, shown: [...(await eventsUnder(store, events)).values()] })
  for (const [kind, ids] of records) {
    const kept = await recordsUnder(store, kind, [...ids]) as readonly { readonly id: string; readonly state?: string }[]
    some.push({ list: listOf[kind], ids, shown: kept.filter(({ state }) => kind === 'draft' ? state === 'open' : kind !== 'job' || state !== 'dropped') })
  }
  return some
}

const listOf = {
  shop: 'shop', person: 'people', vise: 'vises', slot: 'slots', mates: 'mates', bar: 'bars', part: 'parts', setup: 'setups', instrument: 'instruments', draft: 'drafts', outcome: 'outcomes',
  machine: 'machines', stock: 'stock', job: 'jobs',
} as const satisfies { readonly [Kind in RecordKind]: keyof ShopSnapshot }
