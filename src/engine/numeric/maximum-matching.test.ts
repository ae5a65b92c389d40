import fc from 'fast-check'
import { expect, test } from 'vitest'
import { enlargeMatching, type Graph } from '#engine/numeric/maximum-matching.ts'

type Edge = readonly [a: number, b: number, cost: number]

function graphFrom(count: number, edges: readonly Edge[]): Graph {
  const lists = Array.from({ length: count }, (_, v) => edges.flatMap(([a, b, cost]) => (a === v ? [{ w: b, cost }] : b === v ? [{ w: a, cost }] : [])))
  const starts = new Int32Array(count + 1)
  lists.forEach((list, v) => { starts[v + 1] = starts[v]! + list.length })
  return { count, starts, neighbours: Int32Array.from(lists.flat(), ({ w }) => w), costs: Float64Array.from(lists.flat(), ({ cost }) => cost) }
}

/** The most pairs, by trying everything: the first one goes with nobody or with each of its neighbours. */
function mostPairs(left: readonly number[], edges: readonly Edge[]): number {
  const [v, ...rest] = left
  if (v === undefined) return 0
  const partners = edges.flatMap(([a, b]) => (a === v && rest.includes(b) ? [b] : b === v && rest.includes(a) ? [a] : []))
  return Math.max(mostPairs(rest, edges), ...partners.map((w) => 1 + mostPairs(rest.filter((one) => one !== w), edges)))
}

const graphs = fc.integer({ min: 2, max: 9 }).chain((count) => fc.record({
  count: fc.constant(count),
  edges: fc.uniqueArray(fc.tuple(fc.nat(count - 1), fc.nat(count - 1), fc.integer({ min: 1, max: 3 })), { selector: ([a, b]) => `${Math.min(a, b)} ${Math.max(a, b)}`, maxLength: 18 })
    .map((edges) => edges.filter(([a, b]) => a !== b)),
}))

test('as many pairs as trying everything finds, each allowed, none of anyone twice', () => {
  fc.assert(fc.property(graphs, fc.integer({ min: 1, max: 3 }), ({ count, edges }, limit) => {
    const matching = new Int32Array(count).fill(-1), pairs = enlargeMatching(graphFrom(count, edges), matching, limit, count)
    expect(pairs).toBe(mostPairs([...matching.keys()], edges.filter(([, , cost]) => cost <= limit)))
    expect([...matching].filter((mate) => mate !== -1)).toHaveLength(2 * pairs)
    matching.forEach((mate, v) => {
      if (mate === -1) return
      expect(matching[mate]).toBe(v)
      expect(edges.some(([a, b, cost]) => cost <= limit && ((a === v && b === mate) || (a === mate && b === v)))).toBe(true)
    })
  }), { numRuns: 500 })
})

test('a wider limit goes on from a narrower one, and stops when told', () => {
  fc.assert(fc.property(graphs, ({ count, edges }) => {
    const graph = graphFrom(count, edges), grown = new Int32Array(count).fill(-1)
    const sizes = [1, 2, 3].map((limit) => enlargeMatching(graph, grown, limit, count)), atOnce = enlargeMatching(graph, new Int32Array(count).fill(-1), 3, count)
    expect(sizes[2]).toBe(atOnce)
    expect(sizes.toSorted((a, b) => a - b)).toEqual(sizes)
    expect(enlargeMatching(graph, new Int32Array(count).fill(-1), 3, 1)).toBe(Math.min(1, atOnce))
  }))
})

// Two odd cycles joined by an edge: the only matching of all six crosses it.
test('odd cycles', () => {
  const matching = Int32Array.of(1, 0, -1, -1, 5, 4), edges: Edge[] = [[0, 1, 1], [1, 2, 1], [2, 0, 1], [3, 4, 1], [4, 5, 1], [5, 3, 1], [0, 5, 1]]
  expect(enlargeMatching(graphFrom(6, edges), matching, 1, 3)).toBe(3)
  expect(matching[0]).toBe(5)
})
