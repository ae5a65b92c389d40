import type { PlannedWith } from '#model/job-record.ts'
import { noRates } from '#model/rates.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { dayNumber } from '#engine/numeric/days.ts'

/** What a job may be made with today: everything that is not retired. `due` and `today` as `2026-03-04`. */
export function plannedWithOf({ shop, machines, stock }: Pick<ShopSnapshot, 'shop' | 'machines' | 'stock'>, due: string | null, today: string): PlannedWith {
  const kept = stock.filter(({ retired, count }) => !retired && count !== 0)
  const ofForm = (wanted: 'length' | 'plate') => kept.flatMap(({ form, saw: _saw, retired: _retired, note: _note, ...one }) => (form === wanted ? [one] : []))
  return {
    lengths: ofForm('length'), plates: ofForm('plate'),
    machines: machines.flatMap(({ saw: _saw, note: _note, retired, ...machine }) => (retired ? [] : [machine])),
    rates: shop.making ?? noRates, daysLeft: due === null ? null : Math.max(0, dayNumber(due) - dayNumber(today)),
  }
}
