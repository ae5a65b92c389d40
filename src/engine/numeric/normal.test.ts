import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { normalBelow, normalQuantile } from '#engine/numeric/normal.ts'
import { studentQuantile } from '#engine/numeric/student-t.ts'

type Quantiles = {
  published: { AS241: { p: number; z: string }[] }
  normal: { p: number; z: string }[]
  studentT: { p: string; nu: number; t: string }[]
}
const quantiles = JSON.parse(readFileSync('fixtures/shop/random/quantiles.json', 'utf8')) as Quantiles
const conformity = JSON.parse(readFileSync('fixtures/published/jcgm106-conformity.json', 'utf8')) as { zForPc: { [pc: string]: number } }

// Check values of algorithm AS 241, and quantiles computed with 40 digits (head of the file): 4e-15 absolute near |z| = 9.
test.each([...quantiles.published.AS241, ...quantiles.normal])('z at $p is $z', ({ p, z }) => {
  const wanted = Number(z)
  expect(Math.abs(normalQuantile(p) - wanted)).toBeLessThanOrEqual(5e-16 * Math.max(1, Math.abs(wanted)))
})

// JCGM 106:2012 Table 1 from memory, digits computed (see the file).
test.each(Object.entries(conformity.zForPc).filter(([pc]) => Number(pc) > 0))('z for a conformity of %s', (pc, z) => {
  expect(normalQuantile(Number(pc))).toBeCloseTo(z, 9)
  expect(normalBelow(z)).toBeCloseTo(Number(pc), 9)
})

describe('the share below z', () => {
  test('at the ends and in between', () => {
    expect([normalBelow(-Infinity), normalBelow(0), normalBelow(Infinity), normalBelow(NaN)]).toEqual([0, 0.5, 1, NaN])
    // Guard bands as printed: Φ(−1.65) = 4.95 % (ISO 14253-1), Φ(−2) = 2.28 % (JCGM 106 8.3.2).
    expect(normalBelow(-1.65)).toBeCloseTo(0.049471468, 9)
    expect(normalBelow(-2)).toBeCloseTo(0.0227501319, 10)
  })

  test('is the inverse of the quantile, and the tails mirror each other', () => {
    fc.assert(fc.property(fc.double({ min: -37, max: 5, noNaN: true }), (z) => {
      expect(Math.abs(normalQuantile(normalBelow(z)) - z)).toBeLessThan(z > 0 ? 1e-15 / normalBelow(-z) + 1e-13 : 1e-13)
      expect(normalBelow(z) + normalBelow(-z)).toBeCloseTo(1, 15)
    }))
  })

  test('never falls', () => {
    fc.assert(fc.property(fc.double({ min: -10, max: 10, noNaN: true }), fc.double({ min: 1e-6, max: 1, noNaN: true }), (z, step) => { expect(normalBelow(z + step)).toBeGreaterThanOrEqual(normalBelow(z)) }))
  })
})

test('outside 0 to 1 there is no quantile', () => {
  expect([normalQuantile(0), normalQuantile(1), normalQuantile(-0.1), normalQuantile(1.1), normalQuantile(NaN)]).toEqual([-Infinity, Infinity, NaN, NaN, NaN])
  expect([studentQuantile(0.9, 0), studentQuantile(0.9, -1), studentQuantile(2, 5)]).toEqual([NaN, NaN, NaN])
})

// Computed with 30 digits, printed with 15 (head of the file).
test.each(quantiles.studentT)('t at $p with $nu degrees of freedom is $t', ({ p, nu, t }) => {
  expect(Math.abs(studentQuantile(Number(p), nu) / Number(t) - 1)).toBeLessThan(1e-13)
})

// Two-sided factors in the layout of JCGM 100:2008 Table G.2 (head of the file).
describe('the table of Student factors', () => {
  const [head, ...rows] = readFileSync('fixtures/published/student-t.csv', 'utf8').split('\n').filter((line) => line !== '' && !line.startsWith('#')).map((line) => line.split(','))
  test.each(rows)('with %s degrees of freedom', (nu, ...factors) => {
    factors.forEach((factor, i) => {
      const coverage = Number(head![i + 1]!.slice(1)) / 100
      expect(studentQuantile((1 + coverage) / 2, nu === 'inf' ? Infinity : Number(nu)), head![i + 1]).toBeCloseTo(Number(factor), 5)
    })
  })
})

test('Student quantiles are odd about one half, rise with p, and end in the normal ones', () => {
  fc.assert(fc.property(fc.double({ min: 1e-6, max: 0.499, noNaN: true }), fc.double({ min: 0.5, max: 2e5, noNaN: true }), (p, dof) => {
    const t = studentQuantile(p, dof)
    expect(studentQuantile(1 - p, dof) / -t).toBeCloseTo(1, 8)
    expect(studentQuantile(p * 1.001, dof)).toBeGreaterThan(t)
    expect(t).toBeLessThan(normalQuantile(p))
  }))
  expect(studentQuantile(0.975, 1e9)).toBeCloseTo(normalQuantile(0.975), 8)
})

test('with one and two degrees of freedom there are closed forms', () => {
  fc.assert(fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), (p) => {
    expect(studentQuantile(p, 1)).toBeCloseTo(Math.tan(Math.PI * (p - 0.5)), 8)
    expect(studentQuantile(p, 2)).toBeCloseTo((2 * p - 1) / Math.sqrt(2 * p * (1 - p)), 8)
  }))
})
