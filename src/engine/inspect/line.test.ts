import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { answerLine } from '#engine/inspect/answer-line.ts'
import { lineOf } from '#engine/inspect/line.ts'

type Linear = {
  dataset: string
  data: { x: number[]; y: number[] }
  certified: { parameters: { estimate: string; standardDeviation: string }[]; residualStandardDeviation?: string; residualSumOfSquares?: string; rSquared?: string }
}
const folder = 'fixtures/published'
const read = (name: string): Linear => JSON.parse(readFileSync(`${folder}/${name}`, 'utf8'))
const sets = readdirSync(folder).filter((name) => name.startsWith('nist-linear-')).map(read).filter(({ data }) => 'x' in data)
const set = (name: string): Linear => sets.find(({ dataset }) => dataset === name)!

/** Within a part of the certified value; of 0 (an exact fit), within the rounding of readings of this size. */
const expectNear = (given: number, certified: string, part: number, size = 1): void => {
  const wanted = Number(certified)
  expect(Math.abs(given - wanted), `${given} beside ${certified}`).toBeLessThanOrEqual(wanted === 0 ? 1e-12 * size : part * Math.abs(wanted))
}

// NIST statistical reference datasets, linear regression: certified values in each file. Wampler2 has decimals that no double
// holds, which costs two of its digits.
describe('certified lines and polynomials', () => {
  test('are all there', () => expect(sets.map(({ dataset }) => dataset).toSorted()).toEqual(['NoInt1', 'NoInt2', 'Norris', 'Pontius', 'Wampler1', 'Wampler2', 'Wampler3', 'Wampler4', 'Wampler5']))

  test.each(sets)('$dataset', ({ dataset, data, certified }) => {
    const intercept = !dataset.startsWith('NoInt'), degree = certified.parameters.length - (intercept ? 1 : 0), size = Math.max(...data.y.map(Math.abs))
    const answer = answerLine({ x: data.x, y: data.y, degree, intercept })
    certified.parameters.forEach(({ estimate, standardDeviation }, k) => {
      expectNear(answer.coefficients[k]!, estimate, dataset === 'Wampler2' ? 1e-12 : 5e-13)
      expectNear(answer.standardErrors![k]!, standardDeviation, 1e-13, size)
    })
    if (certified.residualStandardDeviation !== undefined) expectNear(answer.residualSd, certified.residualStandardDeviation, 1e-13, size)
    if (certified.residualSumOfSquares !== undefined) expectNear(answer.residualSumOfSquares, certified.residualSumOfSquares, 1e-13)
    if (certified.rSquared !== undefined) expectNear(answer.rSquared!, certified.rSquared, 1e-13)
    expect(answer.dof).toBe(data.y.length - certified.parameters.length)
  })
})

// Not certified: as a public test suite has it, to the ten digits it is right to, and in exact fractions from the data.
test('covariance of the two coefficients of Norris', () => {
  const { data } = set('Norris'), covariance = answerLine(data).covariance![0]![1]!
  expectNear(covariance, '-7.74327536339570e-5', 1e-10)
  expectNear(covariance, '-7.743275363156437e-5', 1e-12)
})

// JCGM 100:2008 H.3: published figures rounded, recomputed ones beside them (see the file).
describe('GUM H.3', () => {
  const { tDegC, bDegC } = JSON.parse(readFileSync(`${folder}/gum-h3-line-fit.json`, 'utf8')) as { tDegC: number[]; bDegC: number[] }
  const { coefficients, standardErrors, covariance, residualSd, dof, at: [far] } = answerLine({ x: tDegC.map((t) => t - 20), y: bDegC, at: [10] })

  test('intercept, slope and their scatter', () => {
    expect(coefficients[0]).toBeCloseTo(-0.17120379013135, 13)
    expect(coefficients[1]).toBeCloseTo(0.00218269773988729, 15)
    expect(standardErrors![0]).toBeCloseTo(0.0028776, 7)
    expect(standardErrors![1]).toBeCloseTo(0.000667938773227832, 15)
    expect(covariance![0]![1]! / standardErrors![0]! / standardErrors![1]!).toBeCloseTo(-0.930429603, 9)
    expect(residualSd).toBeCloseTo(0.003497563963505, 14)
    expect(dof).toBe(9)
  })

  test('at 30 °C −0.1494 with 0.0041; without the covariance it would be 0.0073', () => {
    expect(far!.y).toBeCloseTo(-0.149376812732, 12)
    expect(far!.u).toBeCloseTo(0.004138595753, 12)
    expect(Math.hypot(standardErrors![0]!, 10 * standardErrors![1]!)).toBeCloseTo(0.0073, 4)
  })
})

const place = fc.integer({ min: 0, max: 400 }).map((n) => n / 2)
const readings = fc.uniqueArray(place, { minLength: 5, maxLength: 12 }).chain((x) => fc.record({ x: fc.constant(x), y: fc.array(fc.integer({ min: -200, max: 200 }).map((n) => n / 10), { minLength: x.length, maxLength: x.length }) }))

describe('what must not matter', () => {
  test('stations counted from elsewhere leave slope, bow and scatter', () => {
    fc.assert(fc.property(readings, fc.integer({ min: -1e6, max: 1e6 }), fc.integer({ min: 1, max: 2 }), ({ x, y }, offset, degree) => {
      const plain = lineOf({ x, y, degree, intercept: true, at: [50] }), moved = lineOf({ x: x.map((one) => one + offset), y, degree, intercept: true, at: [50 + offset] })
      expect(moved.coefficients[degree]!).toBeCloseTo(plain.coefficients[degree]!, 10)
      expect(moved.residualSd).toBeCloseTo(plain.residualSd, 8)
      expect(moved.at[0]!.y).toBeCloseTo(plain.at[0]!.y, 8)
      expect(moved.at[0]!.u!).toBeCloseTo(plain.at[0]!.u!, 8)
    }))
  })

  test('order, and a common height', () => {
    fc.assert(fc.property(readings, fc.integer({ min: -1e6, max: 1e6 }), ({ x, y }, height) => {
      const plain = lineOf({ x, y, degree: 1, intercept: true, at: [] }), other = lineOf({ x: x.toReversed(), y: y.toReversed().map((one) => one + height), degree: 1, intercept: true, at: [] })
      expect(other.coefficients[1]!).toBeCloseTo(plain.coefficients[1]!, 9)
      expect(other.coefficients[0]!).toBeCloseTo(plain.coefficients[0]! + height, 7)
      expect(other.residualSd).toBeCloseTo(plain.residualSd, 7)
    }))
  })

  test('a polynomial comes back from its own points', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 6 }), (coefficients) => {
      const x = [-3, -2, -1, 0, 1, 2, 4, 5], y = x.map((one) => coefficients.reduceRight((sum, c) => sum * one + c, 0))
      const answer = lineOf({ x, y, degree: coefficients.length - 1, intercept: true, at: [6] })
      coefficients.forEach((c, k) => expect(answer.coefficients[k]!).toBeCloseTo(c, 9))
      expect(answer.at[0]!.y).toBeCloseTo(coefficients.reduceRight((sum, c) => sum * 6 + c, 0), 6)
    }))
  })
})

// NIST Norris with stations counted from a million further on: the slope to 1e-6 and better.
test('a large common offset costs no digits of the slope', () => {
  const { data, certified } = set('Norris')
  expectNear(answerLine({ x: data.x.map((one) => one + 1e6), y: data.y }).coefficients[1]!, certified.parameters[1]!.estimate, 1e-10)
})

test('two points leave nothing to judge the line by', () => {
  expect(answerLine({ x: [10, 140], y: [1, 4] })).toMatchObject({ coefficients: [expect.closeTo(1 - 30 / 130, 12), expect.closeTo(3 / 130, 14)], standardErrors: null, covariance: null, residualSd: 0, dof: 0 })
})

test.each([
  [{ y: [1] }, 'field-missing', 'x'],
  [{ x: [1, 'two'], y: [1, 2] }, 'not-a-number', 'x[1]'],
  [{ x: [1, 2], y: [1, Infinity] }, 'not-a-number', 'y[1]'],
  [{ x: [1, 2], y: [1, 1e308] }, 'too-large', 'y[1]'],
  [{ x: [1, 2, 3], y: [1, 2] }, 'readings-do-not-match-stations', 'y'],
  [{ x: [1], y: [1] }, 'too-few-readings', 'x'],
  [{ x: [1, 1, 1], y: [1, 2, 3] }, 'stations-coincide', 'x'],
  [{ x: [0, 0], y: [1, 2], intercept: false }, 'stations-coincide', 'x'],
  [{ x: [1, 2, 3], y: [1, 2, 3], degree: 11 }, 'degree-out-of-range', 'degree'],
  [{ x: [1, 2, 3], y: [1, 2, 3], degree: 0, intercept: false }, 'degree-out-of-range', 'degree'],
  [{ x: [1, 2, 3], y: [1, 2, 3], degree: 1.5 }, 'not-a-number', 'degree'],
])('%j is refused: %s', (raw, code, field) => {
  expect(() => answerLine(raw)).toThrow(expect.objectContaining({ code, facts: expect.objectContaining({ field }) }))
})
