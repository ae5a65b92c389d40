// Expected figures: ten million trials of an independent program (see the head of the file), with their standard errors.
import fc from 'fast-check'
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { drawNormals } from '#engine/numeric/example-normals.ts'
import { generatorFrom } from '#engine/numeric/generator.ts'
import { seatOf } from '#engine/setup/seat/seat.ts'
import { answerTilt } from '#engine/setup/tilt/answer-tilt.ts'
import { runTilt, type Spreading, tiltOf, type Tilted, type TiltQuestion } from '#engine/setup/tilt/tilt.ts'
import { batchTrials } from '#engine/setup/tilt/trials.ts'

type TiltAnswerable = Extract<Tilted, { readonly status: 'predicted' }>
type Figures = { readonly [key in Exclude<keyof Spreading, 'medianUm'>]: number } & { readonly se: { readonly [name: string]: number } }
type Golden = { readonly id: string; readonly note: string; readonly expect: { readonly along: Figures; readonly across: Figures; readonly exactAlong?: Partial<Figures> } }
const { cases } = JSON.parse(readFileSync('fixtures/shop/montecarlo/tilt.json', 'utf8')) as { cases: Golden[] }
const keys = [['mean', 'meanUm'], ['sd', 'sdUm'], ['q025', 'q025Um'], ['q975', 'q975Um'], ['q95', 'q95Um'], ['q95Abs', 'q95AbsUm']] as const
const rawOf = ({ id: _id, note: _note, expect: _expect, ...raw }: Golden) => raw

describe('the cases of tilt', () => {
  test('are all there', () => expect(cases.length).toBeGreaterThanOrEqual(5))

  test.each(cases.map((golden) => [`${golden.id} ${golden.note}`, golden] as const))('%s', (_, golden) => {
    const answer = answerTilt({ ...rawOf(golden), toleranceUm: 3 })
    if (answer.status !== 'predicted') throw new Error(answer.status)
    const M = 200_000
    for (const way of ['along', 'across'] as const) for (const [name, key] of keys) {
      const { [key]: expected, se } = golden.expect[way]
      expect(Math.abs(answer[way][key] - expected), `${way} ${key}`).toBeLessThanOrEqual(4 * se[name]! * Math.sqrt(1 + 1e7 / M))
    }
    expect(answer.ignored).toEqual([])
  })
})

/** Standard deviations of the bars and of the stations; heights as they are. */
function questionOf(ys: readonly number[], xs: readonly number[], barUm: number, stationUm: number, more: Partial<TiltQuestion> = {}): TiltQuestion {
  const spots = ys.flatMap((yMm) => xs.map((xMm) => ({ xMm, yMm })))
  const source = (bar: number, sd: number, onPoints: readonly number[]) => ({ by: { of: 'bar', bar } as const, spread: { dist: 'normal', sd } as const, onPoints, onSlope: 0, could: null })
  return {
    part: { lengthMm: 150, widthMm: 60, loadMm: [67, 28] }, spots, nominalUm: spots.map(() => 0), jawSlopeUmPerMm: null, trials: 50_000, seed: 1, toleranceUm: null,
    sources: [...ys.map((y, bar) => source(bar, barUm, spots.map(({ yMm }) => Number(yMm === y)))), ...spots.map(({ yMm }, i) => source(ys.indexOf(yMm), stationUm, spots.map((_, k) => Number(k === i))))], ...more,
  }
}

const predicted = (question: TiltQuestion): TiltAnswerable => {
  const tilted = tiltOf(question)
  if (tilted.status !== 'predicted') throw new Error(tilted.status)
  return tilted
}

describe('a prediction', () => {
  test('of contacts that never change is the linear one', () => {
    // MC-001: b = (z1 − z0)/130 over 150, the rest of the plane through three points; exact figures in the file.
    const golden = cases[0]!, { along } = answerTilt({ ...rawOf(golden), trials: 1_000_000 }) as unknown as TiltAnswerable, exact = golden.expect.exactAlong!
    expect(Math.abs(along.meanUm - exact.meanUm!)).toBeLessThan(4 * exact.sdUm! / 1000)
    expect(Math.abs(along.sdUm / exact.sdUm! - 1)).toBeLessThan(4 / Math.sqrt(2e6))
  })

  test('is bit for bit the same again, in pieces or at once, and another from another seed', () => {
    const question = questionOf([4, 56], [5, 75, 145], 0.8, 0.4, { trials: 50_001 }), run = runTilt(question), done: number[] = []
    let next = run.next()
    for (; next.done !== true; next = run.next()) done.push(next.value)
    expect(done.length).toBeGreaterThan(1)
    expect(done.every((count, k) => count < 50_001 && count > (done[k - 1] ?? 0))).toBe(true)
    expect(next.value).toEqual(tiltOf(question))
    expect(tiltOf({ ...question, seed: 2 })).not.toEqual(tiltOf(question))
  })

  test('is the same among others: taken in turn, one left half-way, one stopped', () => {
    const questions = [[4, 56], [4, 30, 56]].map((ys) => questionOf(ys, [5, 75, 145], 0.8, 0.4)), alone = questions.map(tiltOf)
    const left = runTilt(questions[1]!), stopped = runTilt(questions[0]!), runs = questions.map(runTilt), ends = new Map<number, Tilted>()
    left.next()
    stopped.next()
    stopped.return(alone[0]!)
    while (ends.size < runs.length) runs.forEach((run, k) => { const next = run.next(); if (next.done === true) ends.set(k, ends.get(k) ?? next.value) })
    expect([0, 1].map((k) => ends.get(k))).toEqual(alone)
    expect(questions.map(tiltOf)).toEqual(alone)
  })

  test('widens with every uncertainty', () => {
    const at = (barUm: number, stationUm: number) => predicted(questionOf([4, 56], [5, 75, 145], barUm, stationUm))
    for (const [less, more] of [[at(0.5, 0.3), at(1, 0.3)], [at(0.5, 0.3), at(0.5, 0.6)]] as const) {
      expect(more.overall.q95Um).toBeGreaterThan(less.overall.q95Um)
      expect(more.across.sdUm).toBeGreaterThan(less.across.sdUm)
    }
  })

  test('without uncertainty is the seat', () => {
    const nominalUm = [0.4, 1.2, -0.3, 0.9, -1, 2.2], { along, across, overall } = predicted(questionOf([4, 56], [5, 75, 145], 0, 0, { nominalUm, trials: 10 }))
    const seat = seatOf({ part: { lengthMm: 150, widthMm: 60, loadMm: [67, 28] }, points: [4, 56].flatMap((yMm, b) => [5, 75, 145].map((xMm, k) => ({ xMm, yMm, zUm: nominalUm[3 * b + k]! }))), jawSlopeUmPerMm: null })
    if (seat.status !== 'seated') throw new Error(seat.status)
    expect(along.meanUm).toBeCloseTo(seat.tiltAlongUm, 9)
    expect(across.q95Um).toBeCloseTo(seat.tiltAcrossUm, 9)
    expect(along.sdUm).toBeCloseTo(0, 9)
    expect(overall.medianUm).toBeCloseTo(Math.abs(seat.tiltAlongUm) + Math.abs(seat.tiltAcrossUm), 9)
  })

  test('from the highest to the lowest corner is along and across together, whichever way they rise', () => {
    // Three places: z = b x + c y over 150 by 60, by hand.
    for (const b of [0.02, -0.02]) for (const c of [0.05, -0.05]) {
      const question = questionOf([], [], 0, 0, { spots: [{ xMm: 10, yMm: 5 }, { xMm: 140, yMm: 5 }, { xMm: 70, yMm: 55 }], nominalUm: [10 * b + 5 * c, 140 * b + 5 * c, 70 * b + 55 * c], trials: 3, toleranceUm: 5.99 })
      const { along, across, overall, chanceWithin } = predicted(question)
      expect([along.meanUm, across.meanUm, overall.medianUm, overall.q95Um].map((um) => Number(um.toFixed(9)))).toEqual([150 * b, 60 * c, 6, 6])
      expect([chanceWithin, predicted({ ...question, toleranceUm: 6.01 }).chanceWithin]).toEqual([0, 1])
    }
  })

  test('over a line between two places falls to both sides alike, and says so', () => {
    // Four places level but for one diagonal 1 high, pressed in the middle: half the trials lie each way (statics).
    const question = questionOf([0, 60], [0, 150], 0, 0, { nominalUm: [1, 0, 0, 1], trials: 25_600, part: { lengthMm: 150, widthMm: 60, loadMm: [75, 30] } })
    const { mayRock, along } = predicted(question)
    expect(mayRock).toBe(true)
    expect(along.meanUm).toBeCloseTo(0, 6)
    expect(along.sdUm).toBeCloseTo(1, 3)
    expect(predicted({ ...question, part: { ...question.part, loadMm: [75, 29] } }).mayRock).toBe(false)
  })

  test('on two bars, three bars and anywhere finds the seat of every trial', () => {
    // one trial a seed: what comes out of it is the seat of the heights that the same seed draws
    const scattered = [[0, 0], [140, 3], [30, 58], [120, 60], [70, 20], [66, 45], [10, 30], [150, 31]].map(([xMm, yMm]) => ({ xMm: xMm!, yMm: yMm! }))
    const twice = [4, 56].flatMap((yMm) => [5, 48, 48, 92, 135, 5].map((xMm) => ({ xMm, yMm }))), layouts = [[4, 56], [4, 30, 56]].map((ys) => ys.flatMap((yMm) => [5, 48, 92, 135].map((xMm) => ({ xMm, yMm }))))
    for (const spots of [...layouts, scattered, twice]) for (const jawSlopeUmPerMm of [null, 0.02]) for (let seed = 1; seed <= 150; seed += 1) {
      const part = { lengthMm: 150, widthMm: 60, loadMm: [67, 29] } as const, sources = spots.map((_, i) => ({ by: { of: 'bar', bar: 0 } as const, spread: { dist: 'normal', sd: 1 } as const, onPoints: spots.map((__, k) => Number(k === i)), onSlope: 0, could: null }))
      const batch = new Float64Array(spots.length * batchTrials)
      drawNormals(generatorFrom(seed), batch)
      const { along, across } = predicted({ part, spots, nominalUm: spots.map((_, i) => i % 3), jawSlopeUmPerMm, sources, trials: 1, seed, toleranceUm: null })
      const seat = seatOf({ part, points: spots.map((spot, i) => ({ ...spot, zUm: (i % 3) + batch[i * batchTrials]! })), jawSlopeUmPerMm })
      if (seat.status !== 'seated') throw new Error(seat.status)
      expect(along.meanUm).toBeCloseTo(seat.tiltAlongUm, 9)
      expect(across.meanUm).toBeCloseTo(seat.tiltAcrossUm, 9)
    }
  })
})

// Grids, slopes and common heights leave many planes that only rounding tells apart; a seat is found all the same.
test('ties, full heights and bars in line come to an end', () => {
  const place = fc.tuple(fc.integer({ min: 0, max: 10 }), fc.integer({ min: 0, max: 2 }), fc.integer({ min: 0, max: 3 }))
  fc.assert(fc.property(fc.array(place, { minLength: 3, maxLength: 24 }), fc.constantFrom(1e-9, 1e-3, 0.1, 10), fc.constantFrom(0, 0.37), (places, step, slope) => {
    const spots = places.map(([x, y]) => ({ xMm: 13.7 * x, yMm: 21.3 * y })), nominalUm = places.map(([x, , z]) => 63_000.1 + slope * 13.7 * x + step * z), part = { lengthMm: 140, widthMm: 60, loadMm: [68.5, 21.3] } as const
    const tilted = tiltOf({ part, spots, nominalUm, jawSlopeUmPerMm: null, sources: [], trials: 2 * 256, seed: 1, toleranceUm: null }), seat = seatOf({ part, points: spots.map((spot, i) => ({ ...spot, zUm: nominalUm[i]! })), jawSlopeUmPerMm: null })
    if (seat.status !== 'seated') { expect(tilted.status).toBe(seat.status === 'tie' ? 'predicted' : seat.status); return }
    expect((tilted as TiltAnswerable).along.meanUm).toBeCloseTo(seat.tiltAlongUm, 5)
  }), { numRuns: 100 })
})

describe('bars as they stand', () => {
  const bar = { xMm: 0, heightMm: 30, thicknessMm: 8, lengthMm: 150, uUm: 0.5, stationUUm: 0.2 }, raw = {
    part: { lengthMm: 150, widthMm: 60, loadMm: [70, 27] }, bars: [{ ...bar, id: 'A', yMm: 0, heightsUm: [[10, 0], [140, 0]] }, { ...bar, id: 'B', yMm: 52, uUm: 2, heightsUm: [[10, 0], [140, 0]] }], trials: 20_000,
  }

  test('are predicted both ways where nobody knows what squares the part', () => {
    const lifted = (um: number) => answerTilt({ ...raw, toleranceUm: 1, vise: { bedUUm: 0.5, jawSlope: { umPerMm: 0.02, uUmPerMm: 0.01 }, jawLift: { um, uUm: 1 } } }), answer = lifted(6)
    expect(answer.status).toBe('predicted')
    // Held: slope 0.02 + 6/60 over 60 = 7.2 and its uncertainty √(0.01² + (1/60)²) · 60 = 1.166 (plane geometry).
    expect(answer.ifHeld).toMatchObject({ status: 'predicted', across: { meanUm: expect.closeTo(7.2, 1) as number, sdUm: expect.closeTo(1.166, 1) as number } })
    // Free: the lift turns the part by 6 over 60 as well, trial by trial.
    const across = (one: object) => (one as TiltAnswerable).across
    expect(across(answer).meanUm - across(lifted(0)).meanUm).toBeCloseTo(6, 9)
    expect(across(answer).q95Um - across(lifted(0)).q95Um).toBeCloseTo(6, 9)
    expect(answer.findings.map(({ code }) => code)).toEqual(['part-will-tilt', 'tolerance-missed'])
  })

  test('the bar known least pays most to measure', () => {
    const { gain, findings } = answerTilt({ ...raw, side: 'sawn', could: { barUm: 0.2, stationUm: 0.2 } })
    expect(gain.map(({ of, bar: index }) => [of, index])).toEqual([['bar', 1], ['bar', 0]])
    expect(gain[0]!.gainUm).toBeGreaterThan(gain[1]!.gainUm)
    expect(gain[1]!.gainUm).toBeGreaterThan(0)
    expect(findings.at(-1)).toMatchObject({ code: 'measure-first', facts: { of: 'bar', bar: 1 } })
  })
})

test('what cannot be predicted is said or refused', () => {
  const golden = rawOf(cases[0]!) as { part: object; points: object[] }
  const codeOf = (raw: unknown): string => {
    try { return answerTilt(raw).status } catch (error) { if (error instanceof Refusal) return error.code; throw error }
  }
  expect(codeOf({ ...golden, part: { ...golden.part, loadMm: [0, 0] } })).toBe('tips')
  expect(codeOf({ ...golden, part: { ...golden.part, loadMm: [75, 5] } })).toBe('on-edge')
  expect(codeOf({ ...golden, points: golden.points.slice(0, 2) })).toBe('collinear')
  expect(codeOf({ ...golden, points: [] })).toBe('too-few-points')
  expect(codeOf({ ...golden, trials: 0 })).toBe('too-few-trials')
  expect(codeOf({ ...golden, trials: 1e8 })).toBe('too-many')
  expect(codeOf({ ...golden, seed: 2 ** 32 })).toBe('too-many')
  expect(codeOf({ ...golden, trials: 1.5 })).toBe('not-a-number')
  expect(codeOf({ ...golden, bars: [] })).toBe('no-such-bar')
  expect(codeOf({ ...golden, bars: [{ dist: 'normal', sd: -1 }, { dist: 'none' }] })).toBe('uncertainty-negative')
  expect(codeOf({ ...golden, bars: [{ dist: 'bell' }, { dist: 'none' }] })).toBe('unknown-word')
})
