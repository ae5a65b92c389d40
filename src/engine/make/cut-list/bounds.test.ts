import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { CutProblem } from '#engine/make/cut-list/cut-problem.ts'
import { type Cover, leastCover } from '#engine/make/cut-list/least-cover.ts'
import { boundFrom, worthsOf } from '#engine/make/cut-list/safe-bound.ts'
import { stockMixes } from '#engine/make/cut-list/stock-mixes.ts'

const covers = fc.array(fc.record({ cost: fc.integer({ min: 1, max: 9 }), most: fc.integer({ min: 0, max: 3 }), worth: fc.integer({ min: 0, max: 12 }) }), { minLength: 1, maxLength: 3 })

/** Every choice of how many, with what it costs and is worth. */
function choices(list: readonly Cover[]): { readonly cost: number; readonly worth: number }[] {
  return list.reduce((all, { cost, most, worth }) => all.flatMap((one) => Array.from({ length: most + 1 }, (_, times) => ({ cost: one.cost + times * cost, worth: one.worth + times * worth }))), [{ cost: 0, worth: 0 }])
}

describe('the least cost of stock that is worth enough', () => {
  test('is that of trying every choice', () => {
    fc.assert(fc.property(covers, fc.integer({ min: 0, max: 60 }), fc.integer({ min: -1, max: 20 }), (list, needed, above) => {
      const costs = choices(list).filter(({ cost, worth }) => worth >= needed && cost > above).map(({ cost }) => cost)
      expect(leastCover(list, needed, above)).toBe(Math.min(Infinity, ...costs))
    }))
  })

  test('the mixes of one cost are all there are', () => {
    fc.assert(fc.property(covers, fc.integer({ min: 1, max: 30 }), fc.integer({ min: 0, max: 40 }), (list, cost, needed) => {
      const mixes = [...stockMixes(list, cost, needed)]
      expect(mixes.length).toBe(choices(list).filter((one) => one.cost === cost && one.worth >= needed).length)
      for (const counts of mixes) expect(counts.reduce((sum, times, k) => sum + times * list[k]!.cost, 0)).toBe(cost)
    }))
  })
})

describe('the bound', () => {
  test('holds however wrong the duals are', () => {
    // 9 pieces of 4 and 3 of 3 in lengths of 10: two of 4 to a length at most, so 5 lengths (worked by hand: 4 lengths hold 8 pieces of 4).
    const problem: CutProblem = { kinds: [{ size: 4, count: 9 }, { size: 3, count: 3 }], stocks: [{ capacity: 10, cost: 1, most: Infinity, takes: null }] }
    fc.assert(fc.property(fc.float({ min: -1, max: 5, noNaN: true }), fc.float({ min: -1, max: 5, noNaN: true }), (a, b) => {
      expect(boundFrom(problem, worthsOf(problem, [a, b]))).toBeLessThanOrEqual(5)
    }))
    expect(boundFrom(problem, worthsOf(problem, [0.5, 0]))).toBe(5)
  })

  test('is endless where the stock there is cannot be enough', () => {
    const problem: CutProblem = { kinds: [{ size: 16, count: 3 }], stocks: [{ capacity: 30, cost: 30, most: 2, takes: null }] }
    expect(boundFrom(problem, worthsOf(problem, [1]))).toBe(Infinity)
  })
})
