// Cases and expected answers were computed by independent programs in exact fractions (see the head of the file).
import fc from 'fast-check'
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { answerElastic } from '#engine/setup/seat-elastic/answer-elastic.ts'
import { elasticOf } from '#engine/setup/seat-elastic/elastic.ts'
import { balanceOf, type ElasticQuestion, reachOf } from '#engine/setup/seat-elastic/springs.ts'
import { heightOf } from '#engine/setup/seat/plane.ts'
import { seatOf } from '#engine/setup/seat/seat.ts'

type Golden = { readonly id: string; readonly note: string; readonly forceN: number; readonly expect: { readonly [key: string]: unknown } }
const { cases } = JSON.parse(readFileSync('fixtures/shop/seat/seat-elastic.json', 'utf8')) as { cases: Golden[] }

function differences(expected: unknown, given: unknown, forceN: number, path = ''): string[] {
  if (path.endsWith('Exact')) return []
  if (typeof expected === 'number') return typeof given === 'number' && Math.abs(expected - given) <= (/N$|forcesN|NMm/.test(path) ? 1e-6 * forceN : 1e-6) ? [] : [`${path}: ${String(given)}, expected ${expected}`]
  if (typeof expected !== 'object' || expected === null) return expected === given ? [] : [`${path}: ${String(given)}, expected ${String(expected)}`]
  const more = Array.isArray(expected) && (!Array.isArray(given) || given.length !== expected.length) ? [`${path}: not ${expected.length} entries`] : []
  return [...more, ...Object.entries(expected).flatMap(([key, value]) => differences(value, (given as { [key: string]: unknown } | undefined)?.[key], forceN, `${path}.${key}`))]
}

describe('the cases of seat-elastic', () => {
  test('are all there', () => expect(cases.length).toBeGreaterThanOrEqual(20))
  test.each(cases.map((golden) => [`${golden.id} ${golden.note}`, golden] as const))('%s', (_, { id: _id, note: _note, expect: expected, ...raw }) => {
    expect(differences(expected, answerElastic(raw), raw.forceN)).toEqual([])
  })

  test('a force that closes a gap never comes without its warning; below it a gap is open, at it none', () => {
    const named = cases.map(({ id: _id, note: _note, expect: _expect, ...raw }) => ({ raw, answer: answerElastic(raw) })).filter(({ answer }) => answer.closing?.forceN)
    expect(named.length).toBeGreaterThan(5)
    for (const { raw, answer } of named) {
      expect(answer.findings.map(({ code }) => code)).toContain('gap-closed-by-force')
      const at = (forceN: number) => answerElastic({ ...raw, forceN })
      const less = at(0.99 * answer.closing!.forceN!), more = at(answer.closing!.forceN! * (1 + 1e-6))
      expect(less.status === 'rocks' || (less.status === 'seated' && less.gapsUm.some((gap) => gap > 0))).toBe(true)
      expect(more.status === 'seated' && more.gapsUm.every((gap) => gap === 0)).toBe(true)
    }
  })
})

const spring = fc.record({ xMm: fc.integer({ min: 0, max: 150 }), yMm: fc.constantFrom(4, 30, 56), zUm: fc.double({ min: -5, max: 5, noNaN: true }), nPerUm: fc.double({ min: 5, max: 900, noNaN: true }) })
const asked = fc.record({
  springs: fc.array(spring, { minLength: 3, maxLength: 16 }), weights: fc.array(fc.integer({ min: 1, max: 1000 }), { minLength: 16, maxLength: 16 }),
  forceN: fc.double({ min: 1, max: 50_000, noNaN: true }), slope: fc.option(fc.double({ min: -0.1, max: 0.1, noNaN: true })),
}).map(({ springs, weights, forceN, slope }): ElasticQuestion => {
  // somewhere among the springs: their mean by whatever weights
  const mean = (of: (one: { xMm: number; yMm: number }) => number) => springs.reduce((sum, one, i) => sum + weights[i]! * of(one), 0) / springs.reduce((sum, _, i) => sum + weights[i]!, 0)
  return { part: { lengthMm: 150, widthMm: 60, loadMm: [mean((one) => one.xMm), mean((one) => one.yMm)] }, springs, forceN, jawSlopeUmPerMm: slope }
})

describe('a seat on springs', () => {
  // A convex function is least where these hold, whoever finds the place.
  test('pushes only where it is pressed, and balances force and moments', () => {
    let inside = 0
    fc.assert(fc.property(asked, (question) => {
      fc.pre(reachOf(question) === 'inside')
      inside += 1
      const { plane, forcesN } = balanceOf(question), { springs, forceN, part: { loadMm: [x, y] } } = question
      springs.forEach(({ xMm, yMm, zUm, nPerUm }, i) => expect(Math.abs(forcesN[i]! - nPerUm * Math.max(0, zUm - heightOf(plane, xMm, yMm)))).toBeLessThan(1e-7 * forceN))
      const total = (of: (i: number) => number) => springs.reduce((sum, _, i) => sum + forcesN[i]! * of(i), 0)
      expect(Math.abs(total(() => 1) - forceN)).toBeLessThan(1e-9 * forceN)
      expect(Math.abs(total((i) => springs[i]!.xMm - x))).toBeLessThan(1e-7 * forceN)
      if (question.jawSlopeUmPerMm === null) expect(Math.abs(total((i) => springs[i]!.yMm - y))).toBeLessThan(1e-7 * forceN)
    }), { numRuns: 1000 })
    expect(inside).toBe(1000)
  })

  test('comes to rest on ties, edges and springs of very unlike stiffness, too', () => {
    const rough = fc.record({
      springs: fc.array(fc.record({ xMm: fc.constantFrom(0, 10, 20, 30, 40), yMm: fc.constantFrom(0, 10, 20, 30), zUm: fc.integer({ min: 24_997, max: 25_002 }), nPerUm: fc.constantFrom(1, 10, 250, 1e6) }), { minLength: 2, maxLength: 9 }),
      loadMm: fc.tuple(fc.integer({ min: 0, max: 8 }), fc.integer({ min: 0, max: 6 })), forceN: fc.constantFrom(0.1, 1, 400, 1e5), slope: fc.option(fc.constantFrom(-0.2, 0, 0.1)),
    })
    fc.assert(fc.property(rough, ({ springs, loadMm: [x, y], forceN, slope }) => {
      const elastic = elasticOf({ part: { lengthMm: 40, widthMm: 30, loadMm: [5 * x, 5 * y] }, springs, forceN, jawSlopeUmPerMm: slope })
      if (!('forcesN' in elastic)) return
      const total = (of: (i: number) => number) => springs.reduce((sum, _, i) => sum + elastic.forcesN[i]! * of(i), 0)
      // A height of 25 000 µm is known to its last binary place only, and the stiffest spring turns that into force.
      const roundingN = Math.max(...springs.map(({ nPerUm }) => nPerUm)) * 25_000 * Number.EPSILON
      expect(Math.abs(total(() => 1) - forceN)).toBeLessThan(1e-6 * forceN + roundingN)
      expect(Math.abs(total((i) => springs[i]!.xMm - 5 * x))).toBeLessThan(1e-5 * forceN + 40 * roundingN)
      if (slope === null) expect(Math.abs(total((i) => springs[i]!.yMm - 5 * y))).toBeLessThan(1e-5 * forceN + 30 * roundingN)
    }), { numRuns: 1000 })
  })

  test('comes to the rigid seat as the springs get stiff', () => {
    fc.assert(fc.property(asked, (question) => {
      const { part, springs, jawSlopeUmPerMm } = question, rigid = seatOf({ part, points: springs, jawSlopeUmPerMm })
      fc.pre(rigid.status === 'seated')
      const apart = (stiffer: number) => {
        const { plane } = balanceOf({ ...question, forceN: 10, springs: springs.map((one) => ({ ...one, nPerUm: one.nPerUm * stiffer })) })
        return Math.abs(heightOf(plane, ...part.loadMm) - (rigid as { heightUnderLoadUm: number }).heightUnderLoadUm)
      }
      expect(apart(1e6)).toBeLessThanOrEqual(apart(1) * 1e-3 + 1e-9)
    }), { numRuns: 200 })
  })

  test('over the edge of what carries it, the forces are settled and nothing else', () => {
    const springs = [[0, 0], [100, 0], [50, 60]].map(([xMm, yMm]) => ({ xMm: xMm!, yMm: yMm!, zUm: 0, nPerUm: 100 }))
    expect(elasticOf({ part: { lengthMm: 100, widthMm: 60, loadMm: [50, 0] }, springs, forceN: 100, jawSlopeUmPerMm: null })).toMatchObject({ status: 'on-edge', forcesN: [expect.closeTo(50, 6), expect.closeTo(50, 6), 0] })
  })
})

test('bars as they stand: a station is E t Δx / h, in series with the part', () => {
  // 210 000 · 8 · 75 / 30 / 1000 = 4200 N/µm for each half of a bar 150 long; four of them carry 16 800 N at 1 µm (textbook, shortening).
  const bar = { xMm: 0, heightMm: 30, thicknessMm: 8, lengthMm: 150 }, bars = [{ ...bar, id: 'A', yMm: 0 }, { ...bar, id: 'B', yMm: 52 }], part = { lengthMm: 150, widthMm: 60 }
  const seat = answerElastic({ part, bars, side: 'round', forceN: 16_800 })
  expect(seat).toMatchObject({ status: 'seated', heightUnderLoadUm: expect.closeTo(-1, 9) as number, closing: null })
  // a part of 30 above bars of 30, of one steel: half as stiff
  expect(answerElastic({ part, bars, side: 'round', forceN: 16_800, partHeightMm: 30 })).toMatchObject({ heightUnderLoadUm: expect.closeTo(-2, 9) as number })
  expect(answerElastic({ part, bars, forceN: 100 })).toMatchObject({ ifHeld: { status: 'seated' } })
})
