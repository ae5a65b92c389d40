import type { Order } from '#model/order.ts'
import { orderOf } from '#engine/make/order/order.ts'
import { readOrder, refuseBadDay } from '#engine/make/order/read-order.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'

/** The calculation `order`: one raw case in, its answer out. @throws Refusal with a malformed code, then `bad-day` and as `orderOf` */
export function answerOrder(raw: unknown): Order & Ignored {
  const { value, ignored } = readCase(raw, readOrder)
  refuseBadDay(value)
  return { ...orderOf(value), ignored }
}
