import type { Packable } from '#engine/make/cut-list/knapsack.ts'

export type QuickLoad = { readonly value: number; readonly kinds: readonly number[]; readonly counts: readonly number[] }

/**
 * Valuable loads found quickly, at most `most`, the best first: one piece of each kind in turn goes in, then what is worth most for its size
 * while there is room, then pieces are changed one by one for the most valuable that fit in their place.
 *
 * @param above  loads worth no more are left out
 */
export function quickLoads(packables: readonly Packable[], capacity: number, above: number, most: number): QuickLoad[] {
  const order = packables.filter(({ size, value, count }) => size <= capacity && value > 0 && count > 0).sort((a, b) => b.value / b.size - a.value / a.size)
  const smallest = order.reduce((least, { size }) => Math.min(least, size), Infinity), best = mostValuable(order)
  const taken = new Int32Array(order.length), loads = new Map<string, QuickLoad>()
  for (let first = 0; first < order.length; first += 1) {
    const touched = [first]
    taken[first] = 1
    let room = capacity - order[first]!.size
    for (let at = 0; at < order.length && room >= smallest; at += 1) {
      const { size, count } = order[at]!
      if (size > room) continue
      const times = Math.min(count - taken[at]!, Math.floor(room / size))
      if (times <= 0) continue
      if (taken[at] === 0) touched.push(at)
      taken[at]! += times
      room -= times * size
    }
    for (let k = 0; k < touched.length; k += 1) {
      const at = touched[k]!, other = taken[at] === 0 ? at : best(room + order[at]!.size, taken, at)
      if (other === at) continue
      if (taken[other] === 0 && !touched.includes(other)) touched.push(other)
      taken[at]! -= 1
      taken[other]! += 1
      room += order[at]!.size - order[other]!.size
      k = -1
    }
    let value = 0
    for (const at of touched) value += taken[at]! * order[at]!.value
    if (value > above) {
      const entries = touched.filter((at) => taken[at]! > 0).map((at) => [order[at]!.kind, taken[at]!] as const).sort(([a], [b]) => a - b)
      loads.set(entries.join(), { value, kinds: entries.map(([kind]) => kind), counts: entries.map(([, times]) => times) })
    }
    for (const at of touched) taken[at] = 0
  }
  return [...loads.values()].sort((a, b) => b.value - a.value).slice(0, most)
}

/** Finds the most valuable kind that fits a room and of which one is left, or what stands there now. */
function mostValuable(order: readonly Packable[]): (room: number, taken: Int32Array, instead: number) => number {
  const falling = order.map((_, at) => at).sort((a, b) => order[b]!.value - order[a]!.value || order[a]!.size - order[b]!.size)
  return (room, taken, instead) => {
    const { value } = order[instead]!
    for (const at of falling) {
      const one = order[at]!
      if (one.value <= value) return instead
      if (one.size <= room && taken[at]! < one.count) return at
    }
    return instead
  }
}
