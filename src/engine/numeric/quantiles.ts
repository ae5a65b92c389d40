import { firstAbove } from '#engine/numeric/sorted.ts'

export type Quantiles = { readonly ofValues: readonly number[]; readonly ofSizes: readonly number[] }

/** Bins for each sign. */
const bins = 2048

/**
 * Quantiles of many values, and of their sizes |value|, without putting them all in order: they are counted in bins alike on
 * both sides of 0, and only what lies in bins that are asked for is sorted. Between two values a quantile goes straight (0 is
 * the least, 1 the largest).
 *
 * @param values  at least one, all finite
 */
export function quantilesOf(values: Float64Array, shares: readonly number[], ofSizes: readonly number[] = []): Quantiles {
  let largest = 0
  for (let k = 0; k < values.length; k += 1) { const size = Math.abs(values[k]!); if (size > largest) largest = size }
  const perUnit = (bins - 0.5) / Math.max(largest, 1e-300)
  const counts = new Int32Array(2 * bins)
  for (let k = 0; k < values.length; k += 1) counts[binFor(values[k]!, perUnit)]! += 1
  const byValue = startsOf(counts), bySize = startsOf(counts.subarray(bins).map((count, bin) => count + counts[bins - 1 - bin]!))
  const valuePlaces = shares.map((share) => share * (values.length - 1)), sizePlaces = ofSizes.map((share) => share * (values.length - 1))
  const kept = new Map<number, Float64Array>()
  for (const bin of binsAt(byValue, valuePlaces)) kept.set(bin, new Float64Array(counts[bin]!))
  for (const bin of binsAt(bySize, sizePlaces)) for (const side of [bins + bin, bins - 1 - bin]) kept.set(side, new Float64Array(counts[side]!))
  fill(kept, values, perUnit)
  const sizesIn = (bin: number): Float64Array => sizesOf(kept.get(bins + bin)!, kept.get(bins - 1 - bin)!)
  return { ofValues: valuesAt(byValue, valuePlaces, (bin) => kept.get(bin)!), ofSizes: valuesAt(bySize, sizePlaces, sizesIn) }
}

/** Bins of negative values come before those of positive ones, the bin nearest to 0 in the middle. */
function binFor(value: number, perUnit: number): number {
  const bin = (Math.abs(value) * perUnit) | 0
  // −1 − bin where the value is negative, without a branch: the sign of a random value cannot be foreseen
  return bins + (bin ^ -Number(value < 0))
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

/** Puts the values that belong there into the bins kept, each bin in order. */
function fill(kept: ReadonlyMap<number, Float64Array>, values: Float64Array, perUnit: number): void {
  const wanted = new Uint8Array(2 * bins), filled = new Int32Array(2 * bins)
  for (const bin of kept.keys()) wanted[bin] = 1
  for (let k = 0; k < values.length; k += 1) {
    const bin = binFor(values[k]!, perUnit)
    if (wanted[bin] === 0) continue
    kept.get(bin)![filled[bin]!] = values[k]!
    filled[bin]! += 1
  }
  for (const list of kept.values()) list.sort()
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
