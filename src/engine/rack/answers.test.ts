import fc from 'fast-check'
import { expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { answerStraighten } from '#engine/make/straighten/answer-straighten.ts'
import { answerCoverage } from '#engine/rack/coverage/answer-coverage.ts'
import { answerHeights } from '#engine/rack/heights/answer-heights.ts'
import { answerRegrind } from '#engine/rack/regrind/answer-regrind.ts'
import { placesOf, spoiled, unsaid } from '#engine/read/spoil.ts'

type Raw = { readonly [key: string]: unknown }

const sound: readonly (readonly [answer: (raw: unknown) => object, raw: Raw])[] = [
  [answerHeights, { windows: [[31, 32.4], [20, 21]], step: 0.5, lowest: 5, owned: [10, 20], stacks: true, effortMillions: 0.01 }],
  [answerCoverage, {
    vises: [{ id: 'V', jawHeightMm: 45, lowerJawHeightMm: 44, jawWidthMm: 100, openingMm: 100 }], ways: ['on edge', 'stack'], advisedOnly: false,
    bars: [{ id: 'a', heightMm: 35, thicknessMm: 6, lengthMm: 150, mates: 'M' }, { id: 'b', heightMm: 35, thicknessMm: 6, lengthMm: 150, mates: 'M' }],
    setups: [{ vise: 'V', times: 2, part: { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 19 }, cuts: [{ kind: 'face', depthMm: 6 }], wishes: { gripMm: 'auto' } }, { lowMm: 3, highMm: 4 }],
    next: { stepMm: 0.5, lowestMm: 3, thicknessMm: 5, most: 2 },
  }],
  [answerRegrind, { bars: [{ id: 'A', heightsMm: [20, 20.01] }], cleanUpUm: 5, stepUm: 5, faces: 2, stages: [{ infeedUm: 5 }, { infeedUm: 2, takesUm: 10 }], sparkOut: 2, windowsMm: [[19, 20]] }],
  [answerStraighten, { spanMm: 120, widthMm: 25, depthMm: 6, eMPa: 205_000, yieldMPa: 1500, wantedSetUm: 20 }],
]

test.each(sound)('%o answers a sound case, with its sums and every key known', (answer, raw) => {
  expect(answer(raw)).toMatchObject({ ignored: [], sum: expect.arrayContaining([expect.objectContaining({ formula: expect.any(String), sources: expect.any(Array) })]) })
})

test('whatever one place of a case is spoiled with, it is answered or refused', () => {
  const places = sound.flatMap(([answer, raw]) => placesOf(raw).map((path) => ({ answer, raw, path })))
  const bad = fc.oneof(
    fc.constantFrom<unknown>(undefined, null, true, 'x', '', NaN, Infinity, 0, -0, -1, 1, 0.5, 2, 1e-300, 5e-324, 1e-5, 1e6, 1e9, -1e9, 1e15, 1e308, [], {}, [[]], [1, 2, 3], 2 ** 53, JSON.parse('{"__proto__": 1}')),
    fc.double(),
  )
  fc.assert(fc.property(fc.constantFrom(...places), bad, ({ answer, raw, path }, value) => {
    try {
      expect(unsaid(answer(spoiled(raw, path, value)))).toEqual([])
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      expect(error.code).toMatch(/^[a-z]+(-[a-z]+)+$/)
      expect(unsaid(error.facts)).toEqual([])
    }
  }), { numRuns: 1500 })
})
