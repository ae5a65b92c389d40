import type { RowPair, RowVise } from '#engine/setup/row/row-question.ts'

/**
 * Every top a pair may have in a vise, as two lists: beds from the highest down, means of the pairs from the lowest up.
 *
 * `vise` and `pair` say which of those given each entry is. A top is the sum of two entries and always made by `topUm`, so
 * that a top compares equal to itself.
 */
export type Tops = {
  readonly bedsUm: Float64Array
  readonly meansUm: Float64Array
  readonly vise: readonly number[]
  readonly pair: readonly number[]
}

export function topsOf(vises: readonly RowVise[], pairs: readonly RowPair[]): Tops {
  const vise = [...vises.keys()].sort((a, b) => vises[b]!.bedUm - vises[a]!.bedUm || a - b)
  const pair = [...pairs.keys()].sort((a, b) => pairs[a]!.meanMm - pairs[b]!.meanMm || a - b)
  return {
    bedsUm: Float64Array.from(vise, (k) => vises[k]!.bedUm), meansUm: Float64Array.from(pair, (k) => 1000 * pairs[k]!.meanMm),
    vise, pair,
  }
}

export const topUm = ({ bedsUm, meansUm }: Tops, k: number, i: number): number => bedsUm[k]! + meansUm[i]!

/**
 * For vise `k` the first pair whose top passes, `from` or after it; tops rise with the pair, and so does passing. Their
 * number where none does. Quick where the answer is near.
 */
export function firstPassing(tops: Tops, k: number, from: number, passes: (um: number) => boolean): number {
  const count = tops.meansUm.length
  let low = from, high = from, step = 1
  while (high < count && !passes(topUm(tops, k, high))) {
    low = high + 1
    high += step
    step *= 2
  }
  for (high = Math.min(high, count); low < high; ) {
    const middle = (low + high) >>> 1
    if (passes(topUm(tops, k, middle))) high = middle
    else low = middle + 1
  }
  return low
}
