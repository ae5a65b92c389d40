import type { BarRecord } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'
import { Refusal } from '#model/refusal.ts'
import { type Checked, checkedOf } from '#engine/inspect/checked.ts'
import { checksOf } from '#store/checks.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { barsIn } from '#tasks/inspect/export-checks.ts'

/** A check with what it says; `replacedBy`: the check that corrects it. */
export type CheckOfShop = { readonly check: Check; readonly checked: Checked; readonly bars: readonly BarRecord[]; readonly replacedBy: string | null }

/** @throws Refusal `check-not-known` */
export function checkOfShop(store: Store, id: string): Promise<CheckOfShop> {
  return atOneMoment(store, async (tx) => {
    const checks = await checksOf(tx), check = checks.find((one) => one.id === id)
    if (!check) throw new Refusal('check-not-known', { field: 'id', given: id.slice(0, 60) })
    const { limitsUm } = await recordOf(tx, 'shop', 'shop'), named = new Set(barsIn(check)), bars = (await recordsOf(tx, 'bar')).filter((bar) => named.has(bar.id))
    const checked = checkedOf(check, { limitsUm, lengthMmOf: (bar) => bars.find((one) => one.id === bar)?.lengthMm ?? null })
    return { check, checked, bars, replacedBy: checks.find((one) => one.replaces === id)?.id ?? null }
  })
}
