import type { Deed } from '#model/deed.ts'
import { addChecks } from '#store/checks.ts'
import { type Applied, applyChanges } from '#store/changes.ts'
import { addEvents } from '#store/events.ts'
import { inTransaction, type Store } from '#store/store.ts'

/** One thing a person did, whole or not at all: its changes, then the heights and events that name its bars. */
export function keepDeed(store: Store, deed: Deed): Promise<Applied> {
  return inTransaction(store, async (tx) => {
    const applied = await applyChanges(tx, deed.changes)
    const bars = new Set(deed.changes.filter(({ kind }) => kind === 'bar').map(({ record }) => record))
    await addChecks(tx, deed.checks, bars)
    await addEvents(tx, deed.events, bars)
    return applied
  })
}
