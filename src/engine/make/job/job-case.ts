import type { JobFields, OrderForm, PlannedWith } from '#model/job-record.ts'
import { readNumber } from '#model/length.ts'
import type { Actuals } from '#model/make-step.ts'
import type { Making } from '#model/making.ts'
import type { Experience } from '#model/route.ts'
import type { ShopFields } from '#model/shop-record.ts'
import { orderFrom } from '#engine/make/job/order-from.ts'

/** What is asked about a job besides itself: the shop's limits, and what came out of earlier jobs. */
export type JobKnown = { readonly limitsUm: ShopFields['limitsUm']; readonly experience: readonly Experience[] }

/** A case of `route`, out of an order as typed. @throws Refusal as `orderFrom`, and `not-a-number` (`offer.…`) */
export function routeCase(form: OrderForm, planned: PlannedWith, known: JobKnown): { readonly [key: string]: unknown } {
  return { order: orderCase(form), ...makingCase(form, planned, known) }
}

/** A case of `plan`: a job whose route is chosen, with what was done so far. @throws Refusal as `routeCase` */
export function planCase({ form, route, planned }: Pick<JobFields, 'form' | 'route' | 'planned'>, actuals: Actuals, known: JobKnown): { readonly [key: string]: unknown } {
  return { ...routeCase(form, planned!, known), route, actuals }
}

/** What is null is left out of a case. */
function orderCase(form: OrderForm): object {
  const order = orderFrom(form)
  return withoutNulls(order)
}

function makingCase(form: OrderForm, { lengths, plates, machines, rates, daysLeft }: PlannedWith, { limitsUm, experience }: JobKnown): object {
  const { handPerHour, hoursPerDay, hardening, cutterCost } = rates, bought = offerFrom(form)
  return {
    lengths: lengths.map(withoutNulls), plates: plates.map(withoutNulls), machines: machines.map(({ spindle: _spindle, ...machine }) => withoutNulls(machine)), limitsUm,
    experience: experience.map(withoutNulls), faces: form.faces,
    ...withoutNulls({ handPerHour, hoursPerDay, hardening: hardening && withoutNulls(hardening), cutterCost, bought, daysLeft }),
  }
}

/** A price for all that is ordered, or null where nobody was asked. */
function offerFrom({ offer: { cost, days, match, parallel } }: OrderForm): object | null {
  if (cost.trim() === '') return null
  const um = (text: string, field: string) => (text.trim() === '' ? null : readNumber(text, field))
  const bought = { cost: readNumber(cost, 'offer.cost'), days: days.trim() === '' ? 0 : readNumber(days, 'offer.days'), matchUm: um(match, 'offer.match'), parallelUm: um(parallel, 'offer.parallel') } satisfies NonNullable<Making['bought']>
  return withoutNulls(bought)
}

const withoutNulls = (record: object): object => Object.fromEntries(Object.entries(record).filter(([, value]) => value !== null))
