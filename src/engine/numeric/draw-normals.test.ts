import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { drawNormals } from '#engine/numeric/example-normals.ts'
import { drawUnit, drawWord, type Generator, generatorFrom } from '#engine/numeric/generator.ts'
import { normalBelow } from '#engine/numeric/normal.ts'
import { summaryOf } from '#engine/numeric/summary.ts'

const normalsOf = (seed: number, count: number): Float64Array => { const into = new Float64Array(count); drawNormals(generatorFrom(seed), into); return into }

describe('a million normal values', () => {
  const count = 1_000_000, values = normalsOf(1, count)

  // Moments of the standard normal distribution within five standard errors; elementary statistics.
  test('have the moments of the normal distribution', () => {
    const moment = (power: number) => values.reduce((sum, z) => sum + z ** power, 0) / count
    expect(Math.abs(moment(1))).toBeLessThan(5 * Math.sqrt(1 / count))
    expect(Math.abs(moment(2) - 1)).toBeLessThan(5 * Math.sqrt(2 / count))
    expect(Math.abs(moment(3))).toBeLessThan(5 * Math.sqrt(15 / count))
    expect(Math.abs(moment(4) - 3)).toBeLessThan(5 * Math.sqrt(96 / count))
  })

  // The largest distance from Φ times √n stays under 1.95 but in one case of a thousand.
  test('follow Φ everywhere', () => {
    const sorted = values.toSorted()
    let furthest = 0
    sorted.forEach((z, i) => { furthest = Math.max(furthest, Math.abs(normalBelow(z) - (i + 0.5) / count)) })
    expect(furthest * Math.sqrt(count)).toBeLessThan(1.95)
  })

  test('do not hang together', () => expect(Math.abs(summaryOf([...values.subarray(0, 100_000)]).lag1!)).toBeLessThan(5 / Math.sqrt(100_000)))
})

describe('twenty million normal values', () => {
  const count = 20_000_000, perUnit = 128, reach = 4, tails = [3.6541528853610088, 4, 4.5], bins = new Int32Array(2 * reach * perUnit), beyond = tails.map(() => 0)
  const generator = generatorFrom(2), some = new Float64Array(1_000_000)
  for (let done = 0; done < count; done += some.length) {
    drawNormals(generator, some)
    for (const z of some) {
      if (Math.abs(z) < reach) bins[Math.floor((z + reach) * perUnit)]! += 1
      if (Math.abs(z) > tails[0]!) tails.forEach((from, k) => { if (Math.abs(z) > from) beyond[k]! += 1 })
    }
  }

  // χ² over narrow bins, mean as many as there are and variance twice that: the ways to draw differ from layer to layer of the curve.
  test('fall into each narrow bin as often as they should', () => {
    const expectedIn = (bin: number) => count * (normalBelow((bin + 1) / perUnit - reach) - normalBelow(bin / perUnit - reach))
    const squares = bins.reduce((sum, found, bin) => sum + (found - expectedIn(bin)) ** 2 / expectedIn(bin), 0)
    expect(Math.abs(squares - bins.length)).toBeLessThan(5 * Math.sqrt(2 * bins.length))
  })

  test.each(tails.map((from, k) => [from, k] as const))('reach beyond %f as often as they should', (from, k) => {
    const expected = 2 * normalBelow(-from) * count
    expect(Math.abs(beyond[k]! - expected)).toBeLessThan(5 * Math.sqrt(expected))
  })
})

test('drawing in pieces or at once is the same', () => {
  const generator = generatorFrom(9), pieces = [1, 2, 997, 4000].map((count) => { const into = new Float64Array(count); drawNormals(generator, into); return [...into] })
  expect(pieces.flat()).toEqual([...normalsOf(9, 5000)])
})

// That the plain generator draws the published words is seen in its own test.
test.each([1, 9, 2 ** 32 - 1])('seed %i: what is left of the generator is the plain one, a word further for most values', (seed) => {
  const generator = generatorFrom(seed), plain = generatorFrom(seed), count = 10_000
  drawNormals(generator, new Float64Array(count))
  let words = 0
  for (; words < 2 * count && String(plain) !== String(generator); words += 1) drawWord(plain)
  expect(words / count).toBeGreaterThan(1)
  expect(words / count).toBeLessThan(1.1)
})

test('nothing is used that differs from machine to machine', () => {
  for (const file of ['src/engine/numeric/generator.ts', ...readdirSync('kernel').filter((name) => name.endsWith('.ts')).map((name) => `kernel/${name}`)]) {
    const used = [...readFileSync(file, 'utf8').matchAll(/Math\w*\.(\w+)|relaxed\w*/g)].map(([all, one]) => one ?? all)
    const exact = new Set(['imul'])
    expect(used.filter((one) => !exact.has(one)), file).toEqual([])
  }
})

/** Half-width of the symmetric interval that holds 95 % of the values. */
const halfWidth95 = (values: Float64Array): number => values.map(Math.abs).sort()[Math.round(0.95 * values.length) - 1]!

// JCGM 101:2008 9.2 (copy and exact figures in fixtures/published/jcgm101-additive.json).
describe('four inputs added', () => {
  const count = 1_000_000
  const { cases } = JSON.parse(readFileSync('fixtures/published/jcgm101-additive.json', 'utf8')) as { cases: { clause: string; exact: { u: number; halfWidth: number } }[] }
  const exact = (clause: string) => cases.find((one) => one.clause === clause)!.exact
  const rectangular = (generator: Generator, sd: number): number => Math.sqrt(3) * sd * (2 * drawUnit(generator) - 1)

  test.each([
    ['9.2.2', 0.015, () => { const z = normalsOf(3, 4 * count); return Float64Array.from({ length: count }, (_, i) => z[4 * i]! + z[4 * i + 1]! + z[4 * i + 2]! + z[4 * i + 3]!) }],
    ['9.2.3', 0.01, () => { const g = generatorFrom(4); return Float64Array.from({ length: count }, () => rectangular(g, 1) + rectangular(g, 1) + rectangular(g, 1) + rectangular(g, 1)) }],
    ['9.2.4', 0.03, () => { const g = generatorFrom(5); return Float64Array.from({ length: count }, () => rectangular(g, 1) + rectangular(g, 1) + rectangular(g, 1) + rectangular(g, 10)) }],
  ] as const)('clause %s', (clause, tolerance, draw) => {
    const values = draw(), { u, halfWidth } = exact(clause)
    expect(Math.abs(halfWidth95(values) - halfWidth)).toBeLessThan(tolerance)
    expect(Math.abs(Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / count) / u - 1)).toBeLessThan(0.004)
  })
})
