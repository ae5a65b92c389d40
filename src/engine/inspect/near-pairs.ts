import type { Graph } from '#engine/numeric/maximum-matching.ts'
import { pairCost, type Profiles } from '#engine/inspect/profiles.ts'

/** What each bar costs with its nearest neighbour; Infinity for a bar alone. */
export function nearestCosts(profiles: Profiles): Float64Array {
  const { order, means, slack } = profiles
  const nearest = new Float64Array(profiles.count).fill(Infinity)
  order.forEach((i, at) => {
    for (const step of [-1, 1]) {
      for (let next = at + step; next >= 0 && next < order.length; next += step) {
        const j = order[next]!
        if (nearest[i] === 0 || Math.abs(means[i]! - means[j]!) - slack > nearest[i]!) break
        nearest[i] = Math.min(nearest[i]!, pairCost(profiles, i, j, nearest[i]!))
      }
    }
  })
  return nearest
}

/** Every two bars that cost at most `limit` together. */
export function nearPairs(profiles: Profiles, limit: number): Graph {
  const { count } = profiles, starts = new Int32Array(count + 1)
  eachNearPair(profiles, limit, (i, j) => { starts[i + 1]! += 1; starts[j + 1]! += 1 })
  for (let v = 0; v < count; v += 1) starts[v + 1]! += starts[v]!
  const free = starts.slice(), neighbours = new Int32Array(starts[count]!), costs = new Float64Array(starts[count]!)
  const put = (v: number, w: number, cost: number): void => { const e = free[v]!; free[v] = e + 1; neighbours[e] = w; costs[e] = cost }
  eachNearPair(profiles, limit, (i, j, cost) => { put(i, j, cost); put(j, i, cost) })
  return { count, starts, neighbours, costs }
}

function eachNearPair(profiles: Profiles, limit: number, visit: (i: number, j: number, cost: number) => void): void {
  const { count, order, means, slack } = profiles
  for (let at = 0; at < count; at += 1) {
    const i = order[at]!
    for (let next = at + 1; next < count; next += 1) {
      const j = order[next]!
      if (means[j]! - means[i]! - slack > limit) break
      const cost = pairCost(profiles, i, j, limit)
      if (cost <= limit) visit(i, j, cost)
    }
  }
}
