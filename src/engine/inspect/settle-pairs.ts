import type { Graph, Matching } from '#engine/numeric/maximum-matching.ts'
import { pairCost, type Profiles } from '#engine/inspect/profiles.ts'

/** What an exchange has to gain, as a part of the worst cost: less is rounding, and could go round in circles. */
const leastGain = 1e-9

type Edge = readonly [a: number, b: number, cost: number]

/**
 * Lowers the total cost of a matching, keeping the number of pairs and no pair above `worst`, until neither an exchange of
 * partners between two pairs, nor of a bar for one left over, nor of a pair for two left over gains anything.
 */
export function settlePairs(profiles: Profiles, graph: Graph, matching: Matching, worst: number): void {
  const paid = Float64Array.from(matching, (b, a) => (b === -1 ? 0 : pairCost(profiles, a, b))), gain = leastGain * worst
  while (exchangePartners(profiles, graph, matching, paid, worst, gain) || exchangePairs(graph, matching, paid, gain));
}

/** One round over all bars, `paid` being what each bar's pair costs; whether anything was gained. */
function exchangePartners(profiles: Profiles, graph: Graph, matching: Matching, paid: Float64Array, worst: number, gain: number): boolean {
  let gained = false
  for (let a = 0; a < graph.count; a += 1) {
    for (let e = graph.starts[a]!; e < graph.starts[a + 1]! && matching[a] !== -1; e += 1) {
      const c = graph.neighbours[e]!, cost = graph.costs[e]!, spare = paid[a]! + paid[c]! - cost - gain
      if (spare <= 0 || cost > worst) continue
      const b = matching[a]!, d = matching[c]!, left = d === -1 ? 0 : pairCost(profiles, b, d, worst)
      if (c === b || left > worst || left >= spare) continue
      matching[a] = c; matching[c] = a; paid[a] = cost; paid[c] = cost
      matching[b] = d; paid[b] = left
      if (d !== -1) { matching[d] = b; paid[d] = left }
      gained = true
    }
  }
  return gained
}

/** Gives up the dearest pairs for cheaper ones among the bars left over; whether anything was gained. */
function exchangePairs(graph: Graph, matching: Matching, paid: Float64Array, gain: number): boolean {
  const spare: Edge[] = [], dearest: Edge[] = []
  matching.forEach((b, a) => {
    if (b > a) dearest.push([a, b, paid[a]!])
    if (b !== -1) return
    for (let e = graph.starts[a]!; e < graph.starts[a + 1]!; e += 1) {
      const c = graph.neighbours[e]!
      if (c > a && matching[c] === -1) spare.push([a, c, graph.costs[e]!])
    }
  })
  spare.sort((one, other) => one[2] - other[2])
  dearest.sort((one, other) => other[2] - one[2])
  let given = 0
  for (const [a, b, cost] of spare) {
    const pair = dearest[given]
    if (!pair || cost >= pair[2] - gain) break
    if (matching[a] !== -1 || matching[b] !== -1) continue
    matching[pair[0]] = -1; matching[pair[1]] = -1; paid[pair[0]] = 0; paid[pair[1]] = 0
    matching[a] = b; matching[b] = a; paid[a] = cost; paid[b] = cost
    given += 1
  }
  return given > 0
}
