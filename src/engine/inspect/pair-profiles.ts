import { enlargeMatching, type Graph, type Matching } from '#engine/numeric/maximum-matching.ts'
import { nearestCosts, nearPairs } from '#engine/inspect/near-pairs.ts'
import type { Mates, Paired } from '#engine/inspect/mates.ts'
import { type Profiles, profilesFrom, straightCost, turnedCost } from '#engine/inspect/profiles.ts'
import { settlePairs } from '#engine/inspect/settle-pairs.ts'

/**
 * The k pairs whose worst pair is best, each the better way round.
 *
 * 2k bars need a neighbour each, which bounds the worst cost from below. From there the limit grows until a largest
 * matching among the pairs within it has k pairs, and is then narrowed down over the costs that occur, so that one step
 * lower k pairs do not exist. Among the pairings with this worst cost, exchanges bring the total down.
 *
 * @param rows  heights of each bar at the same stations, in any one unit; at least 2k bars
 */
export function pairProfiles(rows: readonly (readonly number[])[], k: number): Paired {
  const profiles = profilesFrom(rows), { graph, worst, matching, pairsBelow } = leastWorst(profiles, k)
  settlePairs(profiles, graph, matching, worst)
  return { worst, groups: groupsFrom(profiles, matching), pairsBelow }
}

type LeastWorst = { readonly graph: Graph; readonly worst: number; readonly matching: Matching; readonly pairsBelow: number }

function leastWorst(profiles: Profiles, k: number): LeastWorst {
  const nearest = nearestCosts(profiles).sort(), bound = nearest[2 * k - 1]!
  const { graph, limit, tooLow, below, matching: found } = growLimit(profiles, k, bound, nearest.find((cost) => cost > 0) ?? 1)
  const limits = limit === bound ? [bound] : costsAbove(graph, tooLow)
  let matching = found, largest = below, low = -1, high = limits.length - 1
  while (high - low > 1) {
    const middle = (low + high) >> 1, trial = largest.slice()
    if (enlargeMatching(graph, trial, limits[middle]!, k) < k) { low = middle; largest = trial } else { high = middle; matching = trial }
  }
  const worst = limits[high]!
  return { graph, worst, matching, pairsBelow: enlargeMatching(graph, largest, nextBelow(graph, worst), k) }
}

type Grown = { readonly graph: Graph; readonly limit: number; readonly tooLow: number; readonly below: Matching; readonly matching: Matching }

/** Doubles the limit until k pairs exist; `below` is a largest matching at `tooLow`, the last limit that was too low. */
function growLimit(profiles: Profiles, k: number, from: number, step: number): Grown {
  const matching = new Int32Array(profiles.count).fill(-1)
  for (let limit = from, tooLow = -Infinity; ; tooLow = limit, limit = Math.max(2 * limit, step)) {
    const graph = nearPairs(profiles, limit), below = matching.slice()
    if (enlargeMatching(graph, matching, limit, k) >= k) return { graph, limit, tooLow, below, matching }
  }
}

/** The costs that occur above `tooLow`, rising. */
function costsAbove({ costs }: Graph, tooLow: number): Float64Array {
  const above: number[] = []
  for (const cost of costs) if (cost > tooLow && cost !== above.at(-1)) above.push(cost)
  return Float64Array.from(above).sort().filter((cost, i, sorted) => i === 0 || cost > sorted[i - 1]!)
}

function nextBelow({ costs }: Graph, worst: number): number {
  let most = -Infinity
  for (const cost of costs) if (cost < worst && cost > most) most = cost
  return most
}

function groupsFrom(profiles: Profiles, matching: Matching): Mates[] {
  const groups: Mates[] = []
  matching.forEach((j, i) => {
    if (j <= i) return
    const straight = straightCost(profiles, i, j), turned = turnedCost(profiles, i, j)
    groups.push({ bars: [i, j], turnOne: turned < straight, cost: Math.min(straight, turned) })
  })
  return groups.sort((a, b) => a.cost - b.cost)
}
