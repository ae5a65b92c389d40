// Cases and curve: closed form checked by independent integration of the curvature (see the head of the file).
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { yieldIndication } from '#engine/make/straighten/yield-indication.ts'
import { answerStraighten } from '#engine/make/straighten/answer-straighten.ts'
import { depthAt, hinge, loadAt, setAt } from '#engine/make/straighten/bending-curve.ts'
import type { Straighten } from '#engine/make/straighten/straighten.ts'

type Golden = { readonly id: string; readonly note: string; readonly expect: { readonly [key in keyof Straighten]?: number | string } }
type Point = { readonly p: number; readonly deltaRatio: number; readonly setRatio: number }

const { cases, curve } = JSON.parse(readFileSync('fixtures/shop/bending/three-point.json', 'utf8')) as { cases: Golden[]; curve: Point[] }
const bar = { spanMm: 120, widthMm: 25, depthMm: 6, eMPa: 205_000, yieldMPa: 1500 }

/** The yielded share of the half depth at a load: the load is 1 + y − y²/2. */
const yieldedAt = (load: number): number => 1 - Math.sqrt(Math.max(0, 3 - 2 * load))

describe('the cases of straighten', () => {
  test('are all there', () => {
    expect(cases.length).toBeGreaterThanOrEqual(20)
    expect(curve.length).toBe(51)
  })

  test.each(cases.map((golden) => [`${golden.id} ${golden.note}`, golden] as const))('%s', (_, { id: _id, note: _note, expect: wanted, ...raw }) => {
    const given = answerStraighten(raw)
    expect(given.ignored).toEqual([])
    expect(given.findings.some(({ code }) => code === 'set-beyond-hinge')).toBe(wanted.status === 'hinge')
    for (const [key, value] of Object.entries(wanted)) {
      const ours = given[key as keyof Straighten]
      if (typeof value === 'number') expect((ours as number) / value - 1, key).toSatisfy((off: number) => Math.abs(off) <= 1e-8)
      else expect(ours, key).toBe(value)
    }
  })

  test.each(curve)('the curve at $p', ({ p, deltaRatio, setRatio }) => {
    const yielded = yieldedAt(p)
    expect(depthAt(yielded)).toBeCloseTo(deltaRatio, 11)
    expect(setAt(yielded)).toBeCloseTo(setRatio, 11)
  })
})

describe('straightening', () => {
  // Virtual work: the depth is twice the integral over half the span of curvature times x/2; curvature M/EI, above first yield 1/√(3 − 2 M/My).
  test('agrees with the curvature summed up along the bar', () => {
    for (const yielded of [0.05, 0.2, 0.5, 0.8]) {
      const load = loadAt(yielded), steps = 40_000
      let depth = 0
      for (let k = 0; k < steps; k += 1) {
        const x = (k + 0.5) / steps, moment = load * x, curvature = moment <= 1 ? moment : 1 / Math.sqrt(3 - 2 * moment)
        depth += (3 * curvature * x) / steps
      }
      expect(depth).toBeCloseTo(depthAt(yielded), 6)
    }
  })

  // A textbook's example of partly plastic bending: 20 mm deep, load 10 % above first yield leaves a core of 17.9 mm.
  test('leaves the core of the textbook example', () => {
    const { p, elasticCoreHalfDepthMm } = answerStraighten({ ...bar, depthMm: 20, wantedSetUm: answerStraighten({ ...bar, depthMm: 20, wantedSetUm: 0 }).deltaYUm * setAt(yieldedAt(1.1)) })
    expect(p).toBeCloseTo(1.1, 9)
    expect(2 * elasticCoreHalfDepthMm!).toBeCloseTo(17.889, 3)
  })

  test('pressed as deep as told, leaves what was wanted, on the yield stress that was taken and on any other with its own depth', () => {
    const wanted = fc.double({ min: 0.01, max: 4000, noNaN: true }), times = fc.double({ min: 0.5, max: 2, noNaN: true })
    fc.assert(fc.property(wanted, times, (wantedSetUm, factor) => {
      const told = answerStraighten({ ...bar, yieldMPa: bar.yieldMPa * factor, wantedSetUm })
      expect(told.pressDepthUm - told.springbackUm).toBeCloseTo(wantedSetUm, 6)
      for (const { yieldPercent, pressDepthUm } of told.sensitivity) {
        expect(answerStraighten({ ...bar, yieldMPa: bar.yieldMPa * factor * (1 + yieldPercent / 100), wantedSetUm }).pressDepthUm / pressDepthUm).toBeCloseTo(1, 9)
      }
      // the softer the bar, the more stays at the same depth
      const sets = [...told.sensitivity.slice(0, 2), { setUm: wantedSetUm }, ...told.sensitivity.slice(2)].map(({ setUm }) => setUm)
      expect(sets).toEqual(sets.toSorted((a, b) => b - a))
    }))
  })

  test('what stays at the same depth on another yield stress is what that bar would be pressed to that depth for', () => {
    const { pressDepthUm, sensitivity } = answerStraighten({ ...bar, wantedSetUm: 200 })
    for (const { yieldPercent, setUm } of sensitivity) {
      expect(answerStraighten({ ...bar, yieldMPa: bar.yieldMPa * (1 + yieldPercent / 100), wantedSetUm: setUm }).pressDepthUm).toBeCloseTo(pressDepthUm, 6)
    }
  })

  test('goes on over the hinge without a jump', () => {
    const { largestSetBeforeHingeUm: most } = answerStraighten({ ...bar, wantedSetUm: 1 })
    const at = (share: number) => answerStraighten({ ...bar, wantedSetUm: most * share }), [below, above] = [at(1 - 1e-9), at(1 + 1e-9)]
    expect([below.status, at(1).status, above.status]).toEqual(['reachable', 'reachable', 'hinge'])
    // towards the hinge the depth grows without end for each bit of force: a billionth of the set is some parts in 10⁵ of the force
    expect(above.pressDepthUm).toBeCloseTo(below.pressDepthUm, 1)
    expect(at(1)).toMatchObject({ p: hinge.load, strainRatioOuterFibre: null })
  })

  test('says that a bar may break, and how much hangs on its yield stress; refuses what cannot be', () => {
    const codes = (raw: unknown) => answerStraighten(raw).findings.map(({ code }) => code)
    expect(codes({ ...bar, wantedSetUm: 20 })).toEqual(['set-hangs-on-yield', 'pressed-bar-may-break'])
    expect(codes({ ...bar, spanMm: 25, wantedSetUm: 1 })).toContain('span-short')
    const refused = (raw: unknown) => {
      try { return answerStraighten(raw).status } catch (error) { if (error instanceof Refusal) return error.code; throw error }
    }
    expect(refused({ ...bar })).toBe('field-missing')
    expect(refused({ ...bar, wantedSetUm: '20' })).toBe('not-a-number')
    expect(refused({ ...bar, spanMm: 0, wantedSetUm: -1 })).toBe('size-not-positive')
    expect(refused({ ...bar, wantedSetUm: -1 })).toBe('wish-negative')
  })
})

describe('what is published of a yield stress', () => {
  const rows = [[50, 1350], [60, 2150], [62, 2200]].map(([hrc, yieldMPa]) => ({ steel: 'made up', hrc: hrc!, yieldMPa: yieldMPa!, source: 'made up', standing: 'published' as const }))
  test('is straight between two rows, and nothing beyond them or of another steel', () => {
    expect([50, 55, 61, 62].map((hrc) => yieldIndication(rows, 'made up', hrc)!.yieldMPa)).toEqual([1350, 1750, 2175, 2200])
    expect([yieldIndication(rows, 'made up', 49.9), yieldIndication(rows, 'made up', 62.1), yieldIndication(rows, 'other', 60)]).toEqual([null, null, null])
  })
})
