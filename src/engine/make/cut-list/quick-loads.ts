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
  const loads = new Map<string, QuickLoad>()
  for (let first = 0; first < order.length; first += 1) {
    const taken = new Map<number, number>()
    let room = capacity
    const put = (at: number, times: number) => { taken.set(at, (taken.get(at) ?? 0) + times); room -= times * order[at]!.size }
    put(first, 1)
    for (let at = 0; at < order.length && room >= smallest; at += 1) {
      const { size, count } = order[at]!, times = Math.min(count - (taken.get(at) ?? 0), Math.floor(room / size))
      if (times > 0) put(at, times)
    }
    for (let isChanged = true; isChanged;) {
      isChanged = false
      for (const [at, times] of taken) {
        const other = times === 0 ? -1 : best(room + order[at]!.size, taken, at)
        if (other < 0 || order[other]!.value <= order[at]!.value) continue
        put(at, -1); put(other, 1)
        isChanged = true
      }
    }
    const entries = [...taken].filter(([, times]) => times > 0).map(([at, times]) => [order[at]!.kind, times, order[at]!.value] as const).sort(([a], [b]) => a - b)
    const value = entries.reduce((sum, [, times, each]) => sum + times * each, 0)
    if (value > above) loads.set(entries.map(([kind, times]) => `${kind}x${times}`).join(), { value, kinds: entries.map(([kind]) => kind), counts: entries.map(([, times]) => times) })
  }
  return [...loads.values()].sort((a, b) => b.value - a.value).slice(0, most)
}

/** Finds the most valuable kind that fits a room and of which one is left; −1: none. */
function mostValuable(order: readonly Packable[]): (room: number, taken: ReadonlyMap<number, number>, instead: number) => number {
  const falling = order.map((_, at) => at).sort((a, b) => order[b]!.value - order[a]!.value || order[a]!.size - order[b]!.size)
  return (room, taken, instead) => falling.find((at) => at === instead || (order[at]!.size <= room && (taken.get(at) ?? 0) < order[at]!.count)) ?? -1
}
