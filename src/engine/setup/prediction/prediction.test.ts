// Figures by hand: two bars 8 thick under 60 mm have their middle lines 52 apart, so 7 µm between them is 7/52 µm/mm, 8.08 µm over 60.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { BarKnown, PredictionAsked } from '#engine/setup/prediction/asked.ts'
import { predictionOf, runPrediction, type WayForetold } from '#engine/setup/prediction/prediction.ts'
import { scatterFrom } from '#engine/setup/prediction/scatter.ts'
import { viseNotMeasured } from '#model/vise-measured.ts'

const bar = (id: string, heightMm: number, more: Partial<BarKnown> = {}): BarKnown => ({
  id, heightMm, thicknessMm: 8, lengthMm: 100, trust: 'trusted', standing: 'measured', thicknessStanding: 'measured', where: 'slot', mates: 'm', stationUUm: 0.3,
  known: { check: 'c', uUm: 1, uAloneUm: 0.4 }, heightsUm: [[5, 0], [95, 0]], ...more,
})
const nobody = { sdUm: null, count: 0 }
const asked = (more: Partial<PredictionAsked> = {}): PredictionAsked => ({
  part: { shape: 'block', betweenJawsMm: 60, alongJawsMm: 60, heightMm: 20, hollows: [] },
  choice: { bars: ['high', 'low'], stand: 'on edge', places: [{ xMm: -20, yMm: 0 }, { xMm: -20, yMm: 52 }] },
  bars: [bar('high', 25.007), bar('low', 25)], vise: null, side: 'machined', scatter: { along: nobody, across: nobody },
  could: { barUm: 0.1, stationUm: 0.1, slopeUmPerMm: null, bedUm: null, liftUm: null }, toleranceUm: null, trials: 20_000, seed: 1, ...more,
})
const ways = (question: PredictionAsked): readonly WayForetold[] => {
  const said = predictionOf(question)
  if (said.status !== 'foretold') throw new Error(said.because.map(({ code }) => code).join())
  return said.ways
}
const coming = ({ coming: said }: WayForetold) => { if (said.status !== 'predicted') throw new Error(said.status); return said }
const codes = (list: readonly { readonly code: string }[]) => list.map(({ code }) => code)

describe('two bars 7 µm apart under 60 by 60', () => {
  const exact = { bars: [bar('high', 25.007, { known: { check: 'c', uUm: 0, uAloneUm: 0 }, stationUUm: 0 }), bar('low', 25, { known: { check: 'c', uUm: 0, uAloneUm: 0 }, stationUUm: 0 })] }

  test('held by the jaw: the low one is loose by 7, named, and nothing tips', () => {
    const [held] = ways(asked(exact)), { across, along } = coming(held!)
    expect(held).toMatchObject({ held: true, seat: { status: 'seated', loose: { bars: [{ bar: 1, leastGapUm: expect.closeTo(7, 6) as number }] } } })
    expect(held!.findings[0]).toMatchObject({ code: 'bar-loose', facts: { bar: 'low' } })
    expect(across.medianUm).toBeCloseTo(0, 6)
    expect(along.medianUm).toBeCloseTo(0, 6)
  })

  test('free: it lies on both, and comes out 8.08 thicker at the moving jaw', () => {
    const [free] = ways(asked({ ...exact, side: 'sawn', toleranceUm: 5 })), { across, chanceWithin } = coming(free!)
    expect(across.medianUm).toBeCloseTo((60 * 7) / 52, 6)
    expect(chanceWithin).toBe(0)
    expect(codes(free!.findings)).toEqual(['tolerance-missed', 'tilt-beyond-tolerance'])
  })

  test('nobody knows: both', () => expect(ways(asked({ side: 'unknown' })).map(({ held }) => held)).toEqual([false, true]))
})

describe('what is not known', () => {
  test('is named, never silently nothing', () => {
    expect(codes(ways(asked())[0]!.notKnown)).toEqual(['vise-never-indicated', 'squareness-not-known', 'shop-scatter-not-known'])
    const bed = { readings: [{ xMm: 0, yMm: 0, um: 0 }], uUm: 1, atIso: '2026-03-02T08:00:00.000Z', how: 'indicator' }
    expect(ways(asked({ vise: { ...viseNotMeasured, bed } }))[0]!.notKnown[0]).toMatchObject({ code: 'vise-not-indicated', facts: { what: ['jaw-slope', 'jaw-lift'] } })
    const { known: _known, heightsUm: _heights, ...plain } = bar('high', 25)
    expect(codes(ways(asked({ side: 'cast', bars: [{ ...plain, stationUUm: null }, bar('low', 25)] }))[0]!.notKnown)).toEqual(['vise-never-indicated', 'bar-uncertainty-not-known', 'profile-not-known', 'shop-scatter-not-known'])
  })

  test('stops a prediction where it is the main thing', () => {
    const stopped = (more: Partial<PredictionAsked>) => { const said = predictionOf(asked(more)); return said.status === 'not foretold' ? said.because[0]!.code : said.status }
    expect(stopped({ bars: [bar('high', 25, { standing: 'marked' }), bar('low', 25)] })).toBe('no-prediction-marked')
    expect(stopped({ part: { ...asked().part, alongJawsMm: null } })).toBe('no-prediction-sizes')
    expect(stopped({ part: { ...asked().part, shape: 'round' } })).toBe('no-prediction-round')
    expect(stopped({ choice: { ...asked().choice, stand: 'lying flat' } })).toBe('no-prediction-on-edge')
  })
})

describe('uncertainty', () => {
  test('shared by mates of one check tilts nothing; of two checks it does', () => {
    // Exact: two bars of one uncertainty u each, middle lines 52 apart, tilt by √2 u · 60/52 (GUM 5.1.2).
    const of = (check: string) => coming(ways(asked({ side: 'sawn', trials: 100_000, bars: [bar('high', 25.007, { stationUUm: 0 }), bar('low', 25, { stationUUm: 0, known: { check, uUm: 1, uAloneUm: 0.4 } })] }))[0]!).across.sdUm
    expect(of('c') / ((Math.SQRT2 * 0.4 * 60) / 52)).toBeCloseTo(1, 1)
    expect(of('d') / ((Math.SQRT2 * 1 * 60) / 52)).toBeCloseTo(1, 1)
  })

  test('of the jaw, the lift and the shop come in whole: held, across is their root sum of squares', () => {
    const found = { atIso: '2026-03-02T08:00:00.000Z', how: 'indicator' }, vise = { ...viseNotMeasured, jawSlope: { umPerMm: 0.1, uUmPerMm: 0.02, ...found }, jawLift: { um: 3, uUm: 0.9, overMm: 60, ...found } }
    const { across } = coming(ways(asked({ vise, trials: 100_000, scatter: { along: nobody, across: { sdUm: 2, count: 9 } } }))[0]!)
    expect(across.meanUm).toBeCloseTo(-(0.1 * 60 + 3), 1)
    expect(across.sdUm / Math.hypot(0.02 * 60, 0.9, 2)).toBeCloseTo(1, 2)
    expect(across.ownSdUm / Math.hypot(0.02 * 60, 0.9)).toBeCloseTo(1, 1)
  })

  test('the more of it, the wider the prediction', () => {
    fc.assert(fc.property(fc.double({ min: 0.1, max: 3, noNaN: true }), fc.double({ min: 1.2, max: 3, noNaN: true }), (u, times) => {
      const q95 = (uAloneUm: number) => coming(ways(asked({ side: 'cast', trials: 4000, bars: ['high', 'low'].map((id) => bar(id, 25, { known: { check: 'c', uUm: 9, uAloneUm } })) }))[0]!).overall.q95Um
      expect(q95(u * times)).toBeGreaterThan(q95(u))
    }), { numRuns: 25 })
  })

  test('contributions are ranked by what measuring better would gain; the shop is one, and cannot be measured away', () => {
    const { contributions } = coming(ways(asked({ side: 'sawn', scatter: { along: nobody, across: { sdUm: 3, count: 7 } }, bars: [bar('high', 25.007, { known: { check: 'd', uUm: 1.5, uAloneUm: 1.5 } }), bar('low', 25)] }))[0]!)
    expect(contributions.map(({ of, bar: id }) => [of, id])).toEqual([['bar', 'high'], ['bar', 'low'], ['shop', null]])
    expect(contributions.at(-1)).toMatchObject({ gainUm: null })
    expect(contributions.at(-1)!.shareUm).toBeGreaterThan(contributions[0]!.shareUm)
  })
})

test('says how far it is, and ends where it would at once', () => {
  const question = asked({ side: 'unknown', trials: 50_000 }), run = runPrediction(question), parts: number[] = []
  let next = run.next()
  for (; next.done !== true; next = run.next()) parts.push(next.value)
  expect(parts.length).toBeGreaterThan(3)
  expect(parts).toEqual(parts.toSorted((a, b) => a - b))
  expect(parts.at(-1)).toBe(1)
  expect(next.value).toEqual(predictionOf(question))
})

test('the shop’s own scatter is what its parts spread beyond what was foretold', () => {
  const outcome = (um: number | null, meanUm: number, sdUm: number, retired = false) => ({ retired, foretold: { along: { meanUm: 0, sdUm: 0 }, across: { meanUm, sdUm } }, measuredUm: { along: null, across: um } })
  // By hand: (3² + 3² + 5² + 5² + 2²)/5 = 14.4, less 1.2² = 12.96, whose root is 3.6.
  const apart = [3, -3, 5, -5, 2].map((um) => outcome(um + 4, 4, 1.2))
  expect(scatterFrom([...apart, outcome(99, 0, 1, true), outcome(null, 0, 1)])).toEqual({ along: { sdUm: null, count: 0 }, across: { sdUm: expect.closeTo(3.6, 9) as number, count: 5 } })
  expect(scatterFrom(apart.slice(1)).across.sdUm).toBeNull()
  expect(scatterFrom([1, -1, 1, -1, 1].map((um) => outcome(um, 0, 4))).across.sdUm).toBe(0)
})
