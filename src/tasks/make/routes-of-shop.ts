import { routeCase } from '#engine/make/job/job-case.ts'
import { plannedWithOf } from '#engine/make/job/planned-with.ts'
import type { JobFields, OrderForm, PlannedWith } from '#model/job-record.ts'
import { firstChange } from '#model/record-fields.ts'
import { Refusal } from '#model/refusal.ts'
import { isOpen } from '#words/say-make.ts'
import type { RouteKind } from '#model/route.ts'
import { applyChanges } from '#store/changes.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import { atOneMoment, inTransaction, type Store } from '#store/store.ts'
import { routeByTheBooks } from '#tasks/make/making-by-the-books.ts'
import { shopKnown } from '#tasks/make/shop-known.ts'
import type { Maker } from '#tasks/maker.ts'

export type RoutesOfShop = { readonly answer: ReturnType<typeof routeByTheBooks>; readonly planned: PlannedWith }

/** The ways to an order with the machines, the stock and the experience of the shop. @throws Refusal as `routeCase` and `route` */
export function routesOfShop(store: Store, form: OrderForm, today: string): Promise<RoutesOfShop> {
  return atOneMoment(store, async (tx) => {
    const shop = await recordOf(tx, 'shop', 'shop'), machines = await recordsOf(tx, 'machine'), stock = await recordsOf(tx, 'stock')
    const planned = plannedWithOf({ shop, machines, stock }, form.due, today), { known } = await shopKnown(tx)
    return { answer: routeByTheBooks(routeCase(form, planned, known)), planned }
  })
}

/** Keeps an order and the way taken as a job. @throws Refusal as `routesOfShop`; `way-not-open` with the ways that are */
export function beginJob(store: Store, { form, route, name }: { readonly form: OrderForm; readonly route: RouteKind; readonly name: string }, by: Maker): Promise<string> {
  return inTransaction(store, async (tx) => {
    const { answer, planned } = await routesOfShop(tx, form, by.atIso.slice(0, 10)), open = answer.routes.filter(isOpen).map(({ kind }) => kind)
    if (!open.includes(route)) throw new Refusal('way-not-open', { field: 'route', given: route, needed: open })
    const fields: JobFields = { name, form, route, planned, bars: [], typed: {}, done: {}, tools: {}, state: 'open', draftId: null, note: '' }, id = by.newId()
    await applyChanges(tx, [firstChange('job', id, fields, by)])
    return id
  })
}
