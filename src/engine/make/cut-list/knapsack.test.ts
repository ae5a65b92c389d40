import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bestLoad, type Packable, restOf } from '#engine/make/cut-list/knapsack.ts'
import { quickLoads } from '#engine/make/cut-list/quick-loads.ts'

const packables = fc.array(fc.record({ size: fc.integer({ min: 1, max: 12 }), value: fc.integer({ min: 1, max: 30 }), count: fc.integer({ min: 1, max: 3 }) }), { minLength: 1, maxLength: 5 })
  .map((list) => list.map((one, kind): Packable => ({ ...one, kind })))

/** Every choice, one after another. */
function plainBest(list: readonly Packable[], capacity: number): number {
  const [first, ...others] = list
  if (first === undefined) return 0
  let best = 0
  for (let times = 0; times <= first.count && times * first.size <= capacity; times += 1) best = Math.max(best, times * first.value + plainBest(others, capacity - times * first.size))
  return best
}

describe('the most valuable load', () => {
  test('is that of trying every choice', () => {
    fc.assert(fc.property(packables, fc.integer({ min: 0, max: 40 }), (list, capacity) => {
      const load = bestLoad(list, capacity, 0, 0), best = plainBest(list, capacity)
      expect(load?.value ?? 0).toBe(best)
      expect(load?.atMost ?? 0).toBe(best)
      if (load) expect(load.kinds.reduce((sum, kind, k) => sum + list[kind]!.size * load.counts[k]!, 0)).toBeLessThanOrEqual(capacity)
    }))
  })

  test('is not looked for where it is worth no more than asked', () => {
    fc.assert(fc.property(packables, fc.integer({ min: 1, max: 40 }), fc.integer({ min: 0, max: 80 }), (list, capacity, above) => {
      const best = plainBest(list, capacity)
      expect(bestLoad(list, capacity, above, 0)?.value ?? null).toBe(best > above ? best : null)
    }))
  })

  test('broken off, it still says more than which no load is worth', () => {
    fc.assert(fc.property(packables, fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 10 }), (list, capacity, most) => {
      expect(bestLoad(list, capacity, 0, 0, most)?.atMost ?? 0).toBeGreaterThanOrEqual(plainBest(list, capacity))
    }))
  })

  test('what is to come is never told too low', () => {
    fc.assert(fc.property(packables, fc.integer({ min: 0, max: 40 }), (list, capacity) => {
      const order = list.toSorted((a, b) => b.value / b.size - a.value / a.size)
      expect(restOf(order)(0, capacity)).toBeGreaterThanOrEqual(plainBest(list, capacity))
    }))
  })

  test('quick ones fit, are worth what they say, and never more than the best', () => {
    fc.assert(fc.property(packables, fc.integer({ min: 1, max: 40 }), (list, capacity) => {
      for (const { value, kinds, counts } of quickLoads(list, capacity, 0, 9)) {
        expect(kinds.reduce((sum, kind, k) => sum + list[kind]!.size * counts[k]!, 0)).toBeLessThanOrEqual(capacity)
        expect(kinds.every((kind, k) => counts[k]! <= list[kind]!.count)).toBe(true)
        expect(value).toBe(kinds.reduce((sum, kind, k) => sum + list[kind]!.value * counts[k]!, 0))
        expect(value).toBeLessThanOrEqual(plainBest(list, capacity))
      }
    }))
  })
})
