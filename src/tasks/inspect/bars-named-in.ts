import type { BarRecord } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'
import { recordsOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'
import { barsIn } from '#tasks/inspect/export-checks.ts'

/** The records of the bars that a check names. */
export async function barsNamedIn(store: Store, check: Check): Promise<readonly BarRecord[]> {
  const named = new Set(barsIn(check))
  return (await recordsOf(store, 'bar')).filter(({ id }) => named.has(id))
}
