import { areEqual, heightOf, type HeightWindow, isInside, isReached, type Ladder, rungsIn, rungSumsIn, type Span } from '#engine/rack/heights/ladder.ts'

/** Whether a height may stand on its like: two pairs of one height, or only different heights on each other. */
export type Stacking = 'different' | 'same'

/**
 * What each rung and each sum of two rungs serves, as sets of windows: bit w of row x of `alone` is set where rung x serves
 * window w without another new one (by itself, on an owned height, or on its like), of row s of `sums` where two new rungs that
 * add to s do. A row is `words` numbers of 32 bits.
 *
 * Windows that owned heights serve, and those that hold a whole other one, are left out: they are served with it.
 */
export type StackTables = {
  readonly rungs: number
  readonly words: number
  /** All windows, as a set. */
  readonly everything: Uint32Array
  /** By their high ends, rising; so are their low ends. */
  readonly windows: readonly HeightWindow[]
  readonly spans: readonly Span[]
  readonly alone: Uint32Array
  readonly sums: Uint32Array
  /** 1: an owned height, which nobody needs to get. */
  readonly isOwned: Uint8Array
}

export function stackTablesOf(ladder: Ladder, windows: readonly HeightWindow[], owned: readonly number[], stacking: Stacking): StackTables {
  const open = withoutContaining(windows.filter((window) => servingOf(ladder, window, owned, stacking) === null))
  const { rungs } = ladder, words = Math.max(1, Math.ceil(open.length / 32))
  const alone = new Uint32Array(rungs * words), sums = new Uint32Array(Math.max(0, 2 * rungs - 1) * words)
  const spans = open.map((window) => rungSumsIn(ladder, window))
  const set = (rows: Uint32Array, { first, last }: Span, w: number) => {
    for (let row = first; row <= last; row += 1) rows[row * words + (w >>> 5)]! |= 1 << (w & 31)
  }
  open.forEach((window, w) => {
    for (const under of [0, ...owned]) set(alone, rungsIn(ladder, window, under), w)
    if (stacking === 'same') set(alone, { first: Math.ceil(spans[w]!.first / 2), last: Math.floor(spans[w]!.last / 2) }, w)
    set(sums, spans[w]!, w)
  })
  const isOwned = Uint8Array.from({ length: rungs }, (_, rung) => (owned.some((height) => areEqual(ladder, height, heightOf(ladder, rung))) ? 1 : 0))
  return { rungs, words, everything: setOf(open.length, words), windows: open, spans, alone, sums, isOwned }
}

/** Puts into `to` what each rung serves once `rung` is taken, where `from` is what they served before. */
export function reachWith({ rungs, words, sums }: StackTables, from: Uint32Array, to: Uint32Array, rung: number): void {
  const shift = rung * words
  for (let k = 0; k < rungs * words; k += 1) to[k] = from[k]! | sums[k + shift]!
}

/** A set of windows less those that a rung serves. */
export const without = ({ words }: StackTables, set: Uint32Array, reach: Uint32Array, rung: number): Uint32Array =>
  set.map((bits, v) => bits & ~reach[rung * words + v]!)

/** How many of a set of windows a rung serves. */
export function servedIn({ words }: StackTables, set: Uint32Array, reach: Uint32Array, rung: number): number {
  let count = 0
  for (let v = 0; v < words; v += 1) count += bitsIn(set[v]! & reach[rung * words + v]!)
  return count
}

export function bitsIn(word: number): number {
  let bits = word - ((word >>> 1) & 0x55555555)
  bits = (bits & 0x33333333) + ((bits >>> 2) & 0x33333333)
  return Math.imul((bits + (bits >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24
}

function setOf(count: number, words: number): Uint32Array {
  const set = new Uint32Array(words)
  for (let w = 0; w < count; w += 1) set[w >>> 5]! |= 1 << (w & 31)
  return set
}

/** One of the heights (rising) that serves a window, else two of them on each other, the lower first; null where none do. */
export function servingOf(ladder: Ladder, window: HeightWindow, heights: readonly number[], stacking: Stacking): readonly number[] | null {
  const one = heights.find((height) => isInside(ladder, window, height))
  if (one !== undefined) return [one]
  const apart = stacking === 'same' ? 0 : 1
  // as the lower one goes up, the least partner that reaches the window comes down
  let partner = heights.length
  for (const [k, lower] of heights.entries()) {
    while (partner > 0 && isReached(ladder, window, lower + heights[partner - 1]!)) partner -= 1
    const upper = heights[Math.max(partner, k + apart)]
    if (upper !== undefined && isInside(ladder, window, lower + upper)) return [lower, upper]
  }
  return null
}

/** The windows that hold no other whole one, each once. */
function withoutContaining(windows: readonly HeightWindow[]): readonly HeightWindow[] {
  let highestLow = -Infinity
  return windows.toSorted(([a, b], [c, d]) => b - d || c - a).filter(([low]) => {
    const isNew = low > highestLow
    if (isNew) highestLow = low
    return isNew
  })
}
