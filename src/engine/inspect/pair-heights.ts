import type { Mates, Paired } from '#engine/inspect/mates.ts'

/**
 * The k pairs of heights whose worst difference is least and, among those, of the least total.
 *
 * Of any four bars two pairs can be made of neighbours in order of height without loss, so only neighbours need be
 * paired: counting from the lowest up gives the most pairs within a limit, a dynamic programme the least total.
 *
 * @param heights  at least 2k, in any one unit
 */
export function pairHeights(heights: readonly number[], k: number): Paired {
  const order = heights.map((_, i) => i).sort((i, j) => heights[i]! - heights[j]! || i - j)
  const steps = order.slice(1).map((j, at) => heights[j]! - heights[order[at]!]!)
  const limits = [...new Set(steps)].sort((a, b) => a - b)
  let low = -1, high = limits.length - 1
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (pairsWithin(steps, limits[middle]!) < k) low = middle; else high = middle
  }
  const worst = limits[high]!
  const groups = leastTotal(steps, k, worst).map((at): Mates => ({ bars: inOrder(order[at]!, order[at + 1]!), turnOne: false, cost: steps[at]! }))
  return { worst, groups: groups.sort((a, b) => a.cost - b.cost), pairsBelow: low < 0 ? 0 : pairsWithin(steps, limits[low]!) }
}

const inOrder = (i: number, j: number): readonly [number, number] => (i < j ? [i, j] : [j, i])

/** The most pairs of neighbours no step of which is above a limit. */
function pairsWithin(steps: readonly number[], limit: number): number {
  let pairs = 0
  for (let at = 0; at < steps.length; at += 1) if (steps[at]! <= limit) { pairs += 1; at += 1 }
  return pairs
}

/** Which k steps, no two of them next to each other and none above `worst`, have the least total. */
function leastTotal(steps: readonly number[], k: number, worst: number): number[] {
  const width = k + 1, taken = new Uint8Array((steps.length + 1) * width)
  // Least totals of 0, 1, … k pairs among the bars so far; `before` those of one bar fewer.
  let before = new Float64Array(width).fill(Infinity), sofar = new Float64Array(width).fill(Infinity)
  before[0] = 0; sofar[0] = 0
  steps.forEach((step, at) => {
    const next = sofar.slice()
    for (let pairs = 1; pairs <= k && step <= worst; pairs += 1) {
      if (before[pairs - 1]! + step < next[pairs]!) { next[pairs] = before[pairs - 1]! + step; taken[at * width + pairs] = 1 }
    }
    before = sofar; sofar = next
  })
  const chosen: number[] = []
  for (let at = steps.length - 1, pairs = k; pairs > 0; at -= 1) if (taken[at * width + pairs] === 1) { chosen.push(at); pairs -= 1; at -= 1 }
  return chosen
}
