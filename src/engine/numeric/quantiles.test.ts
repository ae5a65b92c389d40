import { expect, test } from 'vitest'
import { quantilesOf } from '#engine/numeric/quantiles.ts'

test('one value far from all others leaves the quantiles of the rest as they are', () => {
  // By hand: −n … n and one far away; in order, share k / (count − 1) is the value k places from the least.
  const n = 100_000, values = Float64Array.from({ length: 2 * n + 2 }, (_, k) => (k > 2 * n ? 1e12 : k - n))
  const last = values.length - 1
  const { ofValues, ofSizes } = quantilesOf(values, [0, n / last, (n + 10) / last, 1], [0, 2 / last, (2 * n) / last, 1])
  expect(ofValues).toEqual([-n, 0, 10, 1e12])
  expect(ofSizes).toEqual([0, 1, n, 1e12])
})
