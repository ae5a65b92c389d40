import fc from 'fast-check'
import { expect, test } from 'vitest'
import { standingApart } from '#drafting/apart.ts'

test('stops that are kept stand apart, every other is too near to one of them, and the first come first', () => {
  expect([...standingApart([{ preferMm: 0, sizeMm: 4 }, { preferMm: 3, sizeMm: 4 }, { preferMm: 6, sizeMm: 4 }])]).toEqual([0, 2])
  expect([...standingApart([{ preferMm: 0, sizeMm: 4 }, { preferMm: 3, sizeMm: 4 }, { preferMm: 6, sizeMm: 4 }], [1])]).toEqual([1])
  const stop = fc.record({ preferMm: fc.integer({ min: 0, max: 100 }), sizeMm: fc.integer({ min: 1, max: 20 }) })
  fc.assert(fc.property(fc.array(stop, { maxLength: 20 }), (stops) => {
    const kept = standingApart(stops), near = (i: number, j: number): boolean => Math.abs(stops[i]!.preferMm - stops[j]!.preferMm) < (stops[i]!.sizeMm + stops[j]!.sizeMm) / 2 + 1.5
    for (const i of kept) for (const j of kept) if (i !== j) expect(near(i, j)).toBe(false)
    for (const i of stops.keys()) if (!kept.has(i)) expect([...kept].some((j) => near(i, j))).toBe(true)
  }), { seed: 17 })
})
