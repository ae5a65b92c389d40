import { orderOf } from '#engine/make/order/order.ts'
import { orderFrom } from '#engine/make/job/order-from.ts'
import { attempt } from '#model/attempt.ts'
import type { JobRecord } from '#model/job-record.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { wordLength } from '#model/length.ts'
import { sayHeights } from '#words/say-make.ts'

/** What it is called: its name, or what it makes. */
export function sayJob(job: Said, units: Units): string {
  return job.name || sayOrder(job, units)
}

type Said = Pick<JobRecord, 'name' | 'form' | 'route' | 'bars'>

/** `12 to 44, 17 heights × 4, 4 thick, 124 long`; of a regrind how many bars. */
export function sayOrder({ form, route, bars }: Omit<Said, 'name'>, units: Units): string {
  if (route === 'regrind') return bars.length === 1 ? 'one bar' : `${bars.length} bars`
  const order = attempt(() => orderOf(orderFrom(form)))
  if (order instanceof Refusal) return 'an order being written'
  return `${sayHeights(order.heightsMm, units)} × ${order.each}, ${wordLength(order.thicknessMm, units)} thick, ${wordLength(order.lengthMm, units)} long`
}
