import type { Finding } from '#model/finding.ts'
import type { Making } from '#model/making.ts'
import type { MakeStep } from '#model/make-step.ts'
import type { Order } from '#model/order.ts'
import { type Band, type Cost, type Route, type RouteKind, routeKinds, type RouteStatus } from '#model/route.ts'
import { apartUm, type Blanks, blanksFor, type Delivery, isHardened } from '#engine/make/blanks/blanks-for.ts'
import { type Considered, drawbacks, missing, shortOf } from '#engine/make/route/against.ts'
import { expectedOf, useFor, worstOf } from '#engine/make/route/expected.ts'
import { stepsFor } from '#engine/make/route/steps.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/**
 * All routes to an order side by side, the best first: what serves the use before what serves it with careful work, before what falls short,
 * before what cannot be gone; in each of these the cheaper first, one without a price last, then by hours.
 *
 * @source MAKE-RULES
 */
export function routesOf(order: Order, making: Making): readonly Route[] {
  const routes = routeKinds.map((kind) => routeOf(kind, order, making)).toSorted(inOrder)
  const cheapest = routes.filter(({ status, cost }) => status !== 'blocked' && cost.total !== null).reduce<Route | null>((low, one) => (low === null || one.cost.total! < low.cost.total! ? one : low), null)
  return routes.map((route, k) => ({ ...route, rank: k + 1, because: becauseOf(route, order, making, cheapest) }))
}

const ranks: { readonly [status in RouteStatus]: number } = { serves: 0, careful: 1, short: 2, blocked: 3 }

function inOrder(a: Route, b: Route): number {
  return ranks[a.status] - ranks[b.status] || (a.cost.total ?? Number.MAX_VALUE) - (b.cost.total ?? Number.MAX_VALUE) || a.hours - b.hours || routeKinds.indexOf(a.kind) - routeKinds.indexOf(b.kind)
}

/** One route for itself; its rank and reasons come with the others. */
export function routeOf(kind: RouteKind, order: Order, making: Making): Route {
  const isBought = kind === 'bought', { blanks, cuts, steel, deliveries, findings }: Blanks = isBought ? nothingToCut : blanksFor(order, kind, making), hardening = isHardened(kind) ? (steel?.hardening ?? null) : null
  const steps = stepsFor({ order, route: kind, making, blanks, cuts: isBought ? null : cuts, hardening }), hours = total(steps.map((step) => step.hours)), machineHours = total(steps.map((step) => step.machineHours))
  const cost = costOf(kind, steps, isBought ? 0 : cuts.cost, making), expected = expectedOf(kind, making, deliveredApart(deliveries))
  const considered: Considered = { kind, order, making, steps, cuts: isBought ? null : cuts, steel, expected, cost, days: daysOf(kind, hours, making) }
  const lacking = missing(considered), short = shortOf(considered), limitUm = making.limitsUm[order.use], { countOnUm, carefulUm } = worstOf(expected)
  return {
    kind, rank: 0, status: lacking.length > 0 ? 'blocked' : short.length > 0 ? 'short' : countOnUm !== null && countOnUm <= limitUm + touchMm ? 'serves' : 'careful',
    steel: hardening === null ? null : steel!.name, expected, use: { countOn: useFor(countOnUm, making.limitsUm), careful: useFor(carefulUm, making.limitsUm) },
    steps, blanks, cuts: isBought ? null : cuts, hours, machineHours, days: considered.days, cost,
    because: [], against: [...lacking, ...short, ...drawbacks(considered), ...findings],
  }
}

const nothingToCut: Blanks = { blanks: [], cuts: { takings: [], begun: [], bars: [], plates: [], short: [], cost: 0, findings: [] }, steel: null, deliveries: [], findings: [] }

/** Whether all that is taken is prehardened and ground, and what two bars of one delivery may differ by at most. */
function deliveredApart(deliveries: readonly Delivery[]): { readonly isPrehardenedGround: boolean; readonly apart: Band | null } {
  const known = deliveries.flatMap(({ delivered }) => (delivered === null ? [] : [{ toUm: apartUm(delivered), limit: delivered.limit }])).toSorted((a, b) => b.toUm - a.toUm), [widest] = known
  return {
    isPrehardenedGround: deliveries.length > 0 && deliveries.every(({ stock }) => stock.condition === 'prehardened ground'),
    apart: widest !== undefined && known.length === deliveries.length ? { fromUm: null, toUm: widest.toUm, source: widest.limit.source, standing: widest.limit.standing } : null,
  }
}

/** In the shop's money; what nobody has priced is named and leaves the total open. Never less for more hours. */
function costOf(kind: RouteKind, steps: readonly MakeStep[], stock: number | null, making: Making): Cost {
  const isOutside = isHardened(kind) && !making.machines.some((one) => one.kind === 'furnace')
  const work = sumOf(steps.map((step) => step.cost)), outside = kind === 'bought' ? (making.bought?.cost ?? null) : isOutside ? (making.hardening?.cost ?? null) : 0, tools = kind === 'hard milled' ? making.cutterCost : 0
  const unpriced = [...(stock === null ? ['stock'] : []), ...(work === null ? ['work'] : []), ...(outside === null ? ['outside'] : []), ...(tools === null ? ['tools'] : [])]
  return { total: sumOf([stock, work, outside, tools]), stock, work, outside, tools, unpriced }
}

function daysOf(kind: RouteKind, hours: number, { hoursPerDay, hardening, bought, machines }: Making): number {
  const away = kind === 'bought' ? (bought?.days ?? 0) : isHardened(kind) ? (machines.some((one) => one.kind === 'furnace') ? 1 : (hardening?.days ?? 0)) : 0
  return Math.ceil(hours / hoursPerDay - 1e-9) + Math.ceil(away)
}

function becauseOf({ status, cost, expected }: Route, { use }: Order, { limitsUm }: Making, cheapest: Route | null): readonly Finding[] {
  const { countOnUm, carefulUm } = worstOf(expected), limitUm = limitsUm[use], facts = { use, limitUm, countOnUm, carefulUm }
  const says: { readonly [of in RouteStatus]: string } = { serves: 'route-serves', careful: 'route-with-care', short: 'route-falls-short', blocked: 'route-not-open' }
  return [
    { code: says[status], facts },
    ...(status !== 'blocked' && cheapest !== null ? priceFinding(cost.total, cheapest) : []),
    ...(expected.match.countOn.standing === 'shop' && expected.checks > 0 ? [{ code: 'own-experience', facts: { checks: expected.checks } }] : []),
  ]
}

function priceFinding(cost: number | null, cheapest: Route): readonly Finding[] {
  const leastCost = cheapest.cost.total!
  if (cost === null) return []
  return [cost <= leastCost ? { code: 'route-cheapest', facts: { cost } } : { code: 'route-dearer', facts: { cost, byCost: cost - leastCost, than: cheapest.kind } }]
}

const total = (list: readonly number[]): number => list.reduce((sum, one) => sum + one, 0)
const sumOf = (list: readonly (number | null)[]): number | null => list.reduce<number | null>((sum, one) => (sum === null || one === null ? null : sum + one), 0)
