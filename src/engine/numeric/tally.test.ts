import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { putBack, takeKernel } from '#engine/kernel/kernel.ts'
import { KernelLists } from '#engine/kernel/lists.ts'
import { summaryOf } from '#engine/numeric/summary.ts'
import { bytesForTally, type Quantiles, Tally } from '#engine/numeric/tally.ts'

/** A tally of values that came in pieces of so many. */
function withTally<Told>(values: readonly number[], piece: number, ask: (tally: Tally) => Told): Told {
  const kernel = takeKernel(bytesForTally(values.length)), tally = new Tally(new KernelLists(kernel), values.length)
  for (let done = 0; done < values.length; done += piece) {
    const part = values.slice(done, done + piece)
    tally.values.set(part, done)
    tally.countTo(done + part.length)
  }
  const told = ask(tally)
  putBack(kernel)
  return told
}
const quantilesOf = (values: readonly number[], shares: readonly number[], ofSizes: readonly number[], piece = 256): Quantiles => withTally(values, piece, (tally) => tally.quantiles(shares, ofSizes))

test('one value far from all others leaves the quantiles of the rest as they are', () => {
  // By hand: −n … n and one far away; in order, share k / (count − 1) is the value k places from the least.
  const n = 100_000, values = Array.from({ length: 2 * n + 2 }, (_, k) => (k > 2 * n ? 1e12 : k - n)), last = values.length - 1
  for (const piece of [256, values.length]) {
    const { ofValues, ofSizes } = quantilesOf(values, [0, n / last, (n + 10) / last, 1], [0, 2 / last, (2 * n) / last, 1], piece)
    expect(ofValues).toEqual([-n, 0, 10, 1e12])
    expect(ofSizes).toEqual([0, 1, n, 1e12])
  }
})

describe('of any values, in any pieces', () => {
  const anyValues = fc.array(fc.double({ min: -1e3, max: 1e3, noNaN: true }), { minLength: 1, maxLength: 200 }), anyPiece = fc.integer({ min: 1, max: 14 })

  test('quantiles are those of the sorted list', () => {
    fc.assert(fc.property(anyValues, anyPiece, fc.double({ min: 0, max: 1, noNaN: true }), (list, piece, share) => {
      const at = (sorted: readonly number[]) => { const place = share * (sorted.length - 1), k = Math.floor(place); return sorted[k]! + (place - k) * ((sorted[k + 1] ?? 0) - sorted[k]! || 0) }
      const { ofValues, ofSizes } = quantilesOf(list, [share], [share], piece)
      expect(ofValues[0]).toBeCloseTo(at(list.toSorted((a, b) => a - b)), 9)
      expect(ofSizes[0]).toBeCloseTo(at(list.map(Math.abs).sort((a, b) => a - b)), 9)
    }))
  })

  test('mean, standard deviation and how many are within are those of the list', () => {
    fc.assert(fc.property(anyValues, anyPiece, fc.double({ min: -1e3, max: 1e3, noNaN: true }), (list, piece, largest) => {
      const { mean, sd } = withTally(list, piece, (tally) => tally.moments()), summary = summaryOf(list)
      expect(mean).toBeCloseTo(summary.mean, 9)
      expect(sd).toBeCloseTo(summary.sd ?? 0, 9)
      expect(withTally(list, piece, (tally) => tally.countWithin(largest))).toBe(list.filter((value) => value <= largest).length)
    }))
  })

  test('one that is just as large as the limit is within', () => {
    for (const list of [[1, 2, 3], [1, 2, 3, 4], [2], [3, 2]]) expect(withTally(list, 2, (tally) => tally.countWithin(2))).toBe(list.filter((value) => value <= 2).length)
  })

  test('far from 0 the standard deviation loses nothing', () => {
    const { mean, sd } = withTally([1e9 + 1, 1e9 + 2, 1e9 + 3], 2, (tally) => tally.moments())
    expect([mean, sd]).toEqual([1e9 + 2, 1])
  })
})
