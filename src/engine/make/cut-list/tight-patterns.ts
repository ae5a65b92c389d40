import { type CutProblem, fits, type Pattern } from '#engine/make/cut-list/cut-problem.ts'
import { type Packable, restOf } from '#engine/make/cut-list/knapsack.ts'
import type { Worths } from '#engine/make/cut-list/safe-bound.ts'

/** Steps of listing before it is given up. */
const mostSteps = 1_500_000

/**
 * All patterns that a plan of at most this cost can have, and that are full: a piece more never harms, since what is cut too often is left out. Null:
 * there are too many of them.
 *
 * A pattern falls short of what its stock is worth by whole numbers; all patterns of a plan together by no more than what the stock is worth above the pieces.
 * So a pattern that alone falls short by more is in no such plan. Where all stock together costs no more, all of it may be used, and what it is worth counts.
 *
 * @param most  patterns
 */
export function tightPatterns(problem: CutProblem, worths: Worths, cost: number, most: number): Pattern[] | null {
  const { stocks, kinds } = problem, { ofKinds, ofStocks, total } = worths
  const { least, room } = stocks.reduce((sum, { cost: each, most: there }) => sum + each * there, 0) <= cost
    ? { least: ofStocks, room: stocks.reduce((sum, { most: there }, s) => sum + (there === 0 ? 0 : there * ofStocks[s]!), 0) - total }
    : byRate(problem, worths, cost)
  const found: Pattern[] = [], effort = { left: mostSteps }
  for (let s = 0; s < stocks.length; s += 1) {
    if (stocks[s]!.most === 0) continue
    const packables = kinds.flatMap(({ size, count }, kind) => (fits(problem, s, kind) ? [{ kind, size, count, value: ofKinds[kind]! }] : []))
    if (!listPatterns(packables, s, stocks[s]!.capacity, least[s]! - room, found, most, effort)) return null
  }
  return found
}

/** What a pattern of each stock would be worth that falls short of nothing, and how much all may fall short. */
function byRate({ stocks }: CutProblem, { ofStocks, total }: Worths, cost: number): { readonly least: readonly number[]; readonly room: number } {
  const unlimited = stocks.flatMap(({ most, cost: each }, s) => (most === Infinity ? [ofStocks[s]! / each] : []))
  const rate = Math.ceil(Math.max(...(unlimited.length > 0 ? unlimited : stocks.map(({ cost: each }, s) => ofStocks[s]! / each))))
  // what a limited stock is worth above the rate counts once for each there is
  const extra = stocks.map(({ cost: each }, s) => Math.max(0, ofStocks[s]! - rate * each))
  const room = rate * cost + stocks.reduce((sum, { most }, s) => sum + (extra[s]! === 0 ? 0 : extra[s]! * most), 0) - total
  return { least: stocks.map(({ cost: each }, s) => rate * each + extra[s]!), room }
}

/** Adds the full patterns worth at least `least`; false: more than `most`. */
function listPatterns(packables: readonly Packable[], stock: number, capacity: number, least: number, found: Pattern[], most: number, effort: { left: number }): boolean {
  const order = packables.toSorted((a, b) => b.value / b.size - a.value / a.size), rest = restOf(order), taken: number[] = order.map(() => 0)
  const go = (k: number, room: number, value: number): boolean => {
    effort.left -= 1
    if (effort.left < 0) return false
    if (value + rest(k, room) < least) return true
    if (k === order.length) {
      if (order.some(({ size, count }, at) => taken[at]! < count && size <= room)) return true
      const entries = order.map(({ kind }, at) => [kind, taken[at]!] as const).filter(([, times]) => times > 0).sort(([a], [b]) => a - b)
      if (entries.length > 0) found.push({ stock, kinds: entries.map(([kind]) => kind), counts: entries.map(([, times]) => times) })
      return found.length <= most
    }
    const { size, value: each, count } = order[k]!
    for (let times = Math.min(count, Math.floor(room / size)); times >= 0; times -= 1) {
      taken[k] = times
      if (!go(k + 1, room - times * size, value + times * each)) return false
    }
    taken[k] = 0
    return true
  }
  return go(0, capacity, 0)
}
