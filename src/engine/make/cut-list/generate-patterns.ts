import { costStep, type CutProblem, fits } from '#engine/make/cut-list/cut-problem.ts'
import { bestLoad, type Packable } from '#engine/make/cut-list/knapsack.ts'
import { costSlack, type Master } from '#engine/make/cut-list/master.ts'
import { quickLoads } from '#engine/make/cut-list/quick-loads.ts'

/** Patterns taken in at a time while they are found quickly. */
const quickMost = 10
/** Loads nearer to each other than this are worth the same. */
const loadSlack = 1e-12
/** What the counts that are taken a little apart may add, in steps of cost. */
const apartSteps = 1e-3

/**
 * Brings the linear programme to its best over all patterns, known or not: patterns that by its duals are worth more than their stock are found and
 * taken in, quickly as long as that finds any, then the most valuable one, until none is worth more. The duals are then good for a bound.
 *
 * @param open     how many of each kind are still to be cut: patterns hold no more
 * @param isExact  false: it also ends when going on could not change the bound, rounded up to a cost that can be
 * @param isLate   asked now and then; true ends it
 * @return false where it was ended before
 */
export function generatePatterns(problem: CutProblem, master: Master, open: readonly number[], isExact: boolean, isLate: () => boolean): boolean {
  const { kinds, stocks } = problem, isUnlimited = stocks.every(({ most }) => most === Infinity)
  const steps = Math.max(...stocks.map(({ cost }) => cost)) / costStep(problem)
  const fitting = stocks.map((_, stock) => kinds.map((_kind, kind) => kind).filter((kind) => open[kind]! > 0 && fits(problem, stock, kind)))
  const packablesOf = (stock: number): Packable[] => fitting[stock]!.map((kind) => ({ kind, size: kinds[kind]!.size, count: open[kind]!, value: master.duals[kind]! }))
  for (;;) {
    if (isLate() || !master.solve(isLate)) return false
    const quick = stocks.flatMap(({ capacity }, stock) => quickLoads(packablesOf(stock), capacity, master.priceOf(stock) + costSlack, quickMost).map((load) => ({ stock, kinds: load.kinds, counts: load.counts })))
    for (const pattern of quick) master.add(pattern)
    if (quick.length > 0) continue
    let over = 1
    const exact = stocks.flatMap(({ capacity }, stock) => {
      const price = master.priceOf(stock), load = bestLoad(packablesOf(stock), capacity, price + costSlack, loadSlack)
      if (load === null || load.kinds.length === 0) return []
      over = Math.max(over, load.atMost / price)
      return [{ stock, kinds: load.kinds, counts: load.counts }]
    })
    if (exact.length === 0) return true
    const cost = master.cost() * steps
    if (!isExact && isUnlimited && Math.ceil(cost / over - apartSteps) === Math.ceil(cost - apartSteps)) return true
    for (const pattern of exact) master.add(pattern)
  }
}
