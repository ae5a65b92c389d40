import fc from 'fast-check'
import { expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { answerBudget } from '#engine/inspect/answer-budget.ts'
import { answerLine } from '#engine/inspect/answer-line.ts'
import { answerMates } from '#engine/inspect/answer-mates.ts'
import { answerShape } from '#engine/inspect/answer-shape.ts'
import { answerTurnOver } from '#engine/inspect/answer-turn-over.ts'
import { answerVerdict } from '#engine/inspect/answer-verdict.ts'
import { placesOf, spoiled, unsaid } from '#engine/read/spoil.ts'

type Raw = { readonly [key: string]: unknown }

const stationsMm = [10, 75, 140]
const sound: readonly (readonly [answer: (raw: unknown) => object, raw: Raw])[] = [
  [answerShape, {
    zeroMm: 25, noiseUm: 0.5, bars: [{ id: 'A', stationsMm, lines: [[[3, 3.5], [4], [2]]], lengthMm: 150, closingZeroUm: 1 }, { id: 'B', stationsMm, lines: [[[6], [5], [4]]] }],
    readWith: { method: 'compare', resolutionUm: 1, limitUm: 2, repeatabilityUm: 0.3, plateFlatnessUm: 2, blockLimitUm: 0.4, blockUUm: 0.1, betweenC: 0.5, awayC: 2 }, limitsUm: { milling: 10, 'fine milling': 5 },
  }],
  [answerTurnOver, { zeroMm: 25, lengthMm: 150, stationsMm, faceAUpUm: [0, 1, 2], faceBUpUm: [0, 1, 2] }],
  [answerBudget, {
    unit: 'um', coverage: 0.95, k: 2, parts: [{ name: 'a', value: 3, u: 1, dof: 4, sensitivity: 2 }, { name: 'b', halfWidth: 1, distribution: 'arcsine' }, { name: 'c', sd: 1, n: 4 }],
    products: [{ of: ['a', 'b'], coefficient: 3 }], correlations: [{ of: ['a', 'c'], r: 0.5 }],
  }],
  [answerVerdict, { valueUm: 3, uUm: 1, lowerUm: 0, upperUm: 5, rule: 'simple', guardFactor: 2, cannotBeNegative: true }],
  [answerMates, { kind: 'profile', profiles: [[1, 2], [2, 1], [5, 5], [6, 4]], k: 2 }],
  [answerMates, { kind: 'window', heights: [1, 2, 5, 9], vises: 1 }],
  [answerLine, { x: [1, 2, 4, 8], y: [1, 2, 3, 5], degree: 2, intercept: true, at: [10] }],
]

test.each(sound)('%o answers a sound case, with its sums and every key known', (answer, raw) => {
  expect(answer(raw)).toMatchObject({ ignored: [], sum: expect.arrayContaining([expect.objectContaining({ formula: expect.any(String), sources: expect.any(Array) })]) })
})

test('whatever one place of a case is spoiled with, it is answered or refused', () => {
  const places = sound.flatMap(([answer, raw]) => placesOf(raw).map((path) => ({ answer, raw, path })))
  const bad = fc.oneof(
    fc.constantFrom<unknown>(undefined, null, true, 'x', '', NaN, Infinity, 0, -0, -1, 1, 0.5, 1e-300, 5e-324, 1e6, 1e9, -1e9, 1e15, -1e15, 1e308, [], {}, [[]], [1, 2, 3], 2 ** 53, JSON.parse('{"__proto__": 1}')),
    fc.double(),
  )
  fc.assert(fc.property(fc.constantFrom(...places), bad, ({ answer, raw, path }, value) => {
    try {
      expect(unsaid(answer(spoiled(raw, path, value)))).toEqual([])
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      expect(error.code).toMatch(/^[a-z]+(-[a-z]+)+$/)
    }
  }), { numRuns: 4000 })
})
