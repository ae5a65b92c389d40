import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Cut } from '#model/cut.ts'
import { atSeatOf } from '#engine/setup/at-seat.ts'
import { answerWindow } from '#engine/setup/answer-window.ts'
import { furthestBelowMm } from '#engine/setup/reach.ts'
import { defaultWishes } from '#engine/setup/read-wishes.ts'
import { windowOf, type WindowQuestion } from '#engine/setup/window.ts'

const drill = (diameterMm: number, more: Partial<Extract<Cut, { kind: 'hole' }>> = {}): Cut =>
  ({ kind: 'hole', tool: 'drill', through: true, xMm: 10, yMm: 10, diameterMm, runThroughMm: 1.5, pointAngleDeg: 118, leadThreads: 4, ...more })
const face = (depthMm: number): Cut => ({ kind: 'face', depthMm, overJaw: true, runThroughMm: 0.5 })
const question = (jawHeightMm: number, heightMm: number, cuts: readonly Cut[], more: Partial<WindowQuestion> = {}): WindowQuestion => ({
  vise: { jawHeightMm, openingMm: 150 }, part: { shape: 'block', betweenJawsMm: 40, alongJawsMm: 60, heightMm, hollows: [] }, cuts, wishes: defaultWishes, ...more,
})

// Worked by hand; the rules are common practice, no source.
describe('worked examples', () => {
  test('jaws 45, part 19, 6 off the top: 33 to 35', () => {
    expect(windowOf(question(45, 19, [face(6)]))).toMatchObject({ lowMm: 33, highMm: 35, widthMm: 2, lowBecause: 'cutter-over-jaw', highBecause: 'grip' })
  })

  test('on the 35 pair: grip 10, 9 above the jaws, finished top 3 clear of them', () => {
    const one = question(45, 19, [face(6)])
    expect(atSeatOf(one, windowOf(one), 35)).toEqual({ gripMm: 10, stickOutMm: 9, airMm: 3, stickOutPerGrip: 0.9, serves: true })
    expect(atSeatOf(one, windowOf(one), 30)).toMatchObject({ airMm: -2, serves: false })
  })

  // tip 8 / tan 59° = 4.8069 (tangent from a table of functions: tan 59° = 1.664279)
  test('16 mm drill of 118° on 5 mm bars: 6.307 below the part, 1.307 into the bed, 2.307 short of the air', () => {
    const one = question(45, 30, [drill(16)]), belowMm = furthestBelowMm(one.cuts, 30)!
    expect(belowMm).toBeCloseTo(8 / 1.664279 + 1.5, 5)
    expect(belowMm).toBeCloseTo(6.307, 3)
    expect(belowMm - 5).toBeCloseTo(1.307, 3)
    expect(windowOf(one).lowMm - 5).toBeCloseTo(2.307, 3)
  })

  test('jaws 1 3/4 in, part 7/8 in, 3 mm off, grip 1/2 in, air 1 mm: 26.225 to 31.75', () => {
    expect(windowOf(question(1.75 * 25.4, 0.875 * 25.4, [face(3)], { wishes: { ...defaultWishes, gripMm: 12.7 } }))).toMatchObject({ lowMm: expect.closeTo(26.225, 9), highMm: expect.closeTo(31.75, 9) })
  })

  test('jaws of two heights: the higher limits the cutter, the lower the grip', () => {
    const one = question(45, 19, [face(6)], { vise: { jawHeightMm: 45, lowerJawHeightMm: 44, openingMm: 150 } })
    expect(windowOf(one)).toMatchObject({ lowMm: 33, highMm: 34, stickOut: { maxSeatMmByGrip: 44 - 19 / 4 } })
    expect(atSeatOf(one, windowOf(one), 34)).toEqual({ gripMm: 10, stickOutMm: 8, airMm: 2, stickOutPerGrip: 0.9, serves: true })
  })

  test('a part of which only the height is known', () => {
    const one = question(45, 19, [face(6)], { part: { shape: 'block', betweenJawsMm: null, alongJawsMm: null, heightMm: 19, hollows: [] } })
    expect(windowOf(one)).toMatchObject({ lowMm: 33, highMm: 35, stickOut: { maxSeatMmByGrip: 40.25, maxSeatMmByThickness: null } })
  })

  test('grip left to auto: 0.6 of what is left of a thin part, at most 10', () => {
    const auto = { ...defaultWishes, gripMm: 'auto' as const }
    expect(windowOf(question(45, 6, [face(1)], { wishes: auto })).gripWishMm).toBeCloseTo(3, 9)
    expect(windowOf(question(45, 60, [face(1)], { wishes: auto })).gripWishMm).toBe(10)
  })
})

const size = (least: number, most: number) => fc.integer({ min: least * 100, max: most * 100 }).map((n) => n / 100)
const questions = fc.record({
  jawHeightMm: size(10, 80), heightMm: size(3, 90), gripMm: size(0, 30), airMm: size(0, 5), bedAirMm: size(0, 5),
  faces: fc.array(size(0, 3), { maxLength: 2 }), drills: fc.array(fc.record({ diameterMm: size(2, 40), runThroughMm: size(0, 10) }), { maxLength: 3 }),
}).map(({ jawHeightMm, heightMm, gripMm, airMm, bedAirMm, faces, drills }) =>
  question(jawHeightMm, heightMm, [...faces.map(face), ...drills.map(({ diameterMm, runThroughMm }) => drill(diameterMm, { runThroughMm }))], { wishes: { ...defaultWishes, gripMm, airMm, bedAirMm } }))

describe('a window', () => {
  test('is moved by higher jaws, as long as the cutter sets its low end', () => {
    fc.assert(fc.property(questions, size(1, 20), (one, more) => {
      const lower = windowOf(one), higher = windowOf({ ...one, vise: { ...one.vise, jawHeightMm: one.vise.jawHeightMm + more } })
      expect(higher.highMm - lower.highMm).toBeCloseTo(more, 9)
      if (lower.lowBecause === 'cutter-over-jaw') expect(higher.lowMm - lower.lowMm).toBeCloseTo(more, 9)
      if (lower.lowBecause === 'cutter-over-jaw') expect(higher.widthMm).toBeCloseTo(lower.widthMm, 9)
    }))
  })

  test('holds a seat just when grip, cutter and drills all have what is wished there', () => {
    fc.assert(fc.property(questions, size(0, 90), (one, seatMm) => {
      const window = windowOf(one), { gripMm, airMm, bedAirMm } = one.wishes, at = atSeatOf(one, window, seatMm)
      const belowMm = Math.max(-Infinity, ...one.cuts.map((cut) => (cut.kind === 'hole' ? cut.diameterMm / 2 / Math.tan((59 * Math.PI) / 180) + cut.runThroughMm : -Infinity)))
      const has = [one.vise.jawHeightMm - seatMm - (gripMm as number), (at.airMm ?? Infinity) - airMm, seatMm - belowMm - bedAirMm]
      fc.pre(has.every((spare) => Math.abs(spare) > 1e-5))
      expect(at.serves).toBe(has.every((spare) => spare > 0))
    }))
  })

  test('that is none has exactly one height once a wish is given up as told', () => {
    fc.assert(fc.property(questions, (one) => {
      const { giveUp } = windowOf(one)
      fc.pre(giveUp !== null)
      const { gripMm, airMm, bedAirMm, runThroughMm } = giveUp!
      const widthWith = (more: Partial<WindowQuestion>) => windowOf({ ...one, ...more }).widthMm
      if (gripMm !== null) expect(widthWith({ wishes: { ...one.wishes, gripMm } })).toBeCloseTo(0, 6)
      if (airMm !== null) expect(widthWith({ wishes: { ...one.wishes, airMm } })).toBeCloseTo(0, 6)
      if (bedAirMm !== null) expect(widthWith({ wishes: { ...one.wishes, bedAirMm } })).toBeCloseTo(0, 6)
      if (runThroughMm !== null) expect(widthWith({ cuts: one.cuts.map((cut) => (cut.kind === 'hole' ? { ...cut, runThroughMm: Math.min(cut.runThroughMm, runThroughMm) } : cut)) })).toBeCloseTo(0, 6)
      if (gripMm === null) expect(widthWith({ wishes: { ...one.wishes, gripMm: 1e-5 } })).toBeLessThan(0)
      if (airMm === null) expect(widthWith({ wishes: { ...one.wishes, airMm: 0 } })).toBeLessThan(0)
      if (bedAirMm === null) expect(widthWith({ wishes: { ...one.wishes, bedAirMm: 0 } })).toBeLessThan(0)
    }), { numRuns: 500 })
  })
})

describe('the answer', () => {
  const raw = { vise: { jawHeightMm: 45, openingMm: 150 }, part: { betweenJawsMm: 40, alongJawsMm: 60, heightMm: 19 }, cuts: [{ kind: 'face', depthMm: 6 }, { kind: 'hole', xMm: 20, yMm: 20, diameterMm: 8, tool: 'tap', pitchMm: 1.25 }], seatMm: 35 }

  test('tells how each of its numbers came about, from named sources', () => {
    const { sum, ignored } = answerWindow({ ...raw, part: { ...raw.part, colour: 'grey' } })
    expect(ignored).toEqual(['part.colour'])
    expect(sum.map((one) => one.formula)).toEqual([
      'low-cutter-over-jaw', 'tip-tap', 'low-drill-tip', 'high-grip', 'width', 'stick-out-by-grip', 'stick-out-by-thickness', 'advised-high',
      'grip-at-seat', 'stick-out-at-seat', 'air-at-seat', 'stick-out-per-grip',
    ])
    expect(sum[0]).toEqual({ formula: 'low-cutter-over-jaw', result: { name: 'lowMm', value: 33 }, inputs: { jawHeightMm: 45, depthMm: 6, airMm: 1, heightMm: 19 }, sources: ['SETUP-RULES'] })
    expect(sum[1]).toEqual({ formula: 'tip-tap', result: { name: 'tipMm', value: 5 }, inputs: { leadThreads: 4, pitchMm: 1.25 }, sources: ['TAP-LEADS', 'SETUP-RULES'] })
    expect(sum[2]!.result).toEqual({ name: 'drillTipMm', value: 7.5 })
  })

  test('has a sum for every number in it', () => {
    fc.assert(fc.property(questions, size(0, 60), ({ vise, part, cuts, wishes }, seatMm) => {
      const answer = answerWindow({ vise, part, cuts, wishes, seatMm }), summed = new Map(answer.sum.map((one) => [one.result.name, one.result.value]))
      for (const name of ['lowMm', 'highMm', 'widthMm', 'advisedHighMm'] as const) expect(summed.get(name)).toBe(answer[name])
      for (const [name, value] of Object.entries(answer.giveUp ?? {})) if (value !== null) expect(summed.get(`giveUp.${name}`)).toBe(value)
      for (const name of ['gripMm', 'stickOutMm', 'airMm', 'stickOutPerGrip'] as const) if (answer.atSeat![name] !== null) expect(summed.get(name)).toBe(answer.atSeat![name])
    }))
  })
})
