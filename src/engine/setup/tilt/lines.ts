import { type KernelLists, pairBytes } from '#engine/kernel/lists.ts'
import type { Spot } from '#engine/setup/tilt/pivots.ts'

/**
 * Places on at most two lines along the jaws, as they are gone through: the first line up to `split`, the second from there
 * up to `count`, each from left to right. Without a second line one place at 0 of no weight stands in for it.
 */
export type Lines = {
  /** The spot of each place, and those beyond `count` that stand where another one does; −1 where one only stands in. */
  readonly order: readonly number[]
  readonly split: number
  readonly count: number
  /** Along, of the first `count` places. */
  readonly xs: readonly number[]
  /** Of each place beyond `count`, which one it stands on: the higher of the two counts. */
  readonly twins: readonly number[]
  /** Parts of the load that each line carries, where it stands along, and how far apart the lines are. */
  readonly weights: readonly [first: number, second: number]
  readonly loadXMm: number
  readonly apartMm: number
}

/**
 * Places of a part whose slope across is given as one line, or those of bars along the jaws as two; null where that takes
 * more than two lines.
 *
 * @param load  strictly between the ends and the lines; over no place (jaw held) and on no line through two of them
 */
export function linesFrom(spots: readonly Spot[], [loadXMm, loadYMm]: readonly [number, number], jawHeld: boolean): Lines | null {
  const ys = jawHeld ? [0] : [...new Set(spots.map(({ yMm }) => yMm))].sort((a, b) => a - b)
  if (ys.length > 2) return null
  const lines = ys.map((y) => placesOf([...spots.keys()].filter((i) => jawHeld || spots[i]!.yMm === y), spots)), [first, second = [[-1]]] = lines as [number[][], number[][]?]
  const places = [...first, ...second], doubles = places.flatMap((place, k) => place.slice(1).map((spot) => ({ spot, k })))
  const apartMm = jawHeld ? 1 : ys[1]! - ys[0]!, share = jawHeld ? 0 : (loadYMm - ys[0]!) / apartMm
  return {
    order: [...places.map(([spot]) => spot!), ...doubles.map(({ spot }) => spot)], split: first.length, count: places.length, xs: places.map(([spot]) => spots[spot!]?.xMm ?? 0),
    twins: doubles.map(({ k }) => k), weights: [1 - share, share], loadXMm, apartMm,
  }
}

/** The spots of a line from left to right, those at one place together. */
function placesOf(line: readonly number[], spots: readonly Spot[]): number[][] {
  const xs = [...new Set(line.map((i) => spots[i]!.xMm))].sort((a, b) => a - b)
  return xs.map((x) => line.filter((i) => spots[i]!.xMm === x))
}

/** Heights of a batch of trials in µm, pair of trials by pair, place by place; slopes of all trials, µm/mm. */
export type Slopes = { readonly heights: Float64Array; readonly along: Float64Array; readonly across: Float64Array }
/** Finds the seats of a batch, and puts its slopes into the lists from a place on. */
export type Settle = (from: number) => void

/** How the seats of trials on lines are found; where the jaw holds the part, what it gives for across means nothing. */
export function settleOn({ order, split, count, xs, twins, weights: [first, second], loadXMm, apartMm }: Lines, lists: KernelLists, { heights, along, across }: Slopes): Settle {
  const { kernel } = lists, pairs = heights.length / order.length / 2, row = pairBytes * order.length, z = heights.byteOffset
  const twice = lists.floats(2 * count), brackets = lists.floats(10 * pairs).byteOffset, open = lists.words(pairs).byteOffset
  twice.set(xs.flatMap((x) => [x, x]))
  return (from) => {
    twins.forEach((k, i) => kernel.raise(z + pairBytes * k, row, pairs, z + pairBytes * (count + i)))
    kernel.settle(z, row, twice.byteOffset, split, count, first, second, loadXMm, 1 / apartMm, pairs, brackets, open, along.byteOffset + 8 * from, across.byteOffset + 8 * from)
  }
}
