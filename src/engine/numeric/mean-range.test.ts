import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { drawNormals } from '#engine/numeric/example-normals.ts'
import { generatorFrom } from '#engine/numeric/generator.ts'
import { meanRangeOf } from '#engine/numeric/mean-range.ts'

// Printed tables of the mean range with 3 decimals, and the same by quadrature with 10 digits (head of the file). The printed
// d2 of 10 readings, 3.078, is 3.0775 rounded up.
const rows = readFileSync('fixtures/published/range-constants.csv', 'utf8').split('\n').filter((line) => /^\d/.test(line)).map((line) => line.split(',').map(Number))

test.each(rows)('of %d readings', (n, printed, exact) => {
  expect(meanRangeOf(n!)).toBeCloseTo(exact!, 8)
  expect(Math.abs(meanRangeOf(n!) - printed!)).toBeLessThan(0.00051)
})

test('two readings: 2/√π; one: 0', () => {
  expect(meanRangeOf(2)).toBeCloseTo(2 / Math.sqrt(Math.PI), 13)
  expect(meanRangeOf(1)).toBeCloseTo(0, 15)
})

// A perfect bar read at n places: the mean within 1 %, the spread d3 within 3 %.
test.each(rows.filter(([n]) => [3, 5, 10, 20].includes(n!)))('a perfect bar simulated, %d readings', (n, _printed, d2, d3) => {
  const trials = 100_000, values = new Float64Array(trials * n!)
  drawNormals(generatorFrom(n!), values)
  let sum = 0, squares = 0
  for (let i = 0; i < trials; i += 1) {
    const part = values.subarray(i * n!, (i + 1) * n!), range = Math.max(...part) - Math.min(...part)
    sum += range; squares += range * range
  }
  const mean = sum / trials
  expect(Math.abs(mean / d2! - 1)).toBeLessThan(0.01)
  expect(Math.abs(Math.sqrt(squares / trials - mean * mean) / d3! - 1)).toBeLessThan(0.03)
})
