/** How many of each kind go in, what they are worth together, and more than which no choice is worth. */
export type Load = { readonly value: number; readonly atMost: number; readonly kinds: readonly number[]; readonly counts: readonly number[] }

export type Packable = { readonly size: number; readonly value: number; readonly count: number; readonly kind: number }

/** States looked at before a search is broken off; `atMost` then says less. */
export const statesMost = 4_000_000, fewStates = 30_000

/**
 * The most valuable load of a knapsack with several of each kind.
 *
 * States (size, value) of which none is beaten by a smaller one, kind by kind in falling value for size; a state that with the
 * best of all kinds to come cannot be worth more than the best load is dropped.
 *
 * @param packables  values above 0, in any order
 * @param above      loads that are worth no more are not looked for; null is then returned
 * @param slack      values nearer to each other than this count as equal; 0 for whole numbers
 * @param most       states to look at before it is broken off
 * @source KNAPSACK
 */
export function bestLoad(packables: readonly Packable[], capacity: number, above: number, slack: number, most = statesMost): Load | null {
  const order = packables.filter(({ size, value, count }) => size <= capacity && value > 0 && count > 0).sort((a, b) => b.value / b.size - a.value / a.size)
  let best = above, bestNode = -1, states = 0, length = 1, broken = -Infinity, left = statesFor(256), next = statesFor(256)
  left.nodes[0] = -1
  const parents: number[] = [], takens: number[] = [], times: number[] = []
  const rest = restOf(order)
  for (let k = 0; k < order.length && length > 0; k += 1) {
    const { size, value, count } = order[k]!
    // 1, 2, 4 … of a kind make every number of it
    let open = Math.min(count, Math.floor(capacity / size))
    for (let part = 1; open > 0; open -= part, part *= 2) {
      const taken = Math.min(part, open), moreSize = taken * size, moreValue = taken * value, isLast = taken === open
      if (next.sizes.length < 2 * length) next = statesFor(4 * length)
      let a = 0, b = 0, n = 0, highest = -Infinity
      while (a < length || b < length) {
        const sizeB = b < length ? left.sizes[b]! + moreSize : Infinity
        const fromA = a < length && left.sizes[a]! <= sizeB
        if (!fromA && sizeB > capacity) break
        const at = fromA ? a : b, stateSize = fromA ? left.sizes[a]! : sizeB, stateValue = fromA ? left.values[a]! : left.values[b]! + moreValue
        if (fromA) a += 1
        else b += 1
        if (stateValue <= highest) continue
        if (stateValue + rest(isLast ? k + 1 : k, capacity - stateSize) <= best + slack && !(stateValue > best + slack)) continue
        highest = stateValue
        let node = left.nodes[at]!
        if (!fromA) {
          parents.push(node); takens.push(k); times.push(taken)
          node = parents.length - 1
          if (stateValue > best + slack) { best = stateValue; bestNode = node }
        }
        next.sizes[n] = stateSize; next.values[n] = stateValue; next.nodes[n] = node
        n += 1
      }
      [left, next] = [next, left]
      length = n
      states += n
      if (states > most) {
        for (let s = 0; s < n; s += 1) broken = Math.max(broken, left.values[s]! + rest(isLast ? k + 1 : k, capacity - left.sizes[s]!))
        length = 0
        break
      }
    }
  }
  if (bestNode < 0 && broken === -Infinity) return null
  const counts = new Map<number, number>()
  for (let node = bestNode; node >= 0; node = parents[node]!) {
    const { kind } = order[takens[node]!]!
    counts.set(kind, (counts.get(kind) ?? 0) + times[node]!)
  }
  const kinds = [...counts.keys()].sort((x, y) => x - y)
  return { value: bestNode < 0 ? 0 : best, atMost: Math.max(best, broken), kinds, counts: kinds.map((kind) => counts.get(kind)!) }
}

/** Room for states by rising size: their sizes, values, and what was taken last. */
const statesFor = (most: number) => ({ sizes: new Float64Array(most), values: new Float64Array(most), nodes: new Int32Array(most) })

/** More than doubles lose in a few steps: so that a bound is never rounded down. */
const roundingShare = 1e-12

/** Bound on what kinds from `k` on add within `room`: in falling value for size, the last one in part. */
export function restOf(order: readonly Packable[]): (k: number, room: number) => number {
  const steps = 6, smallest = new Float64Array(order.length + 1).fill(Infinity)
  for (let k = order.length - 1; k >= 0; k -= 1) smallest[k] = Math.min(smallest[k + 1]!, order[k]!.size)
  const bySize = order.toSorted((a, b) => a.size - b.size), highest: number[] = []
  for (const { value } of bySize) highest.push(Math.max(value, highest.at(-1) ?? 0))
  const bestOne = (room: number): number => {
    let low = 0, high = bySize.length
    while (low < high) {
      const middle = (low + high) >> 1
      if (bySize[middle]!.size <= room) low = middle + 1
      else high = middle
    }
    return low === 0 ? 0 : highest[low - 1]!
  }
  return (from, room) => {
    let value = 0, left = room
    if (left < smallest[from]!) return 0
    if (left < 2 * smallest[from]!) return bestOne(left)
    for (let k = from; k < order.length; k += 1) {
      const one = order[k]!, all = one.size * one.count
      if (all >= left || k - from >= steps) return value + ((left * one.value) / one.size) * (1 + roundingShare)
      value += one.value * one.count
      left -= all
    }
    return value
  }
}
