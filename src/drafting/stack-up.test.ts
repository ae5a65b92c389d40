import fc from 'fast-check'
import { expect, test } from 'vitest'
import { stackedUp } from '#drafting/stack-up.ts'

test('stands where it is wished while there is room, and makes room otherwise', () => {
  expect(stackedUp([{ preferMm: 20, sizeMm: 10 }, { preferMm: 60, sizeMm: 10 }], 0, 100)).toEqual([20, 60])
  expect(stackedUp([{ preferMm: 20, sizeMm: 10 }, { preferMm: 22, sizeMm: 10 }], 0, 100, 1)).toEqual([20, 31])
  expect(stackedUp([{ preferMm: 95, sizeMm: 10 }, { preferMm: 98, sizeMm: 10 }], 0, 100, 1)).toEqual([84, 95])
})

test('never lets two stops overlap, and keeps them inside where they fit', () => {
  const stop = fc.record({ preferMm: fc.integer({ min: -50, max: 250 }), sizeMm: fc.integer({ min: 1, max: 30 }) })
  fc.assert(fc.property(fc.array(stop, { maxLength: 8 }), (stops) => {
    const middles = stackedUp(stops, 0, 250, 1)
    middles.forEach((middle, i) => {
      if (i > 0) expect(middle - stops[i]!.sizeMm / 2 - (middles[i - 1]! + stops[i - 1]!.sizeMm / 2)).toBeGreaterThanOrEqual(1 - 1e-9)
      expect(middle + stops[i]!.sizeMm / 2).toBeLessThanOrEqual(250 + 1e-9)
      expect(middle - stops[i]!.sizeMm / 2).toBeGreaterThanOrEqual(-1e-9)
    })
  }), { seed: 1 })
})
