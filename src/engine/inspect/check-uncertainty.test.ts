import { describe, expect, test } from 'vitest'
import { answerShape } from '#engine/inspect/answer-shape.ts'
import type { ReadWith } from '#model/read-with.ts'
import { checkUncertainty, type ReadFigures, steelApartPerC, steelPerC } from '#engine/inspect/check-uncertainty.ts'

const bare: ReadWith = {
  method: 'compare', resolutionUm: 0, limitUm: null, repeatabilityUm: null, plateFlatnessUm: null, blockLimitUm: null, blockUUm: null, betweenC: null, awayC: null,
  expansionPerC: steelPerC, expansionApartPerC: steelApartPerC,
}
const once: ReadFigures = { heightMm: 50, repeatabilityUm: null, repeatabilityDof: 0, readings: 3, perPlace: 1, driftUm: null }
const heightU = (read: Partial<ReadWith>, figures: Partial<ReadFigures> = {}) => checkUncertainty({ ...bare, ...read }, { ...once, ...figures }).height.u

// Worked out by hand from the formulas of the GUM: a half-width over √3; expansion times height times degrees.
describe('one part at a time', () => {
  test.each([
    ['a step of 1 µm', { resolutionUm: 1 }, 0.2887],
    ['a step of 0.1 µm', { resolutionUm: 0.1 }, 0.02887],
    ['50 mm, steels ±1e-6 apart, 2 °C away', { awayC: 2 }, 0.0577],
    ['50 mm, bar and block ±0.5 °C apart', { betweenC: 0.5 }, 0.166],
    ['a plate flat within 2 µm', { plateFlatnessUm: 2 }, 0.5774],
    ['a block of ±0.4 µm', { blockLimitUm: 0.4 }, 0.2309],
    ['the certificate of the block before its limit', { blockLimitUm: 0.4, blockUUm: 0.05 }, 0.05],
    ['an indicator of ±2 µm', { limitUm: 2 }, 1.1547],
  ])('%s', (_, read, u) => expect(heightU(read)).toBeCloseTo(u, 3))

  test('scatter: of the mean of all readings, and once more for the zero', () => expect(heightU({ repeatabilityUm: 0.3 })).toBeCloseTo(Math.hypot(0.3 / Math.sqrt(3), 0.3), 12))

  test('repeats of the check go before what was known, with their degrees of freedom', () => {
    const { difference } = checkUncertainty({ ...bare, repeatabilityUm: 5 }, { ...once, repeatabilityUm: 0.2, repeatabilityDof: 6, perPlace: 2 })
    expect(difference.u).toBeCloseTo(0.2, 12)
    expect(difference.dof).toBeCloseTo(6, 9)
  })

  test('the drift of the zero', () => expect(heightU({}, { driftUm: -1.5 })).toBeCloseTo(1.5 / Math.sqrt(3), 12))
})

describe('what cancels is left out with a reason', () => {
  const all: ReadWith = { ...bare, resolutionUm: 1, limitUm: 4, plateFlatnessUm: 3, blockLimitUm: 0.4, betweenC: 0.5, awayC: 2, repeatabilityUm: 0.3 }
  const { height, parallelism, difference } = checkUncertainty(all, once)
  const named = (budget: typeof height) => budget.contributions.map(({ name }) => name)

  test('a height holds everything', () => expect(named(height)).toEqual(['reading step', 'repeats', 'instrument', 'plate', 'block', 'zero', 'temperature', 'expansion']))

  test('along a bar the block, the zero and the warmth are the same everywhere', () => {
    expect(named(parallelism)).toEqual(['reading step', 'repeats', 'instrument', 'plate'])
    expect(parallelism.leftOut.map(({ code, facts }) => [code, facts.part])).toEqual(['block', 'zero', 'temperature', 'expansion'].map((part) => ['cancels-along-bar', part]))
  })

  test('mates read at one spot differ by step, scatter and drift alone, each counted twice', () => {
    expect(named(difference)).toEqual(['reading step', 'repeats'])
    expect(difference.leftOut.map(({ facts }) => facts.part)).toEqual(['block', 'zero', 'temperature', 'expansion', 'instrument', 'plate'])
    expect(difference.u).toBeCloseTo(Math.SQRT2 * Math.hypot(0.5 / Math.sqrt(3), 0.3), 12)
  })

  test('a micrometer knows no block, zero or plate', () => {
    const micrometer = checkUncertainty({ ...all, method: 'micrometer' }, once)
    expect(named(micrometer.height)).toEqual(['reading step', 'repeats', 'instrument', 'temperature', 'expansion'])
    expect(micrometer.difference.leftOut.map(({ facts }) => facts.part)).toEqual(['temperature', 'expansion', 'instrument'])
  })
})

// Limits of the uses: common practice, no source.
describe('a check from readings to what they prove', () => {
  const stationsMm = [10, 75, 140], mates = [{ id: '1', stationsMm, lines: [[[3], [4], [2]]] }, { id: '2', stationsMm, lines: [[[4], [5], [3]]] }]
  const limitsUm = { drilling: 25, milling: 10, 'fine milling': 5, grinding: 2 }
  const verdicts = (readWith: object) => answerShape({ zeroMm: 25, bars: mates, readWith, limitsUm }).pair!.uses!.map(({ verdict }) => verdict)

  test('mates 1 µm apart are fit for grinding where the indicator can prove it, and not with a coarse micrometer', () => {
    expect(verdicts({ resolutionUm: 0.5, repeatabilityUm: 0.2 })).toEqual(['proved', 'proved', 'proved', 'proved'])
    const coarse = answerShape({ zeroMm: 25, bars: mates, readWith: { method: 'micrometer', resolutionUm: 10, repeatabilityUm: 2 }, limitsUm }).pair!
    expect(coarse.uses!.at(-1)).toMatchObject({ use: 'grinding', verdict: 'not-proved', provable: false })
    expect(coarse.provedToUm).toBeCloseTo(1 + 1.65 * coarse.uncertainty!.difference.u, 12)
  })

  test('without repeats and without a scatter known beforehand that is said', () => {
    const codes = (readWith: object) => answerShape({ zeroMm: 25, bars: mates, readWith }).findings.map(({ code }) => code)
    expect(codes({ resolutionUm: 1 })).toEqual(['scatter-not-known'])
    expect(codes({ resolutionUm: 1, repeatabilityUm: 0.3 })).toEqual([])
  })

  test('bars read at unlike stations are not judged as a pair', () => {
    const { pair } = answerShape({ zeroMm: 25, bars: [mates[0], { ...mates[1], stationsMm: [0, 75, 150] }], readWith: { resolutionUm: 1 }, limitsUm })
    expect(pair).toMatchObject({ worstAsLaidUm: null })
    expect(pair).not.toHaveProperty('uses')
  })
})
