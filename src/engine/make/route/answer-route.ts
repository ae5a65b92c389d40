import type { MakingBooks } from '#model/making.ts'
import type { Order } from '#model/order.ts'
import type { RouteAnswer } from '#model/route.ts'
import { orderOf } from '#engine/make/order/order.ts'
import { readOrder, refuseBadDay } from '#engine/make/order/read-order.ts'
import { readMaking } from '#engine/make/route/read-making.ts'
import { refuseMaking } from '#engine/make/route/refuse-making.ts'
import { routesSum } from '#engine/make/route/routes-sum.ts'
import { routesOf } from '#engine/make/route/route.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'

/** The calculation `route`: one raw case in, its answer out. @throws Refusal with a malformed code, then as `order`, then what the shop's list refuses */
export function answerRoute(raw: unknown, books: MakingBooks): RouteAnswer & { readonly order: Order } & Ignored {
  const { value, ignored } = readCase(raw, (object) => ({ order: object.object('order', readOrder), making: readMaking(object, books) }))
  refuseBadDay(value.order!)
  const order = orderOf(value.order!)
  refuseMaking(value.making)
  const routes = routesOf(order, value.making), best = routes[0]!
  return { order, routes, best: best.status === 'serves' || best.status === 'careful' ? best.kind : null, findings: [{ code: 'expected-not-guaranteed', facts: {} }, ...order.findings], sum: [...order.sum, ...routesSum(routes)], ignored }
}
