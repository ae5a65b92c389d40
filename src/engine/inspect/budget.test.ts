import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { answerBudget } from '#engine/inspect/answer-budget.ts'
import { summaryOf } from '#engine/numeric/summary.ts'

// JCGM 100:2008 H.1, end gauge: printed u 32 nm, 16.7 degrees of freedom taken as 16, U99 93 nm (fixtures/published/gum-h1-end-gauge.json).
describe('GUM H.1', () => {
  const ls = 50_000_623
  const parts = [
    { name: 'ls', value: ls, u: 25, dof: 18 }, { name: 'dbar', value: 215, sd: 13, n: 5, dof: 24 }, { name: 'd1', u: 3.9, dof: 5 }, { name: 'd2', u: 6.7, dof: 8 },
    { name: 'alphas', halfWidth: 2e-6, distribution: 'rectangular', sensitivity: 0 }, { name: 'theta', value: -0.1, u: 0.41, sensitivity: 0 },
    { name: 'dalpha', halfWidth: 1e-6, distribution: 'rectangular', sensitivity: -ls * -0.1, dof: 50 },
    { name: 'dtheta', halfWidth: 0.05, distribution: 'rectangular', sensitivity: -ls * 11.5e-6, dof: 2 },
  ]

  test('from the inputs', () => {
    const { u, dof, k, expandedU, unit } = answerBudget({ unit: 'nm', parts, coverage: 0.99 })
    expect(Math.abs(u - 31.66)).toBeLessThan(0.02)
    expect(Math.abs(dof! - 16.74)).toBeLessThan(0.02)
    expect(k).toBeCloseTo(2.92078, 5)
    expect(Math.abs(expandedU! - 92.5)).toBeLessThan(0.1)
    expect(unit).toBe('nm')
  })

  test('from the printed inputs, the parts of d already put together', () => {
    const printed = [{ name: 'ls', u: 25, dof: 18 }, { name: 'd', u: 9.7, dof: 25.6 }, { name: 'dalpha', u: 5.8e-7, sensitivity: 5_000_062.3, dof: 50 }, { name: 'dtheta', u: 0.029, sensitivity: -575.007, dof: 2 }]
    const { u, expandedU, contributions } = answerBudget({ parts: printed, coverage: 0.99 })
    expect(Math.abs(u - 31.71)).toBeLessThan(0.01)
    expect(Math.abs(expandedU! - 92.62)).toBeLessThan(0.01)
    expect(contributions.map((one) => Math.round(one.u * 10) / 10)).toEqual([25, 9.7, 2.9, 16.7])
  })

  // Second-order terms 11.9 and 1.7 nm; u then 34 nm printed, 33.91 recomputed from the printed inputs.
  test('expansion and temperature count at second order only', () => {
    const printed = [
      { name: 'ls', u: 25, dof: 18 }, { name: 'd', u: 9.7, dof: 25.6 }, { name: 'alphas', u: 1.2e-6, sensitivity: 0 }, { name: 'theta', u: 0.41, sensitivity: 0 },
      { name: 'dalpha', u: 5.8e-7, sensitivity: 5_000_062.3, dof: 50 }, { name: 'dtheta', u: 0.029, sensitivity: -575.007, dof: 2 },
    ]
    const { u, contributions } = answerBudget({ parts: printed, products: [{ of: ['dalpha', 'theta'], coefficient: ls }, { of: ['alphas', 'dtheta'], coefficient: ls }] })
    const of = (name: string) => contributions.find((one) => one.name === name)!.u
    expect(Math.abs(u - 33.91)).toBeLessThan(0.02)
    expect([of('alphas'), of('theta')]).toEqual([0, 0])
    expect(of('dalpha × theta')).toBeCloseTo(11.89, 2)
    expect(of('alphas × dtheta')).toBeCloseTo(1.74, 2)
  })

  // d = dbar + d1 + d2: 25.4472507774 in a public test suite.
  test('effective degrees of freedom of the difference', () => {
    const { u, dof } = answerBudget({ parts: [{ name: 'dbar', u: 5.8, dof: 24 }, { name: 'd1', u: 3.9, dof: 5 }, { name: 'd2', u: 6.7, dof: 8 }] })
    expect(u).toBeCloseTo(9.68194, 5)
    expect(dof).toBeCloseTo(25.4472507774, 9)
  })
})

// EA-4/02 supplement example S4: u 36.4 nm, U 73 nm at k 2; recomputed 8454 degrees of freedom (fixtures/published/ea-4-02-s4-gauge-block.json).
test('EA-4/02 S4, a product of two inputs around zero in it', () => {
  const { u, dof, k, expandedU } = answerBudget({
    unit: 'nm', coverage: 0.9545,
    parts: [
      { name: 'lS', u: 15 }, { name: 'dlD', halfWidth: 30, distribution: 'rectangular' }, { name: 'dl', sd: 12, n: 5 }, { name: 'dlC', halfWidth: 32, distribution: 'rectangular' },
      { name: 'dt', halfWidth: 0.05, distribution: 'rectangular', sensitivity: -575 }, { name: 'dlV', halfWidth: 6.7, distribution: 'rectangular', sensitivity: -1 },
      { name: 'dalpha', halfWidth: 2e-6, distribution: 'triangular', sensitivity: 0 }, { name: 'Dt', halfWidth: 0.5, distribution: 'rectangular', sensitivity: 0 },
    ],
    products: [{ of: ['dalpha', 'Dt'], coefficient: 50e6 }],
  })
  expect(u).toBeCloseTo(36.41, 1)
  expect(Math.abs(dof! - 8454)).toBeLessThan(30)
  expect(k).toBeCloseTo(2, 3)
  expect(Math.round(expandedU!)).toBe(73)
})

// JCGM 100:2008 H.2: R 127.732(71), X 219.847(295), Z 254.260(236); the printed 0.295 is 0.2956 from the data (see the file).
describe('GUM H.2', () => {
  const { data } = JSON.parse(readFileSync('fixtures/published/gum-h2-correlated.json', 'utf8')) as { data: [number, number, number][] }
  const columns = [0, 1, 2].map((k) => data.map((row) => row[k]!)), [volt, milliampere, phi] = columns.map((column) => summaryOf(column)) as [ReturnType<typeof summaryOf>, ReturnType<typeof summaryOf>, ReturnType<typeof summaryOf>]
  const summaries = [volt, milliampere, phi]
  const correlation = (i: number, j: number) =>
    columns[i]!.reduce((sum, value, row) => sum + (value - summaries[i]!.mean) * (columns[j]![row]! - summaries[j]!.mean), 0) / (4 * summaries[i]!.sd! * summaries[j]!.sd!)
  const correlations = [{ of: ['V', 'I'], r: correlation(0, 1) }, { of: ['V', 'phi'], r: correlation(0, 2) }, { of: ['I', 'phi'], r: correlation(1, 2) }]
  const I = milliampere.mean / 1000, Z = volt.mean / I, cos = Math.cos(phi.mean), sin = Math.sin(phi.mean)
  const partsWith = (sensitivities: readonly number[]) => ['V', 'I', 'phi'].map((name, k) => ({ name, sensitivity: sensitivities[k]!, u: (summaries[k]!.sd! / Math.sqrt(5)) / (k === 1 ? 1000 : 1) }))

  test('the correlations as printed', () => expect(correlations.map(({ r }) => Math.round(r * 100) / 100)).toEqual([-0.36, 0.86, -0.65]))

  test.each([
    ['R', [cos / I, (-Z * cos) / I, -Z * sin], 0.0710714],
    ['X', [sin / I, (-Z * sin) / I, Z * cos], 0.2955817],
    ['Z', [1 / I, -Z / I, 0], 0.2363361],
  ])('%s', (_, sensitivities, wanted) => {
    const { u, k, contributions, covariances } = answerBudget({ unit: 'ohm', parts: partsWith(sensitivities), correlations })
    expect(Math.abs(u - wanted)).toBeLessThan(1e-6)
    expect(k).toBeCloseTo(1.96, 3)
    expect([...contributions, ...covariances].reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12)
  })

  test('with finite degrees of freedom u is told and k asked for, or taken where it is given', () => {
    const parts = partsWith([1 / I, -Z / I, 0]).map((part) => ({ ...part, dof: 4 }))
    expect(answerBudget({ parts, correlations })).toMatchObject({ u: expect.closeTo(0.2363361, 6), dof: null, k: null, expandedU: null, findings: [{ code: 'coverage-factor-needed' }] })
    expect(answerBudget({ parts, correlations, k: 2 })).toMatchObject({ k: 2, expandedU: expect.closeTo(0.4726722, 6), findings: [] })
  })
})

describe('parts on their own', () => {
  // GUM 4.3.7, 4.3.9, F.2.2.1: a half-width over √3, √6, √2; a step q as q/√12, 0.29 of it.
  test.each([['rectangular', 0.5 / Math.sqrt(3)], ['triangular', 0.5 / Math.sqrt(6)], ['arcsine', 0.5 / Math.SQRT2]])('%s', (distribution, u) => {
    expect(answerBudget({ parts: [{ name: 'step', halfWidth: 0.5, distribution }] })).toMatchObject({ u: expect.closeTo(u, 15), dof: null, k: expect.closeTo(1.959964, 6) })
  })

  test('four readings scatter with three degrees of freedom unless said otherwise', () => {
    expect(answerBudget({ parts: [{ name: 'a', sd: 2, n: 4 }] })).toMatchObject({ u: 1, dof: expect.closeTo(3, 12), k: expect.closeTo(3.18245, 5) })
    expect(answerBudget({ parts: [{ name: 'a', sd: 2, n: 4, dof: 30 }] }).dof).toBeCloseTo(30, 12)
  })

  test('nothing uncertain is certain', () => expect(answerBudget({ parts: [{ name: 'a', u: 0 }] })).toMatchObject({ u: 0, dof: null, expandedU: 0, contributions: [{ share: 0 }] }))
})

const part = fc.record({ u: fc.double({ min: 0.01, max: 100, noNaN: true }), sensitivity: fc.integer({ min: -100, max: 100 }).map((n) => n / 10), dof: fc.option(fc.integer({ min: 1, max: 60 })) })
const partList = fc.array(part, { minLength: 2, maxLength: 6 }).map((parts) => parts.map((one, i) => ({ name: `p${i}`, ...one })))

describe('what must hold', () => {
  test('in another unit everything is scaled and nothing else changes', () => {
    fc.assert(fc.property(partList, fc.constantFrom(0.001, 25.4, 1000), (parts, factor) => {
      const plain = answerBudget({ parts }), scaled = answerBudget({ parts: parts.map((one) => ({ ...one, sensitivity: one.sensitivity * factor })) })
      expect(scaled.u / factor / plain.u || 1).toBeCloseTo(1, 12)
      expect(scaled.k! / plain.k!).toBeCloseTo(1, 9)
      plain.contributions.forEach(({ share }, i) => expect(scaled.contributions[i]!.share).toBeCloseTo(share, 12))
    }))
  })

  test('order does not matter, shares add up to one, and more parts never make it less', () => {
    fc.assert(fc.property(partList, (parts) => {
      const all = answerBudget({ parts }), turned = answerBudget({ parts: parts.toReversed() })
      expect(turned.u).toBeCloseTo(all.u, 10)
      if (all.u > 0) expect(all.contributions.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12)
      expect(answerBudget({ parts: parts.slice(1) }).u).toBeLessThanOrEqual(all.u * (1 + 1e-12))
    }))
  })

  test('equal parts: as many times the degrees of freedom; full correlation: the sum of both', () => {
    expect(answerBudget({ parts: [1, 2, 3, 4].map((i) => ({ name: `p${i}`, u: 2, dof: 10 })) })).toMatchObject({ u: 4, dof: expect.closeTo(40, 10), k: expect.closeTo(2.02108, 5) })
    const pair = [{ name: 'a', u: 3 }, { name: 'b', u: 4 }]
    expect(answerBudget({ parts: pair, correlations: [{ of: ['a', 'b'], r: 1 }] }).u).toBeCloseTo(7, 12)
    expect(answerBudget({ parts: pair, correlations: [{ of: ['a', 'b'], r: -1 }] }).u).toBeCloseTo(1, 12)
    expect(answerBudget({ parts: pair, correlations: [{ of: ['a', 'b'], r: 0 }] }).u).toBeCloseTo(5, 12)
  })
})

const two = [{ name: 'a', u: 1 }, { name: 'b', u: 1 }, { name: 'c', u: 1 }]

test.each([
  [{}, 'field-missing', 'parts'],
  [{ parts: [{ name: 'a' }] }, 'field-missing', 'parts[0].u'],
  [{ parts: [{ u: 1 }] }, 'field-missing', 'parts[0].name'],
  [{ parts: [{ name: 'a', halfWidth: 1 }] }, 'field-missing', 'parts[0].distribution'],
  [{ parts: [{ name: 'a', sd: 1, n: 1 }] }, 'field-missing', 'parts[0].dof'],
  [{ parts: [{ name: 'a', sd: 1, n: 2.5 }] }, 'not-a-number', 'parts[0].n'],
  [{ parts: [{ name: 'a', u: 'much' }] }, 'not-a-number', 'parts[0].u'],
  [{ parts: [{ name: 'a', halfWidth: 1, distribution: 'square' }] }, 'unknown-word', 'parts[0].distribution'],
  [{ parts: [] }, 'too-few-parts', 'parts'],
  [{ parts: [two[0], two[0]] }, 'part-named-twice', 'parts[1].name'],
  [{ parts: [{ name: 'a', u: -1 }] }, 'uncertainty-negative', 'parts[0].u'],
  [{ parts: [{ name: 'a', sd: 1, n: 0, dof: 5 }] }, 'size-not-positive', 'parts[0].n'],
  [{ parts: [{ name: 'a', u: 1, dof: 0 }] }, 'dof-too-small', 'parts[0].dof'],
  [{ parts: two, coverage: 1 }, 'coverage-out-of-range', 'coverage'],
  [{ parts: two, k: 0 }, 'size-not-positive', 'k'],
  [{ parts: two, products: [{ of: ['a', 'z'], coefficient: 1 }] }, 'unknown-part', 'products[0].of[1]'],
  [{ parts: two, products: [{ of: ['a'], coefficient: 1 }] }, 'field-missing', 'products[0].of'],
  [{ parts: two, correlations: [{ of: ['a', 'b'], r: 1.1 }] }, 'correlation-out-of-range', 'correlations[0].r'],
  [{ parts: two, correlations: [{ of: ['a', 'b'], r: 1 }, { of: ['b', 'c'], r: 1 }, { of: ['a', 'c'], r: -1 }] }, 'correlations-impossible', 'correlations'],
  [{ parts: two, correlations: [{ of: ['a', 'b'], r: 0.5 }, { of: ['b', 'a'], r: 0.5 }] }, 'correlations-impossible', 'correlations'],
  [{ parts: two, correlations: [{ of: ['a', 'a'], r: 1 }] }, 'correlations-impossible', 'correlations'],
])('%j is refused: %s', (raw, code, field) => {
  expect(() => answerBudget(raw)).toThrow(expect.objectContaining({ code, facts: expect.objectContaining({ field }) }))
})

test('of two ways to give a part the second is told as ignored', () => {
  expect(answerBudget({ parts: [{ name: 'a', halfWidth: 1, distribution: 'arcsine', u: 5 }] }).ignored).toEqual(['parts[0].u'])
})
