import type { Blank, CutList } from '#model/blank.ts'
import type { Finding } from '#model/finding.ts'
import type { MakingBooks } from '#model/making.ts'
import { Refusal } from '#model/refusal.ts'
import { routeKinds } from '#model/route.ts'
import type { Sum } from '#model/sum.ts'
import { blanksFor } from '#engine/make/blanks/blanks-for.ts'
import { blanksSum } from '#engine/make/blanks/blanks-sum.ts'
import { deliveredOf, judgeDelivered } from '#engine/make/blanks/delivered.ts'
import { orderOf } from '#engine/make/order/order.ts'
import { readOrder, refuseBadDay } from '#engine/make/order/read-order.ts'
import { readMaking } from '#engine/make/route/read-making.ts'
import { refuseMaking } from '#engine/make/route/refuse-making.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'

export type BlanksAnswer = { readonly blanks: readonly Blank[]; readonly cuts: CutList; readonly steel: string | null; readonly findings: readonly Finding[]; readonly sum: readonly Sum[] }

/**
 * The calculation `blanks`: one raw case in, its answer out. `measured` names stock with a size read off it.
 *
 * @throws Refusal with a malformed code, then as `order`, then what the shop's list refuses, `stock-not-known`, `size-not-positive` (measured)
 */
export function answerBlanks(raw: unknown, books: MakingBooks): BlanksAnswer & Ignored {
  const { value, ignored } = readCase(raw, (object) => ({
    order: object.object('order', readOrder), route: object.word('route', routeKinds), making: readMaking(object, books),
    measured: object.listOrEmpty('measured', (one) => ({ stock: one.text('stock'), dimension: one.wordOr('dimension', ['width', 'thickness'], 'width'), mm: one.number('mm') }), 1000),
  }))
  const { making, measured } = value, route = value.route!
  refuseBadDay(value.order!)
  const order = orderOf(value.order!)
  refuseMaking(making)
  const { blanks, cuts, steel, findings } = blanksFor(order, route, making)
  const judged = measured.map(({ stock: id, dimension, mm }, k): Finding => {
    const stock = [...making.lengths, ...making.plates].find((one) => one.id === id)
    if (stock === undefined) throw new Refusal('stock-not-known', { field: `measured[${k}].stock`, given: id })
    if (mm <= 0) throw new Refusal('size-not-positive', { field: `measured[${k}].mm`, given: mm, needed: { aboveMm: 0 } })
    const nominalMm = dimension === 'width' ? stock.widthMm : stock.thicknessMm, delivered = deliveredOf(stock, dimension, making.steels.find(({ name }) => name === stock.steel), making.stockLimits)
    return delivered === null ? { code: 'delivery-not-known', facts: { stock: id, nominalMm } } : judgeDelivered(id, mm, nominalMm, delivered)
  })
  return { blanks, cuts, steel: steel?.name ?? null, findings: [...cuts.findings, ...findings, ...judged], sum: blanksSum(blanks), ignored }
}
