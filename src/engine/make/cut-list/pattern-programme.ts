import type { CutProblem, Pattern, Plan, Used } from '#engine/make/cut-list/cut-problem.ts'
import type { Programme } from '#engine/make/solver.ts'

/** How often each of these patterns is cut, so that every piece is made, no more stock is used than there is, and it costs at most `cost`. */
export function programmeOf({ kinds, stocks }: CutProblem, patterns: readonly Pattern[], cost: number): Programme {
  const costRow = kinds.length, limited = stocks.flatMap(({ most }, s) => (most === Infinity ? [] : [s]))
  return {
    rows: [...kinds.map(({ count }) => ({ least: count, most: Infinity })), { least: 0, most: cost }, ...limited.map((s) => ({ least: 0, most: stocks[s]!.most }))],
    columns: patterns.map(({ stock, kinds: of, counts }) => {
      const limit = limited.indexOf(stock)
      return {
        cost: stocks[stock]!.cost, isWhole: true,
        most: Math.min(stocks[stock]!.most, Math.max(...of.map((kind, k) => Math.ceil(kinds[kind]!.count / counts[k]!)))),
        rows: [...of, costRow, ...(limit < 0 ? [] : [costRow + 1 + limit])], values: [...counts, stocks[stock]!.cost, ...(limit < 0 ? [] : [1])],
      }
    }),
  }
}

/** The plan that rounded values make; pieces cut too often are left out. */
export function planOf({ kinds, stocks }: CutProblem, patterns: readonly Pattern[], values: readonly number[]): Plan {
  const open = kinds.map(({ count }) => count), used: Used[] = []
  patterns.forEach((pattern, at) => {
    let left = Math.round(values[at]!)
    while (left > 0) {
      // as often as nothing has to be left out of it, else once with what is still open
      const whole = Math.min(left, ...pattern.kinds.map((kind, k) => Math.floor(open[kind]! / pattern.counts[k]!)))
      const cut = whole > 0 ? pattern : onlyOpen(pattern, open), times = Math.max(1, whole)
      if (cut.kinds.length > 0) used.push({ pattern: cut, times })
      cut.kinds.forEach((kind, k) => { open[kind]! -= times * cut.counts[k]! })
      left -= times
    }
  })
  return { cost: used.reduce((sum, { pattern, times }) => sum + times * stocks[pattern.stock]!.cost, 0), used }
}

function onlyOpen({ stock, kinds, counts }: Pattern, open: readonly number[]): Pattern {
  const entries = kinds.map((kind, k) => [kind, Math.min(counts[k]!, open[kind]!)] as const).filter(([, times]) => times > 0)
  return { stock, kinds: entries.map(([kind]) => kind), counts: entries.map(([, times]) => times) }
}
