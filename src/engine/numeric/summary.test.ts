import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { summaryOf } from '#engine/numeric/summary.ts'
import { totalOf } from '#engine/numeric/total.ts'

type Univariate = { dataset: string; data: number[]; certified: { mean: string; standardDeviation: string; autocorrelationLag1: string } }

const folder = 'fixtures/published'
const sets = readdirSync(folder).filter((name) => name.startsWith('nist-univariate-')).map((name) => JSON.parse(readFileSync(`${folder}/${name}`, 'utf8')) as Univariate)

/** How near double precision comes: the larger the offset against the scatter, the less is left of it in the stored data. */
const tolerances: { readonly [set: string]: number } = { Lew: 1e-12, Lottery: 1e-12, Mavro: 1e-11, Michelso: 1e-11, NumAcc1: 1e-14, NumAcc2: 1e-12, NumAcc3: 1e-8, NumAcc4: 1e-7 }

// NIST statistical reference datasets, univariate: certified values in each file.
describe('certified summary statistics', () => {
  test('are all there', () => expect(sets.map((set) => set.dataset).toSorted()).toEqual(Object.keys(tolerances).toSorted()))

  test.each(sets)('$dataset', ({ dataset, data, certified }) => {
    const { count, mean, sd, lag1 } = summaryOf(data), near = (value: number | null, wanted: string) => Math.abs(value! / Number(wanted) - 1)
    expect(count).toBe(data.length)
    expect(near(mean, certified.mean)).toBeLessThan(1e-15)
    expect(near(sd, certified.standardDeviation)).toBeLessThanOrEqual(tolerances[dataset]!)
    expect(near(lag1, certified.autocorrelationLag1)).toBeLessThanOrEqual(tolerances[dataset]!)
  })
})

test('one value has no scatter, equal values no autocorrelation', () => {
  expect(summaryOf([5])).toEqual({ count: 1, mean: 5, sd: null, lag1: null })
  expect(summaryOf([5, 5, 5])).toEqual({ count: 3, mean: 5, sd: 0, lag1: null })
})

// JCGM 100:2008 H.5: means of ten days of five readings; printed 10.000 097 V, 57 µV, and F from the unrounded deviations 2.26.
test('between and within the days of GUM H.5', () => {
  const { dayMean, daySdUV } = JSON.parse(readFileSync(`${folder}/gum-h5-anova.json`, 'utf8')) as { dayMean: number[]; daySdUV: number[] }
  const days = summaryOf(dayMean), withinUV = Math.sqrt(daySdUV.reduce((sum, sd) => sum + sd * sd, 0) / daySdUV.length)
  expect(days.mean).toBeCloseTo(10.0000971, 9)
  expect(days.sd! * 1e6).toBeCloseTo(57.0895, 4)
  expect((5 * (days.sd! * 1e6) ** 2) / withinUV ** 2).toBeCloseTo(2.26152, 5)
})

test('a sum loses nothing to a large value that comes and goes', () => {
  expect(totalOf([1, 1e100, 1, -1e100])).toBe(2)
  expect(totalOf([])).toBe(0)
})

test('a common offset moves the mean and nothing else; a factor scales both', () => {
  fc.assert(fc.property(fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 40 }), fc.integer({ min: -1e7, max: 1e7 }), fc.integer({ min: 1, max: 50 }), (values, offset, factor) => {
    const plain = summaryOf(values), moved = summaryOf(values.map((value) => value * factor + offset))
    expect(moved.mean).toBeCloseTo(plain.mean * factor + offset, 6)
    expect(moved.sd!).toBeCloseTo(plain.sd! * factor, 6)
  }))
})
