/** Who may go with whom: the neighbours of v and what each costs stand at `starts[v]` up to `starts[v + 1]`, both ways round. */
export type Graph = { readonly count: number; readonly starts: Int32Array; readonly neighbours: Int32Array; readonly costs: Float64Array }

/** The mate of each one, −1 for none. */
export type Matching = Int32Array

/**
 * Enlarges a matching along edges that cost at most `limit`, until it has `wanted` pairs or none larger exists.
 *
 * Who has a mate keeps one, though perhaps another. Changes the matching.
 *
 * @returns  the number of pairs; below `wanted` it is the most there can be
 * @source BLOSSOM
 */
export function enlargeMatching(graph: Graph, matching: Matching, limit: number, wanted: number): number {
  let pairs = matchNearest(graph, matching, limit, wanted)
  const search = new Search(graph, matching, limit)
  for (let root = 0; root < graph.count && pairs < wanted; root += 1) if (matching[root] === -1 && search.augmentFrom(root)) pairs += 1
  return pairs
}

/** Gives everyone without a mate the cheapest neighbour that has none either. */
function matchNearest(graph: Graph, matching: Matching, limit: number, wanted: number): number {
  let pairs = matching.reduce((sum, mate) => (mate === -1 ? sum : sum + 1), 0) / 2
  for (let v = 0; v < graph.count && pairs < wanted; v += 1) {
    if (matching[v] !== -1) continue
    let best = -1, bestCost = Infinity
    for (let e = graph.starts[v]!; e < graph.starts[v + 1]!; e += 1) {
      const w = graph.neighbours[e]!, cost = graph.costs[e]!
      if (cost <= limit && cost < bestCost && matching[w] === -1) { best = w; bestCost = cost }
    }
    if (best === -1) continue
    matching[v] = best; matching[best] = v
    pairs += 1
  }
  return pairs
}

const unseen = 0, outer = 1, inner = 2, spent = 3

/** Searches for alternating paths between two without mates. Odd cycles on the way are taken as one place, their base. */
class Search {
  readonly #graph: Graph
  readonly #matching: Matching
  readonly #limit: number
  readonly #label: Int8Array
  readonly #before: Int32Array
  readonly #base: Int32Array
  readonly #seenAt: Int32Array
  readonly #queue: Int32Array
  readonly #touched: Int32Array
  #round = 0
  #queued = 0
  #touchedCount = 0

  constructor(graph: Graph, matching: Matching, limit: number) {
    this.#graph = graph; this.#matching = matching; this.#limit = limit
    this.#label = new Int8Array(graph.count)
    this.#before = new Int32Array(graph.count)
    this.#base = Int32Array.from({ length: graph.count }, (_, v) => v)
    this.#seenAt = new Int32Array(graph.count)
    this.#queue = new Int32Array(graph.count)
    this.#touched = new Int32Array(graph.count)
  }

  /** Whether a path was found, and the matching changed along it. What was searched in vain is never searched again. */
  augmentFrom(root: number): boolean {
    const { starts, neighbours, costs } = this.#graph, label = this.#label
    this.#queued = 0; this.#touchedCount = 0
    this.#reach(root, outer)
    for (let next = 0; next < this.#queued; next += 1) {
      const v = this.#queue[next]!
      for (let e = starts[v]!; e < starts[v + 1]!; e += 1) {
        const w = neighbours[e]!
        if (costs[e]! > this.#limit || label[w] === inner || label[w] === spent) continue
        if (label[w] === unseen) {
          this.#reach(w, inner)
          this.#before[w] = v
          const mate = this.#matching[w]!
          if (mate === -1) { this.#turnPath(w); this.#forget(unseen); return true }
          this.#reach(mate, outer)
        } else if (this.#baseOf(v) !== this.#baseOf(w)) {
          const base = this.#commonBase(v, w)
          this.#shrink(v, w, base)
          this.#shrink(w, v, base)
        }
      }
    }
    this.#forget(spent)
    return false
  }

  #reach(v: number, as: typeof outer | typeof inner): void {
    this.#label[v] = as
    this.#touched[this.#touchedCount++] = v
    if (as === outer) this.#queue[this.#queued++] = v
  }

  /** Exchanges matched and unmatched edges from `end` back to the root. */
  #turnPath(end: number): void {
    for (let w = end; w !== -1;) {
      const v = this.#before[w]!, next = this.#matching[v]!
      this.#matching[w] = v; this.#matching[v] = w
      w = next
    }
  }

  #forget(as: typeof unseen | typeof spent): void {
    for (let i = 0; i < this.#touchedCount; i += 1) { const v = this.#touched[i]!; this.#label[v] = as; this.#base[v] = v }
  }

  #baseOf(v: number): number {
    const base = this.#base
    let at = v
    while (base[at] !== at) { base[at] = base[base[at]!]!; at = base[at]! }
    return at
  }

  /** Where the ways back to the root from two outer places meet, by steps from either in turn. */
  #commonBase(v: number, w: number): number {
    this.#round += 1
    for (let one = this.#baseOf(v), other = this.#baseOf(w); ; [one, other] = [other, one]) {
      if (one === -1) continue
      if (this.#seenAt[one] === this.#round) return one
      this.#seenAt[one] = this.#round
      const mate = this.#matching[one]!
      one = mate === -1 ? -1 : this.#baseOf(this.#before[mate]!)
    }
  }

  /** Makes the way from v back to the base part of the base; `across` is the other end of the edge that closed the cycle. */
  #shrink(v: number, across: number, base: number): void {
    for (let at = v, from = across; this.#baseOf(at) !== base;) {
      this.#before[at] = from
      const mate = this.#matching[at]!
      if (this.#label[mate] === inner) { this.#label[mate] = outer; this.#queue[this.#queued++] = mate }
      if (this.#base[at] === at) this.#base[at] = base
      if (this.#base[mate] === mate) this.#base[mate] = base
      from = mate
      at = this.#before[mate]!
    }
  }
}
