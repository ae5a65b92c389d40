import type { Check } from '#model/check.ts'
import { checksOf } from '#store/checks.ts'
import type { Store } from '#store/store.ts'
import { barsIn } from '#tasks/inspect/export-checks.ts'

/** A check in a list; `replaced`: another corrects it. */
export type CheckLine = Pick<Check, 'id' | 'method' | 'atIso' | 'person'> & { readonly bars: number; readonly lowestMm: number | null; readonly highestMm: number | null; readonly replaced: boolean }

/** Checks of the shop, latest first; `told`: also those that only say what is marked on the bars. */
export async function listChecks(store: Store, { told }: { readonly told: boolean }): Promise<readonly CheckLine[]> {
  const checks = await checksOf(store), replaced = new Set(checks.map((check) => check.replaces))
  return checks.toReversed().filter(({ method }) => told || method !== 'stated').map((check) => {
    const heights = check.readings.map(({ heightMm }) => heightMm), ends = (of: (a: number, b: number) => number) => (heights.length === 0 ? null : heights.reduce((a, b) => of(a, b)))
    return { id: check.id, method: check.method, atIso: check.atIso, person: check.person, bars: barsIn(check).length, lowestMm: ends(Math.min), highestMm: ends(Math.max), replaced: replaced.has(check.id) }
  })
}
