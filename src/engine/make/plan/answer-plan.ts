import type { MakePlan } from '#model/make-plan.ts'
import { type Actuals, readingKinds, stepKinds } from '#model/make-step.ts'
import type { MakingBooks } from '#model/making.ts'
import type { Order } from '#model/order.ts'
import { Refusal } from '#model/refusal.ts'
import { type Route, routeKinds } from '#model/route.ts'
import { orderOf } from '#engine/make/order/order.ts'
import { readOrder, refuseBadDay } from '#engine/make/order/read-order.ts'
import { planFrom } from '#engine/make/plan/plan.ts'
import { readMaking } from '#engine/make/route/read-making.ts'
import { refuseMaking } from '#engine/make/route/refuse-making.ts'
import { routeOf } from '#engine/make/route/route.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'

const none: Actuals = { bars: [], readings: [], done: [] }

/**
 * The calculation `plan`: an order, the route taken and what was done and read so far in, what is left out.
 *
 * @throws Refusal with a malformed code, then as `route`, `value-not-allowed` (values, hours), `too-few-readings`, then as `planFrom`
 */
export function answerPlan(raw: unknown, books: MakingBooks): MakePlan & { readonly order: Order; readonly route: Route } & Ignored {
  const { value, ignored } = readCase(raw, (object) => ({ order: object.object('order', readOrder), route: object.word('route', routeKinds), making: readMaking(object, books), actuals: object.objectOr('actuals', readActuals, none) }))
  refuseBadDay(value.order!)
  const order = orderOf(value.order!)
  refuseMaking(value.making)
  refuseActuals(value.actuals)
  const route = routeOf(value.route!, order, value.making)
  return { ...planFrom(order, route, value.making, value.actuals), order, route, ignored }
}

function readActuals(raw: RawObject): Actuals {
  return {
    bars: raw.listOrEmpty('bars', (bar) => ({ id: bar.text('id'), heightMm: bar.number('heightMm'), matesId: bar.text('matesId') }), 3000),
    readings: raw.listOrEmpty('readings', (one) => ({ step: one.word('step', stepKinds) ?? 'inspect', bar: one.text('bar'), what: one.word('what', readingKinds) ?? 'height', values: one.numbers('values', undefined, 100) }), 30_000),
    done: raw.listOrEmpty('done', (one) => ({ step: one.word('step', stepKinds) ?? 'inspect', hours: one.numberOr('hours', null, 10_000) }), stepKinds.length),
  }
}

function refuseActuals({ readings, done }: Actuals): void {
  readings.forEach(({ values }, k) => {
    if (values.length === 0) throw new Refusal('too-few-readings', { field: `actuals.readings[${k}].values`, given: 0, needed: 1 })
    const negative = values.findIndex((one) => one < 0)
    if (negative >= 0) throw new Refusal('value-not-allowed', { field: `actuals.readings[${k}].values[${negative}]`, given: values[negative]!, needed: { least: 0 } })
  })
  done.forEach(({ hours }, k) => { if (hours !== null && hours < 0) throw new Refusal('value-not-allowed', { field: `actuals.done[${k}].hours`, given: hours, needed: { least: 0 } }) })
}
