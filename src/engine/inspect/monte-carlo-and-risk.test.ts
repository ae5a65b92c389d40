// JCGM 101:2008 9.5 and JCGM 106:2012 9.5.4: inputs and figures in fixtures/published, which name their sources.
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { budgetOf } from '#engine/inspect/budget.ts'
import { drawNormals } from '#engine/numeric/example-normals.ts'
import { drawUnit, generatorFrom } from '#engine/numeric/generator.ts'
import { normalBelow } from '#engine/numeric/normal.ts'
import { meanOf, totalOf } from '#engine/numeric/total.ts'

const published = (name: string): unknown => JSON.parse(readFileSync(`fixtures/published/${name}.json`, 'utf8'))

describe('JCGM 101 9.5, a gauge block: t, rectangular, arcsine and curvilinear trapezoid drawn with our own generator', () => {
  const { lnomNm, recomputed: { mcm2e7Draws: known } } = published('jcgm101-gauge-block') as { lnomNm: number; recomputed: { mcm2e7Draws: { mean: number; u: number; shortest99: [number, number] } } }
  const count = 300_000, generator = generatorFrom(9), unit = (): number => drawUnit(generator)
  const normals = (): Float64Array => { const into = new Float64Array(count); drawNormals(generator, into); return into }
  /** t = z / √(χ²/ν), χ² the sum of ν squares. */
  const student = (mean: number, scale: number, dof: number): Float64Array => {
    const squares = new Float64Array(count)
    for (let i = 0; i < dof; i += 1) normals().forEach((z, at) => { squares[at]! += z * z })
    return normals().map((z, at) => mean + (scale * z) / Math.sqrt(squares[at]! / dof))
  }
  const trapezoid = (a: number, b: number, d: number): number => { const lower = a - d + 2 * d * unit(), upper = a + b - lower; return lower + (upper - lower) * unit() }
  const ls = student(50_000_623, 25, 18), difference = student(215, 6, 24), d1 = student(0, 4, 5), d2 = student(0, 7, 8), warm = normals()
  const values = ls.map((length, at) => {
    const expansion = 9.5e-6 + 4e-6 * unit(), offset = -0.1 + 0.2 * warm[at]! + 0.5 * Math.sin(2 * Math.PI * unit())
    return length + difference[at]! + d1[at]! + d2[at]! - length * (trapezoid(-1e-6, 1e-6, 1e-7) * offset + expansion * trapezoid(-0.05, 0.05, 0.025)) - lnomNm
  }).sort()

  test('mean, standard uncertainty and shortest 99 % interval', () => {
    const mean = meanOf([...values]), sd = Math.sqrt(totalOf([...values].map((value) => (value - mean) ** 2)) / (count - 1))
    expect(Math.abs(mean - known.mean)).toBeLessThan(0.25)
    expect(Math.abs(sd - known.u)).toBeLessThan(0.25)
    const inside = Math.round(0.99 * count)
    let at = 0
    for (let from = 0; from + inside < count; from += 1) if (values[from + inside]! - values[from]! < values[at + inside]! - values[at]!) at = from
    expect(Math.abs(values[at]! - known.shortest99[0])).toBeLessThan(2)
    expect(Math.abs(values[at + inside]! - known.shortest99[1])).toBeLessThan(2)
  })

  test('the budget of first order gives the smaller figure that the clause contrasts it with', () => {
    // Table 10 as standard uncertainties; sensitivities at the estimates, −Ls·as = −575 nm/°C and −Ls·θ = 5 000 062 nm·°C.
    const part = (name: string, u: number, sensitivity = 1) => ({ name, sensitivity, dof: null, spread: { kind: 'u' as const, u } })
    const t = (scale: number, dof: number): number => scale * Math.sqrt(dof / (dof - 2)), trap = (half: number, d: number): number => Math.sqrt(half ** 2 / 3 + d ** 2 / 9)
    const { u } = budgetOf({ parts: [part('ls', t(25, 18)), part('D', t(6, 24)), part('d1', t(4, 5)), part('d2', t(7, 8)), part('dalpha', trap(1e-6, 1e-7), 5_000_062), part('dt', trap(0.05, 0.025), 575)], products: [], correlations: [], coverage: 0.99, k: null })
    expect(Math.abs(u - known.u)).toBeGreaterThan(1)
    expect(u).toBeLessThan(known.u)
  })
})

describe('JCGM 106 9.5.4: a quantity that cannot be negative, its prior a gamma, against an upper limit', () => {
  type Clause = { clause: string; fractionNonconforming: number; 'globalConsumerRiskA2.0': number; 'aForRisk0.001': number; 'producerRiskA2.0': number }
  const clause = (published('jcgm106-conformity') as { cases: Clause[] }).cases.find((one) => one.clause === '9.5.4')!
  const limit = 2, u = 0.25
  /** Gamma of shape 4 and scale 0.25: x³ e^(−4x) · 4⁴/3!. */
  const prior = (x: number): number => (x ** 3 * Math.exp(-4 * x) * 256) / 6
  const simpson = (of: (x: number) => number, from: number, to: number, steps = 2000): number => {
    const h = (to - from) / steps
    return (h / 3) * totalOf(Array.from({ length: steps + 1 }, (_, i) => of(from + i * h) * (i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2)))
  }
  const consumer = (accept: number): number => simpson((x) => prior(x) * normalBelow((accept - x) / u), limit, 12), producer = (accept: number): number => simpson((x) => prior(x) * normalBelow((x - accept) / u), 0, limit)

  test('share beyond the limit, consumer’s and producer’s risk without a guard band', () => {
    expect(simpson(prior, limit, 12)).toBeCloseTo(clause.fractionNonconforming, 8)
    expect(consumer(limit)).toBeCloseTo(clause['globalConsumerRiskA2.0'], 8)
    expect(producer(limit)).toBeCloseTo(clause['producerRiskA2.0'], 8)
  })
  test('the acceptance limit that leaves one in a thousand', () => expect(consumer(clause['aForRisk0.001'])).toBeCloseTo(0.001, 8))
  test('our guard band of 1.65 u is stricter than that', () => expect(consumer(limit - 1.65 * u)).toBeLessThan(0.001))
})
