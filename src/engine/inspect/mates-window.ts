import type { Windowed } from '#engine/inspect/mates.ts'
import { pairHeights } from '#engine/inspect/pair-heights.ts'
import { pairProfiles } from '#engine/inspect/pair-profiles.ts'

/** Two bars for each vise with the least spread: a run in order of height. @param heights  at least 2 · vises */
export function windowOfHeights(heights: readonly number[], vises: number): Windowed {
  const order = heights.map((_, i) => i).sort((i, j) => heights[i]! - heights[j]! || i - j), wanted = 2 * vises
  const spreads = order.slice(wanted - 1).map((last, first) => heights[last]! - heights[order[first]!]!)
  const spread = Math.min(...spreads), first = spreads.indexOf(spread)
  const bars = order.slice(first, first + wanted).sort((i, j) => i - j)
  const { groups } = pairHeights(bars.map((bar) => heights[bar]!), vises)
  return { spread, bars, groups: groups.map((pair) => ({ ...pair, bars: [bars[pair.bars[0]]!, bars[pair.bars[1]]!] })) }
}

/**
 * The same for profiles, over all stations of all bars: the lower end is swept down over the lowest stations, and at each
 * end the bars above it whose highest stations are lowest are kept.
 */
export function windowOfProfiles(rows: readonly (readonly number[])[], vises: number): Windowed {
  const lows = rows.map((row) => Math.min(...row)), highs = rows.map((row) => Math.max(...row)), wanted = 2 * vises
  const kept: number[] = []
  let spread = Infinity, bars: readonly number[] = []
  for (const bar of rows.map((_, i) => i).sort((i, j) => lows[j]! - lows[i]! || i - j)) {
    kept.splice(placeFor(kept, highs, highs[bar]!), 0, bar)
    if (kept.length > wanted) kept.pop()
    if (kept.length < wanted || highs[kept.at(-1)!]! - lows[bar]! >= spread) continue
    spread = highs[kept.at(-1)!]! - lows[bar]!
    bars = [...kept]
  }
  bars = bars.toSorted((i, j) => i - j)
  const { groups } = pairProfiles(bars.map((bar) => rows[bar]!), vises)
  return { spread, bars, groups: groups.map((pair) => ({ ...pair, bars: [bars[pair.bars[0]]!, bars[pair.bars[1]]!] })) }
}

/** Where a bar of this highest station belongs among bars in order of theirs. */
function placeFor(kept: readonly number[], highs: readonly number[], high: number): number {
  let low = 0, up = kept.length
  while (low < up) { const middle = (low + up) >> 1; if (highs[kept[middle]!]! <= high) low = middle + 1; else up = middle }
  return low
}
