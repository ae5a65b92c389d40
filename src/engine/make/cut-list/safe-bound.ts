import { type CutProblem, fits } from '#engine/make/cut-list/cut-problem.ts'
import { bestLoad } from '#engine/make/cut-list/knapsack.ts'
import { leastCover } from '#engine/make/cut-list/least-cover.ts'

/** Whole numbers that a piece of each kind is worth, what all pieces are worth, and more than which no pattern of each stock is worth. */
export type Worths = { readonly ofKinds: readonly number[]; readonly total: number; readonly ofStocks: readonly number[]; readonly scale: number }

/** Worths add up to less than this, so that sums of them are exact. */
const mostWorth = 2 ** 48

/**
 * Duals as whole numbers: what a pattern is worth at most is then found without rounding, and the bound that follows from it holds for certain,
 * however wrong the duals may be.
 */
export function worthsOf(problem: CutProblem, duals: ArrayLike<number>): Worths {
  const { kinds, stocks } = problem
  const sum = kinds.reduce((total, { count }, k) => total + count * Math.max(0, duals[k]!), 0), scale = Math.max(1, Math.floor(mostWorth / (sum + 1)))
  const ofKinds = kinds.map((_, k) => Math.max(0, Math.floor(duals[k]! * scale)))
  const ofStocks = stocks.map(({ capacity }, stock) => bestLoad(
    kinds.flatMap(({ size, count }, kind) => (fits(problem, stock, kind) ? [{ kind, size, count, value: ofKinds[kind]! }] : [])), capacity, 0, 0,
  )?.atMost ?? 0)
  return { ofKinds, total: kinds.reduce((total, { count }, k) => total + count * ofKinds[k]!, 0), ofStocks, scale }
}

/**
 * Less than this no plan can cost: the least cost of stock that together is worth as much as all pieces are; Infinity where all the stock there is
 * is not worth as much.
 *
 * @param above  only costs above this one are asked for
 */
export const boundFrom = ({ stocks }: CutProblem, { total, ofStocks }: Worths, above = -1): number =>
  leastCover(stocks.map(({ cost, most }, s) => ({ cost, most, worth: ofStocks[s]! })), total, above)
