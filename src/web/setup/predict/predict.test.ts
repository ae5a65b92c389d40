import { expect, test } from 'vitest'
import { answerHold } from '#engine/setup/hold/answer-hold.ts'
import type { Coming, Prediction, WayForetold } from '#engine/setup/prediction/prediction.ts'
import { Refusal } from '#model/refusal.ts'
import type { SetupQuestion } from '#model/setup.ts'
import { holdCase, noHold } from '#web/setup/predict/hold-case.ts'
import { foretoldFrom, outcomeFrom } from '#web/setup/predict/outcome-of.ts'
import { sayComesOut, sayShortly } from '#web/setup/predict/say-prediction.ts'

const units = { length: 'mm', decimalMark: '.', words: 'UK' } as const
const foretold = { medianUm: 8, lowUm: 6, highUm: 10, meanUm: 8.1, sdUm: 3, ownSdUm: 1 }
const coming: Coming = { status: 'predicted', mayRock: false, along: { ...foretold, meanUm: 0 }, across: foretold, overall: { medianUm: 8, q95Um: 11 }, chanceWithin: null, contributions: [] }
const way = (held: boolean, more: Coming = coming): WayForetold => ({ held, coming: more, seat: { status: 'collinear', loose: { bars: [], corners: [] }, findings: [], sum: [] }, closing: null, findings: [], notKnown: [] })
const told = (...ways: readonly WayForetold[]): Prediction => ({ status: 'foretold', ways })

test('said for one way, for both, and for none', () => {
  expect(sayComesOut(told(way(true)), units)).toBe('about 8 µm out of parallel, in 95 of 100 cases at most 11 µm')
  expect(sayComesOut(told(way(false), way(true, { status: 'tips' })), units)).toBe('free about 8 µm out of parallel, in 95 of 100 cases at most 11 µm; squared by the jaw not to be foretold, see below')
  expect(sayShortly(told(way(true, { ...coming, chanceWithin: 0.9 })), units)).toBe('comes out within 11 µm: may miss the tolerance')
  expect(sayShortly(told({ ...way(true), notKnown: [{ code: 'squareness-not-known', facts: {} }] }), units)).toBe('comes out within 11 µm as far as was measured')
  expect(sayShortly(told(way(false), way(true, { ...coming, overall: { medianUm: 0, q95Um: 0.01 } })), units)).toBe('comes out within 11 µm free or less than 0.1 µm squared by the jaw')
  expect(sayShortly({ status: 'not foretold', because: [] }, units)).toBeNull()
})

test('an outcome keeps what was foretold without the shop’s own scatter, and none where both ways were open', () => {
  expect(outcomeFrom('s', { across: '0.009', along: '' }, told(way(false)), 'mm')).toMatchObject({ measuredUm: { across: expect.closeTo(9, 9) as number, along: null }, foretold: { across: { meanUm: 8.1, sdUm: 1 } }, text: { across: '0.009' } })
  // half a thousandth of an inch is 12.7 µm
  expect(outcomeFrom('s', { across: '-.0005', along: '' }, null, 'in').measuredUm.across).toBeCloseTo(-12.7, 6)
  expect(foretoldFrom(told(way(false), way(true)))).toBeNull()
  expect(() => outcomeFrom('s', { across: 'much', along: '' }, null, 'mm')).toThrow(Refusal)
})

const question = { part: { shape: 'block', betweenJawsMm: 60, alongJawsMm: 60, heightMm: 30, hollows: [] }, vise: { jawHeightMm: 45, jawWidthMm: 125, openingMm: 125 }, cuts: [{ kind: 'face', depthMm: 2, overJaw: true, runThroughMm: 0.5 }], wishes: { toleranceUm: 20 } } as unknown as SetupQuestion
const about = { question, drilled: { largestMm: 22.225, carried: true, betweenBarsMm: 48 }, choice: { gripMm: 20, stickOutMm: 10 }, jaws: { face: 'smooth' }, side: 'unknown', forceOf: () => ({ kc11MPa: 1500, mc: 0.22 }), unit: 'mm' } as const

test('the clamp is asked with the deepest cut, and only once its force can be worked out', () => {
  expect(holdCase(noHold, about)).toBeNull()
  expect(holdCase({ ...noHold, torqueNm: '60' }, about)).toBeNull()
  // By hand: F = 2 π · 0.2 · 60 000 / 4 = 18 850 N at the common efficiency.
  const clamped = answerHold(holdCase({ ...noHold, torqueNm: '60', lead: '4' }, about))
  expect(clamped.clampN).toBeCloseTo(18_850, -1)
  expect(clamped.notComputed).toContain('milling')
  expect(answerHold(holdCase({ ...noHold, forceN: '20000', diameter: '16', teeth: '4', feed: '0.05', width: '8', helix: '30' }, about)).limits.map(({ limit }) => limit)).toContain('tipping')
  expect(clamped.limits.map(({ limit }) => limit)).toEqual(['part-buckles', 'part-bows'])
})

test('the largest drill of the setup is asked with once its feed and the factor of its material are given, another that is typed before it', () => {
  const typed = { ...noHold, forceN: '20000', drillFeed: '.2032', yieldMPa: '350' }
  expect(answerHold(holdCase(typed, about)).drilling).toBeNull()
  // 7/8 in at 0.008 in in steel of 200 HB: the handbook's example, 2313 lb, 559 in lb (result from memory).
  const { drilling, limits } = answerHold(holdCase({ ...typed, kd: '24000' }, about))
  expect(drilling!.thrustN / 10_288).toBeCloseTo(1, 1)
  expect(limits.map(({ limit }) => limit)).toEqual(['drill-torque', 'part-buckles', 'part-bows', 'part-bends', 'jaw-pressure'])
  // Torque goes with the diameter to the power of 1.8: half as large, 3.48 times as little.
  expect(drilling!.torqueNm / answerHold(holdCase({ ...typed, kd: '24000', drill: '11.1125' }, about)).drilling!.torqueNm).toBeCloseTo(2 ** 1.8, 6)
})
