import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { uses } from '#model/wishes.ts'
import { answerVerdict } from '#engine/inspect/answer-verdict.ts'
import { usesProved } from '#engine/inspect/uses-proved.ts'
import { type VerdictQuestion, verdictOf } from '#engine/inspect/verdict.ts'

const against = (more: Partial<VerdictQuestion>): VerdictQuestion => ({ valueUm: 0, uUm: 1, lowerUm: null, upperUm: null, rule: 'guard-band', guardFactor: 1.65, cannotBeNegative: false, ...more })

// JCGM 106:2012: inputs of 7.4 verified, of 7.3 from memory; printed 0.66, 0.92, 0.99 (see the file, which has more digits).
describe('the examples of JCGM 106', () => {
  type Example = { clause: string; y: number; u: number; TL?: number; TU?: number; pc?: number }
  const { cases } = JSON.parse(readFileSync('fixtures/published/jcgm106-conformity.json', 'utf8')) as { cases: Example[] }
  const worked = cases.filter((one) => one.pc !== undefined)

  test('are all there', () => expect(worked).toHaveLength(3))

  test.each(worked)('clause $clause', ({ y, u, TL, TU, pc }) => {
    expect(answerVerdict({ valueUm: y, uUm: u, lowerUm: TL, upperUm: TU }).pConform).toBeCloseTo(pc!, 9)
  })

  test('clause 8.3.2: a guard band of two standard uncertainties lets at most 2.3 % through', () => {
    expect(1 - answerVerdict({ valueUm: 4, uUm: 0.5, upperUm: 5, guardFactor: 2 }).pConform).toBeCloseTo(0.0227501319, 9)
  })
})

// ISO 14253-1:2017 as public copies state it: 95 % conformity takes 1.65 standard uncertainties.
test('a value in the corner of the acceptance zone conforms with 95 %', () => {
  expect(verdictOf(against({ valueUm: 5 - 1.65, upperUm: 5 }))).toMatchObject({ verdict: 'proved', pConform: expect.closeTo(0.950528531966, 11) })
})

describe('proved to', () => {
  test('is what the value would be proved to keep, and nothing below it', () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 50, noNaN: true }), fc.double({ min: 0, max: 10, noNaN: true }), (valueUm, uUm) => {
      const { provedToUm } = verdictOf(against({ valueUm, uUm, upperUm: 100 }))
      expect(verdictOf(against({ valueUm, uUm, upperUm: provedToUm + 1e-10 })).verdict).toBe('proved')
      expect(verdictOf(against({ valueUm, uUm, upperUm: provedToUm - 1e-6 })).verdict).not.toBe('proved')
    }))
  })

  test('counts a difference by its size', () => expect(answerVerdict({ valueUm: -3, uUm: 1, upperUm: 5 }).provedToUm).toBeCloseTo(4.65, 12))
})

const order = ['proved', 'not-proved', 'out']
const limits = fc.record({ lowerUm: fc.constantFrom(null, -10, 0), upperUm: fc.constantFrom(null, 5, 20) }).filter(({ lowerUm, upperUm }) => lowerUm !== null || upperUm !== null)
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('a verdict never gets better', () => {
  test('with the value further from one limit to its far side', () => {
    fc.assert(fc.property(number(0, 30), number(0, 20), number(0, 5), (valueUm, further, uUm) => {
      const near = verdictOf(against({ valueUm, uUm, upperUm: 10 })), far = verdictOf(against({ valueUm: valueUm + further, uUm, upperUm: 10 }))
      expect(order.indexOf(far.verdict)).toBeGreaterThanOrEqual(order.indexOf(near.verdict))
      expect(far.pConform).toBeLessThanOrEqual(near.pConform + 1e-12)
    }))
  })

  test('with more uncertainty: what was not proved stays so, nor is more of it out', () => {
    fc.assert(fc.property(limits, number(-30, 30), number(0, 5), number(0, 5), (between, valueUm, uUm, more) => {
      const sharp = verdictOf(against({ ...between, valueUm, uUm })), blunt = verdictOf(against({ ...between, valueUm, uUm: uUm + more }))
      if (sharp.verdict !== 'proved') expect(blunt.verdict).not.toBe('proved')
      if (sharp.verdict !== 'out') expect(blunt.verdict).not.toBe('out')
      if (!sharp.provable) expect(blunt.provable).toBe(false)
    }))
  })
})

test('limits mirror: what is above an upper limit is below a lower one', () => {
  fc.assert(fc.property(number(-30, 30), number(0.01, 5), (valueUm, uUm) => {
    const up = verdictOf(against({ valueUm, uUm, upperUm: 3 })), down = verdictOf(against({ valueUm: -valueUm, uUm, lowerUm: -3 }))
    expect(down.verdict).toBe(up.verdict)
    expect(down.pConform).toBeCloseTo(up.pConform, 12)
  }))
})

// Limits of the uses: common practice, no source.
describe('what a pair is good for', () => {
  const limitsUm = { drilling: 25, milling: 10, 'fine milling': 5, grinding: 2 }

  test('mates 1 µm apart are fit for grinding if the instrument can prove it', () => {
    expect(usesProved(1, 0.2, limitsUm).map(({ use, verdict }) => [use, verdict])).toEqual(uses.map((use) => [use, 'proved']))
    expect(usesProved(1, 1, limitsUm).at(-1)).toMatchObject({ use: 'grinding', verdict: 'not-proved', provable: true, neededUUm: expect.closeTo(1 / 1.65, 12) })
    expect(usesProved(1, 2, limitsUm).at(-1)).toMatchObject({ use: 'grinding', verdict: 'not-proved', provable: false })
  })

  test('a milled pair within 6 µm is fit for milling and drilling and not for grinding', () => {
    expect(usesProved(6, 0.4, limitsUm).map(({ verdict }) => verdict)).toEqual(['proved', 'proved', 'out', 'out'])
    expect(usesProved(6, 0.4, limitsUm).at(-1)!.neededUUm).toBeNull()
  })

  test('with the uncertainty it needs, and no more, a value is proved', () => {
    fc.assert(fc.property(number(0, 25), (valueUm) => {
      for (const { use, neededUUm } of usesProved(valueUm, 0, limitsUm)) {
        if (neededUUm === null) continue
        const again = (uUm: number) => usesProved(valueUm, uUm, limitsUm).find((one) => one.use === use)!.verdict
        expect(again(neededUUm)).toBe('proved')
        expect(again(neededUUm + 1e-6)).not.toBe('proved')
      }
    }))
  })

  test('a use without a limit is not judged', () => expect(usesProved(1, 0, { milling: 10 }).map(({ use }) => use)).toEqual(['milling']))
})

test.each([
  [{ uUm: 1, upperUm: 5 }, 'field-missing', 'valueUm'],
  [{ valueUm: '3', uUm: 1, upperUm: 5 }, 'not-a-number', 'valueUm'],
  [{ valueUm: 3, uUm: 1, upperUm: 5, rule: 'lenient' }, 'unknown-word', 'rule'],
  [{ valueUm: 1e10, uUm: 1, upperUm: 5 }, 'too-large', 'valueUm'],
  [{ valueUm: 3, uUm: -1 }, 'no-limit', 'upperUm'],
  [{ valueUm: 3, uUm: -1, lowerUm: 5, upperUm: 4 }, 'limits-crossed', 'lowerUm'],
  [{ valueUm: 3, uUm: -1, upperUm: 4 }, 'uncertainty-negative', 'uUm'],
  [{ valueUm: 3, uUm: 1, upperUm: 4, guardFactor: -1 }, 'uncertainty-negative', 'guardFactor'],
])('%j is refused: %s', (raw, code, field) => {
  expect(() => answerVerdict(raw)).toThrow(expect.objectContaining({ code, facts: expect.objectContaining({ field }) }))
})

test('keys nobody knows are told', () => expect(answerVerdict({ valueUm: 3, uUm: 1, upperUm: 4, colour: 'blue' }).ignored).toEqual(['colour']))
