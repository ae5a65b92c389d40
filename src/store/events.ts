import type { BarEvent } from '#model/bar-event.ts'
import { Refusal } from '#model/refusal.ts'
import { addFresh } from '#store/add-fresh.ts'
import { inTransaction, type Store } from '#store/store.ts'
import { insertRows } from '#store/insert-rows.ts'
import { inPortions } from '#store/portions.ts'
import { knownOf } from '#store/records.ts'

/**
 * What happened to bars, all or none; sent again it changes nothing.
 *
 * @param bars  ids of bars that are known to be there
 * @throws Refusal `bar-not-known`, `event-not-known` (nothing of that bar to undo), `value-not-allowed` (`undoes` without `undone`), `id-used-twice`
 */
export async function addEvents(store: Store, events: readonly BarEvent[], bars: ReadonlySet<string> = new Set()): Promise<void> {
  await inTransaction(store, async (tx) => {
    const fresh = await addFresh(events, (all) => insertRows(tx, 'event', all.map((event) => ({ shop: tx.shop, ...event })), 'leave out'), (ids) => eventsUnder(tx, ids))
    const known = await knownOf(tx, 'bar', fresh.map((event) => event.bar), bars)
    const undone = new Map([...await eventsUnder(tx, fresh.flatMap((event) => event.undoes ?? [])), ...fresh.map((event) => [event.id, event] as const)])
    for (const event of fresh) {
      if (!known.has(event.bar)) throw new Refusal('bar-not-known', { field: 'bar', given: event.bar })
      mindUndone(event, event.undoes === event.id ? undefined : undone.get(event.undoes ?? ''))
    }
  })
}

/** Every event, or those of one bar; in the order of time, then of ids. */
export async function eventsOf(store: Store, bar?: string): Promise<BarEvent[]> {
  const rows = await store.db.selectFrom('event').selectAll().where('shop', '=', store.shop)
    .$if(bar !== undefined, (query) => query.where('bar', '=', bar!)).orderBy('atIso').orderBy('id').execute()
  return rows.map(eventFrom)
}

/** Those that are kept under these ids. */
export async function eventsUnder(store: Store, ids: readonly string[]): Promise<ReadonlyMap<string, BarEvent>> {
  const found = new Map<string, BarEvent>()
  for (const some of inPortions(ids)) {
    const rows = await store.db.selectFrom('event').selectAll().where('shop', '=', store.shop).where('id', 'in', some).execute()
    for (const row of rows) found.set(row.id, eventFrom(row))
  }
  return found
}

function mindUndone(event: BarEvent, before: BarEvent | undefined): void {
  if (event.kind !== 'undone') {
    if (event.undoes !== null) throw new Refusal('value-not-allowed', { field: 'undoes', given: event.undoes, needed: 'nothing, unless the kind is undone' })
  } else if (before?.bar !== event.bar) throw new Refusal('event-not-known', { field: 'undoes', given: event.undoes })
}

function eventFrom({ shop: _shop, kind, ...event }: { shop: string; kind: string } & Omit<BarEvent, 'kind'>): BarEvent {
  return { ...event, kind: kind as BarEvent['kind'] }
}
