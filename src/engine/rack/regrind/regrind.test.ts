// Cases and expected answers were computed by independent programs in exact fractions (see the head of the file).
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { answerRegrind } from '#engine/rack/regrind/answer-regrind.ts'
import type { Regrind } from '#engine/rack/regrind/regrind.ts'

type Golden = { readonly id: string; readonly note: string; readonly faces?: number; readonly expect: Partial<Regrind> & { readonly refused?: string } }

const { cases } = JSON.parse(readFileSync('fixtures/shop/rack/regrind.json', 'utf8')) as { cases: Golden[] }

const answerOrCode = (raw: unknown): (Regrind & { readonly ignored: readonly string[]; readonly sum: readonly unknown[] }) | string => {
  try { return answerRegrind(raw) } catch (error) { if (error instanceof Refusal) return error.code; throw error }
}

describe('the cases of regrind', () => {
  test('are all there', () => expect(cases.length).toBeGreaterThanOrEqual(30))

  test.each(cases.map((golden) => [`${golden.id} ${golden.note}`, golden] as const))('%s', (_, { id: _id, note: _note, expect: wanted, ...raw }) => {
    const given = answerOrCode(raw)
    if (typeof given === 'string') return expect(given).toBe(wanted.refused)
    expect(wanted.refused).toBeUndefined()
    expect(given.ignored).toEqual([])
    expect(given.note).toBe(raw.faces === 2 ? undefined : 'datum face taken as true')
    expect(Math.abs(given.newHeightMm - wanted.newHeightMm!)).toBeLessThanOrEqual(1e-9)
    expect(Math.abs(given.totalUm - wanted.totalUm!)).toBeLessThanOrEqual(1e-6)
    expect(given.bars).toEqual(wanted.bars!.map(({ id, removalHighestUm, removalLowestUm }) => ({ id, removalHighestUm: expect.closeTo(removalHighestUm, 6), removalLowestUm: expect.closeTo(removalLowestUm, 6) })))
    const { passes, passesTotal, passesByFace, servesWindows } = given
    expect({ passes, passesTotal, passesByFace, servesWindows }).toEqual({
      passes: wanted.passes, passesTotal: wanted.passesTotal, passesByFace: wanted.passesByFace, servesWindows: wanted.servesWindows,
    })
  })
})

const worn = fc.record({
  bars: fc.array(fc.record({ id: fc.string({ minLength: 1, maxLength: 3 }), heightsMm: fc.array(fc.integer({ min: 19_900_0, max: 20_100_0 }).map((tenths) => tenths / 10_000), { minLength: 1, maxLength: 5 }) }), { minLength: 1, maxLength: 6 }),
  cleanUpUm: fc.integer({ min: 0, max: 50 }), stepUm: fc.constantFrom(null, 1, 5, 10, 0.5), faces: fc.constantFrom(1, 2), sparkOut: fc.integer({ min: 0, max: 4 }),
  stages: fc.array(fc.record({ infeedUm: fc.constantFrom(1, 2, 2.5, 5, 15), takesUm: fc.integer({ min: 0, max: 60 }) }), { minLength: 1, maxLength: 4 }),
})

describe('regrinding', () => {
  test('leaves every place at least the clean-up of its faces, and goes no lower than the next step', () => {
    fc.assert(fc.property(worn, (raw) => {
      const { newHeightMm, bars } = answerRegrind(raw), lowestMm = Math.min(...raw.bars.flatMap(({ heightsMm }) => heightsMm)), offUm = (lowestMm - newHeightMm) * 1000
      expect(offUm).toBeGreaterThanOrEqual(raw.faces * raw.cleanUpUm - 1e-6)
      expect(offUm - raw.faces * raw.cleanUpUm).toBeLessThan((raw.stepUm ?? 0) + 1e-6)
      bars.forEach(({ removalHighestUm, removalLowestUm }, k) => {
        const { heightsMm } = raw.bars[k]!
        expect(removalHighestUm).toBeCloseTo((Math.max(...heightsMm) - newHeightMm) * 1000, 6)
        expect(removalLowestUm).toBeCloseTo((Math.min(...heightsMm) - newHeightMm) * 1000, 6)
      })
    }))
  })

  test('passes take all that has to come off, and none of them is one too many', () => {
    fc.assert(fc.property(worn, (raw) => {
      const { totalUm, passes, passesTotal, passesByFace } = answerRegrind(raw), faces = passesByFace ?? [passes]
      const takenUm = faces.flatMap((face) => face.map((count, k) => count * raw.stages[k]!.infeedUm)), lessUm = faces.flatMap((face) => face.map((count, k) => (count === 0 ? 0 : raw.stages[k]!.infeedUm)))
      const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0)
      expect(sum(takenUm)).toBeGreaterThanOrEqual(totalUm - 1e-5)
      expect(sum(takenUm) - sum(lessUm)).toBeLessThan(totalUm + 1e-5)
      expect(passesTotal).toBe(sum(passes) + raw.faces * raw.sparkOut)
    }))
  })

  test('in another order of the bars is the same', () => {
    fc.assert(fc.property(worn, (raw) => {
      const { bars, sum: _sum, ...rest } = answerRegrind(raw), { bars: turned, sum: _other, ...same } = answerRegrind({ ...raw, bars: raw.bars.toReversed() })
      expect(same).toEqual(rest)
      expect(turned.toReversed()).toEqual(bars)
    }))
  })

  // One for vise 2 only, 15 µm low: 20.005 − 0.005 − 0.015 would do for it alone, the other at 19.998 sets 19.993 (own arithmetic).
  test('a bar for a vise that stands higher comes out lower, and no bar above its lowest place', () => {
    const { newHeightMm, bars, totalUm, datumFace } = answerRegrind({ bars: [{ id: 'A', heightsMm: [19.998, 20.002] }, { id: 'B', heightsMm: [20.005, 20.006], lowUm: 15 }], cleanUpUm: 5, datumFace: 'B', stages: [{ infeedUm: 5 }], sparkOut: 0 })
    expect([newHeightMm, datumFace]).toEqual([19.993, 'B'])
    expect(bars).toEqual([{ id: 'A', removalHighestUm: 9, removalLowestUm: 5, newHeightMm: 19.993 }, { id: 'B', removalHighestUm: 28, removalLowestUm: 27, newHeightMm: 19.978 }])
    expect(totalUm).toBe(28)
    fc.assert(fc.property(worn, fc.array(fc.nat(40), { minLength: 6, maxLength: 6 }), (raw, lows) => {
      const lowered = raw.bars.map((bar, k) => ({ ...bar, lowUm: lows[k]! })), answer = answerRegrind({ ...raw, bars: lowered })
      answer.bars.forEach((bar, k) => expect(bar.newHeightMm ?? answer.newHeightMm).toBeLessThanOrEqual(Math.min(...lowered[k]!.heightsMm) - (raw.faces * raw.cleanUpUm) / 1000 + 1e-9))
    }))
  })

  test('what cannot be is refused, in order', () => {
    const sound = { bars: [{ id: 'A', heightsMm: [20, 20.01] }], cleanUpUm: 5, stages: [{ infeedUm: 5 }, { infeedUm: 2, takesUm: 10 }], sparkOut: 2 }
    expect(answerOrCode(sound)).toMatchObject({ newHeightMm: 19.995 })
    expect(answerOrCode({ ...sound, stages: [{ infeedUm: 5 }, { infeedUm: 2 }] })).toBe('field-missing')
    expect(answerOrCode({ ...sound, sparkOut: 1.5 })).toBe('not-a-number')
    expect(answerOrCode({ ...sound, cleanUpUm: 2e9 })).toBe('too-large')
    expect(answerOrCode({ ...sound, stages: [{ infeedUm: 0 }], cleanUpUm: -1 })).toBe('size-not-positive')
    expect(answerOrCode({ ...sound, stepUm: -10 })).toBe('size-not-positive')
    expect(answerOrCode({ ...sound, cleanUpUm: -1, faces: 3 })).toBe('wish-negative')
    expect(answerOrCode({ ...sound, faces: 3, stages: [] })).toBe('value-not-allowed')
    expect(answerOrCode({ ...sound, stages: [], bars: [] })).toBe('too-few-stages')
    expect(answerOrCode({ ...sound, cleanUpUm: 20_000 })).toBe('nothing-left')
  })
})
