import { type CutProblem, fits, type Pattern, type Plan, type Used } from '#engine/make/cut-list/cut-problem.ts'
import { bestLoad, fewStates } from '#engine/make/cut-list/knapsack.ts'

/**
 * A plan, one piece of stock after another: the largest piece still open goes in, then what fills the rest best; of the stocks the one that
 * costs least for what goes in. Null where the stock that is there does not do.
 *
 * @param open  how many of each kind are to be cut
 * @param left  how many of each stock are there
 */
export function fillUp(problem: CutProblem, open: readonly number[], left: readonly number[]): Plan | null {
  const still = [...open], there = [...left], used: Used[] = []
  let cost = 0
  for (let kind = 0; kind < still.length; kind += 1) {
    while (still[kind]! > 0) {
      let best: Pattern | null = null, bestShare = Infinity
      problem.stocks.forEach((stock, s) => {
        if (there[s]! <= 0 || !fits(problem, s, kind)) return
        const { pattern, filledSize } = filled(problem, s, kind, still), share = stock.cost / filledSize
        if (share < bestShare) { bestShare = share; best = pattern }
      })
      const pattern = best as Pattern | null
      if (pattern === null) return null
      const times = Math.min(there[pattern.stock]!, ...pattern.kinds.map((one, k) => Math.floor(still[one]! / pattern.counts[k]!)))
      pattern.kinds.forEach((one, k) => { still[one]! -= times * pattern.counts[k]! })
      there[pattern.stock]! -= times
      used.push({ pattern, times })
      cost += times * problem.stocks[pattern.stock]!.cost
    }
  }
  return { cost, used }
}

function filled(problem: CutProblem, stock: number, first: number, open: readonly number[]): { readonly pattern: Pattern; readonly filledSize: number } {
  const room = problem.stocks[stock]!.capacity - problem.kinds[first]!.size
  const load = bestLoad(problem.kinds.flatMap(({ size }, kind) => {
    const count = open[kind]! - (kind === first ? 1 : 0)
    return count > 0 && fits(problem, stock, kind) ? [{ kind, size, count, value: size }] : []
  }), room, 0, 0, fewStates)
  const counts = new Map(load?.kinds.map((kind, k) => [kind, load.counts[k]!]))
  counts.set(first, (counts.get(first) ?? 0) + 1)
  const kinds = [...counts.keys()].sort((a, b) => a - b)
  return { pattern: { stock, kinds, counts: kinds.map((kind) => counts.get(kind)!) }, filledSize: problem.kinds[first]!.size + (load?.value ?? 0) }
}
