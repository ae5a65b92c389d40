import fc from 'fast-check'
import { expect, test } from 'vitest'
import { answerHold } from '#engine/setup/hold/answer-hold.ts'
import type { Coming, Prediction, WayForetold } from '#engine/setup/prediction/prediction.ts'
import { Refusal } from '#model/refusal.ts'
import type { SetupQuestion } from '#model/setup.ts'
import { holdCase, holdFieldOf, holdTextRefusal, stillToGive } from '#web/setup/predict/hold-case.ts'
import { foretoldFrom, outcomeFrom } from '#web/setup/predict/outcome-of.ts'
import { notKnownOnce, sayComesOut, sayShortly } from '#web/setup/predict/say-prediction.ts'
import { points } from '#web/setup/state/at-hand.ts'
import { holdTyped } from '#web/setup/state/hold-typed.ts'
import { newState } from '#web/setup/state/setup-state.ts'

const units = { length: 'mm', decimalMark: '.', words: 'UK' } as const
const foretold = { medianUm: 8, lowUm: 6, highUm: 10, meanUm: 8.1, sdUm: 3, ownSdUm: 1 }
const coming: Coming = { status: 'predicted', mayRock: false, along: { ...foretold, meanUm: 0 }, across: foretold, overall: { medianUm: 8, q95Um: 11 }, chanceWithin: null, contributions: [] }
const way = (held: boolean, more: Coming = coming): WayForetold => ({ held, coming: more, seat: { status: 'collinear', loose: { bars: [], corners: [] }, findings: [], sum: [] }, closing: null, findings: [], notKnown: [] })
const told = (...ways: readonly WayForetold[]): Prediction => ({ status: 'foretold', ways })

test('said for one way, for both, and for none', () => {
  expect(sayComesOut(told(way(true)), units)).toBe('About 8 µm out of parallel, in 95 of 100 cases at most 11 µm')
  expect(sayComesOut(told(way(false), way(true, { status: 'tips' })), units)).toBe('Free about 8 µm out of parallel, in 95 of 100 cases at most 11 µm; squared by the jaw not to be foretold, see below')
  expect(sayShortly(told(way(true, { ...coming, chanceWithin: 0.9 })), units)).toBe('comes out within 11 µm: may miss the tolerance')
  expect(sayShortly(told({ ...way(true), notKnown: [{ code: 'squareness-not-known', facts: {} }] }), units)).toBe('comes out within 11 µm as far as was measured')
  expect(sayShortly(told(way(false), way(true, { ...coming, overall: { medianUm: 0, q95Um: 0.01 } })), units)).toBe('comes out within 11 µm free or less than 0.1 µm squared by the jaw')
  expect(sayShortly({ status: 'not foretold', because: [] }, units)).toBeNull()
})

test('what is in neither way is said once, what is in one of them stays with it', () => {
  const never = { code: 'vise-never-indicated', facts: {} }, square = { code: 'squareness-not-known', facts: {} }, free = { ...way(false), notKnown: [never] }, held = { ...way(true), notKnown: [{ ...never }, square] }
  expect(notKnownOnce([free, held])).toEqual({ ways: [{ ...free, notKnown: [] }, { ...held, notKnown: [square] }], common: [never] })
  expect(notKnownOnce([held])).toEqual({ ways: [held], common: [] })
})

test('an outcome keeps what was foretold without the shop’s own scatter, and none where both ways were open', () => {
  expect(outcomeFrom('s', { across: '0.009', along: '' }, told(way(false)), 'mm')).toMatchObject({ measuredUm: { across: expect.closeTo(9, 9) as number, along: null }, foretold: { across: { meanUm: 8.1, sdUm: 1 } }, text: { across: '0.009' } })
  // half a thousandth of an inch is 12.7 µm
  expect(outcomeFrom('s', { across: '-.0005', along: '' }, null, 'in').measuredUm.across).toBeCloseTo(-12.7, 6)
  expect(foretoldFrom(told(way(false), way(true)))).toBeNull()
  expect(() => outcomeFrom('s', { across: 'much', along: '' }, null, 'mm')).toThrow(expect.objectContaining({ facts: { field: 'partAcross', given: 'much', needed: 'number' } }))
})

const question = { part: { shape: 'block', betweenJawsMm: 60, alongJawsMm: 60, heightMm: 30, hollows: [] }, vise: { jawHeightMm: 45, jawWidthMm: 125, openingMm: 125 }, cuts: [{ kind: 'face', depthMm: 2, overJaw: true, runThroughMm: 0.5 }], wishes: { toleranceUm: 20 } } as unknown as SetupQuestion
const about = { question, drilled: { largestMm: 22.225, carried: true, betweenBarsMm: 48 }, choice: { gripMm: 20, stickOutMm: 10 }, jaws: { face: 'smooth' }, side: 'unknown', force: { kc11MPa: 1500, mc: 0.22 }, units: { form: 'mm', atHand: 'mm' } } as const
const noHold = holdTyped(newState('mm'), 'v1')

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

test('milling is asked with the steel named, and what is still to be given is said of what was begun', () => {
  expect(stillToGive(noHold, about)).toEqual({ clamp: ['clamp'], milling: [], drilling: [] })
  expect(stillToGive({ ...noHold, torqueNm: '60', teeth: '4', kd: '24000' }, { ...about, force: null })).toEqual({ clamp: ['lead'], milling: ['diameter', 'feed', 'width', 'group'], drilling: ['drillFeed'] })
  const bare = { ...question, cuts: [], part: { ...question.part, betweenJawsMm: null } } as SetupQuestion
  expect(stillToGive({ ...noHold, forceN: '20000', group: '2', wear: '1' }, { ...about, question: bare, drilled: { ...about.drilled, largestMm: null } })).toEqual({
    clamp: ['betweenJaws'], milling: ['diameter', 'teeth', 'feed', 'width', 'depth'], drilling: ['drill', 'drillFeed', 'kd'],
  })
  expect(answerHold(holdCase({ ...noHold, forceN: '20000', diameter: '16', teeth: '4', feed: '0.05', width: '8' }, { ...about, force: null })).notComputed).toContain('milling')
})

test('each text is refused at its field, in the unit it was typed in; so is what the calculation refuses', () => {
  const inches = { form: 'in', atHand: 'mm' } as const, code = (field: Parameters<typeof holdTextRefusal>[0], text: string) => holdTextRefusal(field, text, inches)?.code ?? null
  expect([code('torqueNm', ''), code('torqueNm', '6x0'), code('teeth', '0'), code('helix', '0'), code('lead', '4 mm'), code('lead', '-4'), code('kd', '24 000')]).toEqual([null, 'not-a-number', 'size-not-positive', null, null, 'size-not-positive', 'not-a-number'])
  const milled = { ...noHold, forceN: '20000', diameter: '16', teeth: '4', feed: '0.05' }
  // half an inch is 12.7 mm
  expect(holdCase({ ...milled, width: '0.5' }, { ...about, units: inches })).toMatchObject({ milling: { widthMm: 12.7, diameterMm: 16 } })
  const refusedAt = (typed: Parameters<typeof holdCase>[0]) => { try { answerHold(holdCase(typed, about)) } catch (error) { if (error instanceof Refusal) return [error.code, holdFieldOf(error)]; throw error } return null }
  expect(refusedAt({ ...milled, width: '17' })).toEqual(['cut-wider-than-cutter', 'width'])
  expect(refusedAt({ ...milled, width: '8', helix: '95' })).toEqual(['angle-too-steep', 'helix'])
  expect(refusedAt({ ...milled, width: '8', teeth: '2.5' })?.[1]).toBe('teeth')
})

test('whatever is typed, it is worked out, waits, or is refused at one of the fields', () => {
  const text = fc.oneof(fc.constantFrom('', ' ', '0', '-1', '1 3/', '1 3/8', '7/0', '1,5,2', '.', '4 mm', '1"', '2.5', '6x0', '90', '1e9', '∞', '９', '9'.repeat(40), `.${'0'.repeat(38)}1`), fc.string({ maxLength: 40 }))
  const typed = fc.record({ forceN: text, torqueNm: text, lead: text, group: text, diameter: text, teeth: text, feed: text, width: text, helix: text, drill: text, drillFeed: text, kd: text, wear: text, point: fc.constantFrom(...points), yieldMPa: text })
  const sound = { ...noHold, torqueNm: '60', lead: '4', group: '2', diameter: '16', teeth: '4', feed: '0.05', width: '8', helix: '30', drill: '12', drillFeed: '.2', kd: '24000', wear: '1', yieldMPa: '350' }
  fc.assert(fc.property(typed, fc.subarray(Object.keys(sound) as (keyof typeof sound)[]), (wild, tame) => {
    try {
      const raw = holdCase({ ...wild, ...Object.fromEntries(tame.map((field) => [field, sound[field]])) }, about)
      for (const { ratio } of raw === null ? [] : answerHold(raw).limits) expect(ratio).toBeGreaterThanOrEqual(0)
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      expect(holdFieldOf(error), JSON.stringify(error.facts)).not.toBeNull()
    }
  }), { numRuns: 500 })
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
