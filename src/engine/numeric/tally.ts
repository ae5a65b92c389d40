import type { Kernel } from '#engine/kernel/kernel.ts'
import type { KernelLists } from '#engine/kernel/lists.ts'
import { firstAbove } from '#engine/numeric/sorted.ts'

export type Quantiles = { readonly ofValues: readonly number[]; readonly ofSizes: readonly number[] }

/** Bins for each sign. */
const bins = 2048
/** So many first values tell how wide the bins are: `reach` times the largest of them is the last bin's. */
const looked = 256, reach = 1.5

/** Bytes that a tally of so many values needs at most. */
export const bytesForTally = (values: number): number => 10 * values + 10 * bins + 128

/**
 * Mean, standard deviation and quantiles of many values, counted as they come, without putting them all in order: they are
 * counted in bins alike on both sides of 0, and only what lies in bins that are asked for is sorted. What is far beyond
 * the first values is all in the last bin: that costs time, and changes nothing.
 */
export class Tally {
  /** The values, in the memory of the kernel: written by whoever counts them. */
  readonly values: Float64Array
  readonly #kernel: Kernel
  /** Bins of negative values come before those of positive ones, the bin nearest to 0 in the middle. */
  readonly #counts: Int32Array
  readonly #wanted: Uint8Array
  /** Of each value, two bytes. */
  readonly #binOf: Uint8Array
  readonly #sums: Float64Array
  #count = 0
  #from = 0
  #perUnit = 0

  /** @param most  values at most */
  constructor(lists: KernelLists, most: number) {
    this.#kernel = lists.kernel
    this.values = lists.floats(most)
    this.#counts = lists.words(2 * bins).fill(0)
    this.#wanted = lists.bytes(2 * bins).fill(0)
    this.#binOf = lists.bytes(2 * most)
    this.#sums = lists.floats(4).fill(0)
  }

  /** Counts the values that came in up to a place; all finite. */
  countTo(end: number): void {
    if (this.#count === 0) this.#look(this.values.subarray(0, Math.min(end, looked)))
    const start = this.#count
    this.#kernel.tally(this.values.byteOffset + 8 * start, end - start, this.#from, this.#perUnit, bins, this.#binOf.byteOffset + 2 * start, this.#counts.byteOffset, this.#sums.byteOffset)
    this.#count = end
  }

  /** Mean and standard deviation with divisor n − 1 (of one value 0), from distances to the first value: a common offset costs no digits. */
  moments(): { readonly mean: number; readonly sd: number } {
    const [even, odd, evenSquares, oddSquares] = this.#sums as unknown as readonly [number, number, number, number], sum = even + odd, n = this.#count
    return { mean: this.#from + sum / n, sd: n < 2 ? 0 : Math.sqrt(Math.max(0, evenSquares + oddSquares - (sum * sum) / n) / (n - 1)) }
  }

  /** How many values are not above a limit. */
  countWithin(limit: number): number {
    return this.#kernel.countWithin(this.values.byteOffset, this.#count, limit)
  }

  /**
   * Quantiles of the values, and of their sizes |value|. Between two values a quantile goes straight (0 is the least, 1 the
   * largest). Once only: the values are lost by it.
   */
  quantiles(shares: readonly number[], ofSizes: readonly number[] = []): Quantiles {
    const byValue = startsOf(this.#counts), bySize = startsOf(this.#counts.subarray(bins).map((count, bin) => count + this.#counts[bins - 1 - bin]!))
    const valuePlaces = shares.map((share) => share * (this.#count - 1)), sizePlaces = ofSizes.map((share) => share * (this.#count - 1))
    for (const bin of binsAt(byValue, valuePlaces)) this.#wanted[bin] = 1
    for (const bin of binsAt(bySize, sizePlaces)) for (const side of [bins + bin, bins - 1 - bin]) this.#wanted[side] = 1
    const kept = this.#gather()
    const sizesIn = (bin: number): Float64Array => sizesOf(kept.get(bins + bin)!, kept.get(bins - 1 - bin)!)
    return { ofValues: valuesAt(byValue, valuePlaces, (bin) => kept.get(bin)!), ofSizes: valuesAt(bySize, sizePlaces, sizesIn) }
  }

  #look(first: Float64Array): void {
    const largest = first.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
    this.#from = first[0]!
    this.#perUnit = bins / Math.max(reach * largest, 1e-300)
  }

  /** The values in each bin that is wanted, in order. */
  #gather(): ReadonlyMap<number, Float64Array> {
    const count = this.#kernel.gather(this.values.byteOffset, this.#count, this.#binOf.byteOffset, this.#wanted.byteOffset)
    const sorted = this.values.subarray(0, count).sort(), kept = new Map<number, Float64Array>()
    let start = 0
    this.#wanted.forEach((wanted, bin) => {
      if (wanted === 0) return
      kept.set(bin, sorted.subarray(start, start + this.#counts[bin]!))
      start += this.#counts[bin]!
    })
    return kept
  }
}

/** How many values come before each bin; last, how many there are. */
function startsOf(counts: Int32Array): Int32Array {
  const starts = new Int32Array(counts.length + 1)
  counts.forEach((count, bin) => { starts[bin + 1] = starts[bin]! + count })
  return starts
}

const binAt = (starts: Int32Array, rank: number): number => firstAbove(starts, rank) - 1

function binsAt(starts: Int32Array, places: readonly number[]): ReadonlySet<number> {
  return new Set(places.flatMap((place) => [binAt(starts, Math.floor(place)), binAt(starts, Math.ceil(place))]))
}

/** Not by spreading: where one value is far from all others, these two bins hold the rest, too many for one call. */
function sizesOf(above: Float64Array, below: Float64Array): Float64Array {
  const sizes = new Float64Array(above.length + below.length)
  sizes.set(above)
  sizes.set(below.map(Math.abs), above.length)
  return sizes.sort()
}

function valuesAt(starts: Int32Array, places: readonly number[], inBin: (bin: number) => Float64Array): readonly number[] {
  const valueAt = (rank: number): number => { const bin = binAt(starts, rank); return inBin(bin)[rank - starts[bin]!]! }
  return places.map((place) => {
    const rank = Math.floor(place), low = valueAt(rank)
    return rank === place ? low : low + (place - rank) * (valueAt(rank + 1) - low)
  })
}
