import { firstPassing, topUm, type Tops } from '#engine/setup/row/tops.ts'
import { sameUm } from '#engine/setup/row/row-question.ts'

/**
 * A stretch of tops as narrow as it can be for one pair in each vise. Vise k may take the pairs `from[k]` to `to[k]`;
 * `picks` is one way, the lower the bed the higher the pair.
 */
export type TopWindow = { readonly from: Int32Array; readonly to: Int32Array; readonly picks: Int32Array; readonly lowUm: number }

/**
 * The least spread of the tops, and every window in which it is reached.
 *
 * Of any set of pairs, giving the lowest pair to the highest bed, and so on, keeps highest and lowest top nearest
 * together. So it is enough to sweep: the lowest tops from some height up, then, with the highest top now known, the
 * highest tops below it. What is left between the two is a window that cannot be shortened at either end.
 *
 * @source ROW-SEARCH
 */
export function tightWindowsOf(tops: Tops): { readonly spreadUm: number; readonly windows: readonly TopWindow[] } {
  const ends: { readonly lowUm: number; readonly highUm: number; readonly picks: Int32Array }[] = []
  const vises = tops.bedsUm.length
  let lowest = lowestAbove(tops, new Int32Array(vises)), leastUm = Infinity
  while (lowest) {
    const highUm = extremeUm(tops, lowest, Math.max), picks = highestUpTo(tops, lowest, highUm), lowUm = extremeUm(tops, picks, Math.min)
    leastUm = Math.min(leastUm, highUm - lowUm)
    if (highUm - lowUm <= leastUm + sameUm) ends.push({ lowUm, highUm, picks })
    lowest = lowestAbove(tops, picks.map((at, k) => firstPassing(tops, k, at, (um) => um > lowUm)))
  }
  return { spreadUm: leastUm, windows: ends.filter(({ lowUm, highUm }) => highUm - lowUm <= leastUm + sameUm).map((end) => windowFrom(tops, end, leastUm)) }
}

/** The lowest pairs from `from[k]` up, each once; null where they do not go round. */
function lowestAbove(tops: Tops, from: Int32Array): Int32Array | null {
  const picks = new Int32Array(from.length)
  for (let k = 0; k < from.length; k += 1) picks[k] = Math.max(from[k]!, k === 0 ? 0 : picks[k - 1]! + 1)
  return picks.at(-1)! < tops.meansUm.length ? picks : null
}

/** The highest pairs whose tops stay at or below a height; `lowest` do, too. */
function highestUpTo(tops: Tops, lowest: Int32Array, highUm: number): Int32Array {
  const picks = new Int32Array(tops.bedsUm.length)
  for (let k = picks.length - 1; k >= 0; k -= 1) {
    picks[k] = Math.min(firstPassing(tops, k, lowest[k]!, (um) => um > highUm), k === picks.length - 1 ? Infinity : picks[k + 1]!) - 1
  }
  return picks
}

function extremeUm(tops: Tops, picks: Int32Array, extreme: (a: number, b: number) => number): number {
  return picks.reduce((most, at, k) => extreme(most, topUm(tops, k, at)), topUm(tops, 0, picks[0]!))
}

/** Half of what counts as equal is added at either end: rounding must not keep a pair out that is as good. */
function windowFrom(tops: Tops, { lowUm, picks }: { readonly lowUm: number; readonly picks: Int32Array }, spreadUm: number): TopWindow {
  const fromUm = lowUm - sameUm / 2, toUm = lowUm + spreadUm + sameUm / 2
  return {
    lowUm, picks,
    from: picks.map((_, k) => firstPassing(tops, k, 0, (um) => um >= fromUm)),
    to: picks.map((at, k) => firstPassing(tops, k, at, (um) => um > toUm) - 1),
  }
}
