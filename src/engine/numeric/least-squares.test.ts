import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { leastSquares } from '#engine/numeric/least-squares.ts'
import { totalOf } from '#engine/numeric/total.ts'

type Linear = { data: { [column: string]: number[] }; certified: { parameters: { estimate: string; standardDeviation: string }[]; residualStandardDeviation: string } }

// NIST statistical reference datasets, linear regression: the set with six predictors, close to depending on one another.
describe('the many-predictor set', () => {
  const { data, certified } = JSON.parse(readFileSync('fixtures/published/nist-linear-longley.json', 'utf8')) as Linear
  const y = data.y!, columns = [y.map(() => 1), ...[1, 2, 3, 4, 5, 6].map((k) => data[`x${k}`]!)]
  const { coefficients, spread, residuals } = leastSquares(columns, y), sd = Math.sqrt(totalOf(residuals.map((r) => r * r)) / (y.length - 7))

  test.each(certified.parameters.map((parameter, k) => [k, parameter] as const))('coefficient %d', (k, { estimate, standardDeviation }) => {
    expect(Math.abs(coefficients[k]! / Number(estimate) - 1)).toBeLessThan(1e-12)
    expect(Math.abs((sd * Math.hypot(...spread[k]!)) / Number(standardDeviation) - 1)).toBeLessThan(1e-12)
  })

  test('scatter', () => expect(Math.abs(sd / Number(certified.residualStandardDeviation) - 1)).toBeLessThan(1e-13))
})

test('a column that follows from the others, or none left over, is refused', () => {
  for (const columns of [[[1, 1, 1], [2, 2, 2]], [[1, 2, 3], [2, 4, 6]], [[1, 2], [3, 4], [5, 6]], [[0, 0, 0]]]) {
    expect(() => leastSquares(columns, columns[0]!.map((_, i) => i))).toThrow('fit-not-determined')
  }
})

const size = fc.double({ min: -100, max: 100, noNaN: true })

test('what is left over stands square on every column', () => {
  fc.assert(fc.property(fc.array(fc.tuple(size, size, size), { minLength: 6, maxLength: 15 }), (rows) => {
    const columns = [rows.map(() => 1), rows.map(([a], i) => a + 3 * i), rows.map(([, b], i) => b + i * i)], y = rows.map(([, , c]) => c)
    const { residuals } = leastSquares(columns, y)
    for (const column of columns) expect(Math.abs(totalOf(residuals.map((r, i) => r * column[i]!)))).toBeLessThan(1e-8)
  }))
})
