// Own arithmetic from the rules in docs/make-calculations.md (common practice, no source) where nothing else is named.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { answerGrind } from '#engine/make/grind/answer-grind.ts'
import { rimMPerS, sweepMin } from '#engine/make/grind/sweep.ts'
import { refusalOf } from '#engine/read/refusal-of.ts'
import { placesOf, spoiled, unsaid } from '#engine/read/spoil.ts'

const rows = [{ work: 'tool steel' as const, hardened: true, roughMostUm: 50, finishMostUm: 13, crossfeedShare: 0.1, wheelMPerS: [28, 33] as const, tableMPerMin: [15, 30] as const, source: 'SHOP', standing: 'shop' as const }]
const answer = (raw: unknown) => answerGrind(raw, rows)
const codes = (raw: unknown): string[] => answer(raw).findings.map(({ code }) => code)
const pair = { bars: 2, thicknessMm: 10, heightMm: 30, lengthMm: 150, bowMm: 0.12, allowanceMm: 0.3 }

describe('grind', () => {
  test('a pair 10 × 30 × 150 with 0.12 of bow: 0.22 off each side, about 30 passes a side by infeeds of 0.010 and 0.002', () => {
    const { removal, passesPerSide, stages, enough, spareUm, shimUm, turns } = answer(pair)
    expect(removal.neededUm).toBeCloseTo(120 + 50 + 50, 9)
    expect(stages).toEqual([{ infeedUm: 10, passes: 20, lastInfeedUm: 10, takesUm: 200 }, { infeedUm: 2, passes: 10, lastInfeedUm: 2, takesUm: 20 }])
    expect(passesPerSide).toBe(30)
    expect({ enough, spareUm, shimUm, turns }).toEqual({ enough: true, spareUm: expect.closeTo(80, 9) as number, shimUm: 120, turns: 3 })
    expect(codes({ ...pair, allowanceMm: 0.2 })).toContain('grind-allowance-short')
  })

  test('0.15 of bow, 0.05 to clean up, 0.05 of skin need 0.25 a side; that a bar of 45 has grown by 0.068 does not save any', () => {
    const bar = { ...pair, heightMm: 45, bowMm: 0.15, growthPercent: 0.15 }
    expect(answer(bar).removal.neededUm).toBeCloseTo(250, 9)
    expect(codes(bar)).toContain('growth-no-stock')
    // counted as a gain it would have been 0.216
    expect(answer({ ...bar, growthPercent: 0 }).removal.neededUm).toBeCloseTo(250, 9)
    // shrinkage takes stock away: 0.05 % of 45 mm is 22.5 µm, half of it on each side
    expect(answer({ ...bar, growthPercent: -0.05 }).removal).toMatchObject({ shrinkUm: expect.closeTo(11.25, 9) as number, neededUm: expect.closeTo(261.25, 9) as number })
  })

  test('edges in a pack that is loosened before the second side, faces on their hollow side', () => {
    const order = (raw: object) => answer({ ...pair, ...raw }).order.map(({ code }) => code)
    expect(order({})).toEqual(['grind-clean-chuck', 'grind-pack', 'grind-shim-hollow', 'grind-block-in', 'grind-first-side', 'grind-loosen-pack', 'grind-turn', 'grind-second-side', 'grind-last-dress', 'grind-spark-out', 'grind-cool', 'grind-break-edges'])
    expect(order({ sides: 'faces', bowMm: 0 })).toEqual(['grind-clean-chuck', 'grind-first-side', 'grind-turn', 'grind-second-side', 'grind-last-dress', 'grind-spark-out', 'grind-cool', 'grind-break-edges'])
    expect(answer(pair)).toMatchObject({ blockMm: { leastMm: 15, belowMm: 30 }, cautions: ['grinding wheel', 'grinding thin bars', 'stoning'] })
  })

  test('what the stages take adds to what is needed; no pass takes more than its infeed', () => {
    const um = fc.double({ min: 0.5, max: 30, noNaN: true }), mm = fc.double({ min: 0, max: 0.5, noNaN: true })
    fc.assert(fc.property(mm, mm, um, um, um, (bowMm, cleanUpMm, rough, fine, takesUm) => {
      const { removal, stages, passesPerSide, sweepsPerSide } = answer({ ...pair, bowMm, cleanUpMm, stages: [{ infeedUm: rough }, { infeedUm: fine, takesUm }], sparkOut: 2 })
      expect(stages.reduce((sum, stage) => sum + stage.takesUm, 0)).toBeCloseTo(removal.neededUm, 6)
      for (const { infeedUm, passes, lastInfeedUm, takesUm: takes } of stages) {
        // an infeed counts in whole picometres
        expect(Math.abs(Math.max(0, passes - 1) * infeedUm + lastInfeedUm - takes)).toBeLessThan(1e-6 * (passes + 1))
        expect(lastInfeedUm).toBeLessThanOrEqual(infeedUm + 1e-5)
        expect(lastInfeedUm).toBeGreaterThanOrEqual(0)
      }
      expect(sweepsPerSide).toBe(passesPerSide + 2)
    }))
  })

  test('more bow never takes fewer passes', () => {
    const mm = fc.double({ min: 0, max: 1, noNaN: true })
    fc.assert(fc.property(mm, mm, (one, other) => {
      expect(answer({ ...pair, bowMm: Math.max(one, other) }).passesPerSide).toBeGreaterThanOrEqual(answer({ ...pair, bowMm: Math.min(one, other) }).passesPerSide)
    }))
  })

  test('two bars 8 thick 5 apart, 150 + 50 long, wheel 20, a tenth for each stroke, 15 m/min: 0.27 minutes a sweep, 4.4 for 12 rough and 4 spark-out', () => {
    const wheel = { widthMm: 20, crossfeedMm: 2, tableMPerMin: 15, overrunMm: 25, gapMm: 5, diameterMm: null, rpm: null, markedRpm: null }, minutes = sweepMin(21, 150, wheel)
    expect(minutes).toBeCloseTo(0.273, 3)
    expect(16 * minutes).toBeCloseTo(4.37, 2)
    const ground = answer({ bars: 2, thicknessMm: 8, heightMm: 20, lengthMm: 150, bowMm: 0, cleanUpMm: 0.12, skinMm: 0, stages: [{ infeedUm: 10 }], sparkOut: 4, wheel: { widthMm: 20 } })
    expect([ground.sweepsPerSide, ground.machineMin! / 2]).toEqual([16, expect.closeTo(4.37, 2)])
  })

  // 33 m/s: a wheel of 150 at 4202 1/min, 178 at 3541, 200 at 3151.
  test.each([[150, 4202], [178, 3541], [200, 3151]])('a wheel of %d runs at 33 m/s at %d 1/min', (diameterMm, rpm) => expect(rimMPerS(diameterMm, rpm)).toBeCloseTo(33, 2))

  test('never above the marked speed; unusual speeds and infeeds are told', () => {
    const wheel = { widthMm: 20, diameterMm: 178, rpm: 3541, markedRpm: 3600 }
    expect(codes({ ...pair, wheel })).not.toContain('wheel-speed-unusual')
    expect(codes({ ...pair, wheel: { ...wheel, rpm: 1500 } })).toContain('wheel-speed-unusual')
    expect(refusalOf(answer, { ...pair, wheel: { ...wheel, rpm: 3601 } })).toBe('wheel-above-marked wheel.rpm')
    expect(answer({ ...pair, stages: [{ infeedUm: 60 }, { infeedUm: 15, takesUm: 20 }] }).findings.filter(({ code }) => code === 'infeed-large').map(({ facts }) => facts.stage)).toEqual(['rough', 'finish'])
  })

  test('refuses what cannot be', () => {
    const refused = (more: object) => refusalOf(answer, { ...pair, ...more })
    expect(refused({ heightMm: 0 })).toBe('size-not-positive heightMm')
    expect(refused({ bowMm: undefined })).toBe('field-missing bowMm')
    expect(refused({ bowMm: -1 })).toBe('wish-negative bowMm')
    expect(refused({ bars: 0 })).toBe('too-few-bars bars')
    expect(refused({ stages: [] })).toBe('too-few-stages stages')
    expect(refused({ stages: [{ infeedUm: 0 }] })).toBe('size-not-positive stages[0].infeedUm')
    expect(refused({ stages: [{ infeedUm: 1 }, { infeedUm: 1 }] })).toBe('field-missing stages[1].takesUm')
    expect(refused({ bowMm: 1e5, stages: [{ infeedUm: 1 }] })).toBe('too-many stages')
    expect(refused({ work: 'wood' })).toBe('unknown-word work')
    expect(refused({ work: 'alloy', wheel: { widthMm: 20 } })).toBe('field-missing wheel.crossfeedMm')
  })

  test('whatever one place of a case is spoiled with, it is answered or refused', () => {
    const whole = { ...pair, sides: 'edges', cleanUpMm: 0.05, skinMm: 0.05, growthPercent: 0.1, stages: [{ infeedUm: 10 }, { infeedUm: 2, takesUm: 20 }], sparkOut: 3, work: 'tool steel', hardened: true, wheel: { widthMm: 20, crossfeedMm: 2, tableMPerMin: 15, overrunMm: 25, gapMm: 5, diameterMm: 180, rpm: 3000, markedRpm: 3600 } }
    const places = placesOf(whole), bad = fc.oneof(fc.constantFrom<unknown>(undefined, null, true, 'x', '', NaN, Infinity, 0, -1, 1e-300, 1e-5, 1e6, 1e308, [], {}, [1, 2, 3]), fc.double())
    fc.assert(fc.property(fc.constantFrom(...places), bad, (path, value) => {
      try { expect(unsaid(answer(spoiled(whole, path, value)))).toEqual([]) } catch (error) { if (!(error instanceof Refusal)) throw error; expect(unsaid(error.facts)).toEqual([]) }
    }), { numRuns: 800 })
  })
})
