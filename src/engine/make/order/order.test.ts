import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { orderWantedSchema } from '#model/order.ts'
import { answerOrder } from '#engine/make/order/answer-order.ts'
import { refusalOf } from '#engine/read/refusal-of.ts'
import { placesOf, spoiled, unsaid } from '#engine/read/spoil.ts'

const ladder = { heights: { by: 'ladder', fromMm: 12, toMm: 44, stepMm: 2 }, length: { by: 'jaw', jawWidthMm: 125 }, thicknessMm: 4, vises: 2, use: 'milling' }
const byJaw = { ...ladder, heights: { by: 'jaw', jawHeightMm: 45, stepMm: 1, lowestMm: 12 } }

describe('an order', () => {
  // By hand: 12, 14 … 44 are (44 − 12) / 2 + 1 = 17 heights; four of each make 68 bars; one under 125 is 124.
  test('of a ladder from, to and step, four of each, for a jaw of 125', () => {
    const { heightsMm, lengthMm, each, bars, ignored } = answerOrder(ladder)
    expect({ heightsMm, lengthMm, each, bars, ignored }).toEqual({ heightsMm: [12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 34, 36, 38, 40, 42, 44], lengthMm: 124, each: 4, bars: 68, ignored: [] })
  })

  // The trade's rules: the highest about 0.5 below the top of the jaw, steps of 1, 2 m of each for m vises. Common practice, no source.
  test('of a ladder by the jaw', () => {
    const { heightsMm, each } = answerOrder(byJaw)
    expect([heightsMm[0], heightsMm[1], heightsMm.at(-1), heightsMm.length, each]).toEqual([12.5, 13.5, 44.5, 33, 4])
  })

  test('of heights one by one takes each once, rising, and a length as told', () => {
    expect(answerOrder({ ...ladder, heights: { by: 'list', heightsMm: [30, 20, 30] }, length: { by: 'length', lengthMm: 150 } })).toMatchObject({ heightsMm: [20, 30], lengthMm: 150, bars: 8 })
  })

  test('says what is odd about it', () => {
    const codes = (raw: object) => answerOrder({ ...ladder, ...raw }).findings.map(({ code }) => code)
    expect(codes({})).toEqual(['bars-slender'])
    expect(codes({ thicknessMm: 12, heights: { by: 'ladder', fromMm: 12, toMm: 45, stepMm: 2 } })).toEqual(['ladder-ends-short', 'bars-not-higher-than-thick'])
    expect(codes({ thicknessMm: 10, length: { by: 'jaw', jawWidthMm: 40, underMm: 0 } })).toEqual(['bars-higher-than-long', 'bars-flush-with-jaws'])
  })

  test('is refused where it cannot be', () => {
    const refused = (raw: object) => refusalOf(answerOrder, { ...ladder, ...raw })
    expect(refusalOf(answerOrder, {})).toBe('field-missing heights')
    expect(refused({ heights: { by: 'ladder', fromMm: 44, toMm: 12, stepMm: 2 } })).toBe('ladder-upside-down heights.toMm')
    expect(refused({ heights: { by: 'ladder', fromMm: 12, toMm: 44, stepMm: 0 } })).toBe('size-not-positive heights.stepMm')
    expect(refused({ heights: { by: 'ladder', fromMm: 12, toMm: 44, stepMm: 0.001 } })).toBe('too-many heights.stepMm')
    expect(refused({ heights: { by: 'jaw', jawHeightMm: 10, stepMm: 1, lowestMm: 20 } })).toBe('ladder-upside-down heights.lowestMm')
    expect(refused({ length: { by: 'jaw', jawWidthMm: 125, underMm: 125 } })).toBe('length-not-left length.underMm')
    expect(refused({ length: { by: 'jaw', jawWidthMm: 125, underMm: -1 } })).toBe('wish-negative length.underMm')
    expect(refused({ heights: { by: 'list', heightsMm: [] } })).toBe('field-missing heights.heightsMm')
    expect(refused({ vises: 0 })).toBe('size-not-positive vises')
    expect(refused({ use: 'anything' })).toBe('unknown-word use')
    expect(refused({ dueDay: '2026-02-29' })).toBe('bad-day dueDay')
    expect(refused({ dueDay: '2028-02-29' })).toBe('answered')
  })

  test('spoilt in any one place is answered without a number nobody can say, or refused by name', () => {
    for (const sound of [ladder, byJaw]) {
      for (const path of placesOf(sound)) {
        for (const bad of [null, 'x', -1, 0, [], {}, 1e300]) {
          const raw = spoiled(sound, path, bad)
          if (refusalOf(answerOrder, raw) === 'answered') expect(unsaid(answerOrder(raw))).toEqual([])
        }
      }
    }
  })

  test('by the jaw stays so far below it, steps evenly and never under the lowest', () => {
    fc.assert(fc.property(fc.integer({ min: 200, max: 1200 }), fc.integer({ min: 0, max: 50 }), fc.integer({ min: 5, max: 60 }), fc.integer({ min: 50, max: 190 }), (jaw, below, step, lowest) => {
      fc.pre(jaw - below >= lowest)
      const { heightsMm } = answerOrder({ ...byJaw, heights: { by: 'jaw', jawHeightMm: jaw / 10, belowMm: below / 10, stepMm: step / 10, lowestMm: lowest / 10 } })
      expect(heightsMm.at(-1)).toBeCloseTo((jaw - below) / 10, 9)
      expect(heightsMm[0]).toBeGreaterThanOrEqual(lowest / 10 - 1e-9)
      expect(heightsMm[0]! - step / 10).toBeLessThan(lowest / 10)
      heightsMm.slice(1).forEach((mm, k) => expect(mm - heightsMm[k]!).toBeCloseTo(step / 10, 9))
    }))
  })

  test('is kept in the form it is asked in', () => {
    const kept = { ...ladder, length: { by: 'jaw', jawWidthMm: 125, underMm: 1 }, pairs: 1, hrc: null, dueDay: '2028-02-29' }
    expect(orderWantedSchema.parse(kept)).toEqual(kept)
    expect(orderWantedSchema.safeParse({ ...kept, dueDay: '2026-02-29' }).success).toBe(false)
  })
})
