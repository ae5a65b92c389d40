import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { answerGuilty } from '#engine/setup/guilty/answer-guilty.ts'
import { refusalOf } from '#engine/read/refusal-of.ts'

const um = fc.integer({ min: -40, max: 40 })

describe('who is guilty', () => {
  test('gets back what was put in: bars turn with the bars, the block with the block, the bed with neither', () => {
    fc.assert(fc.property(um, um, um, um, (bars, block, bed, closing) => {
      const asIs = bars + block + bed
      const answer = answerGuilty({ y1Um: asIs, y2Um: -bars + block + bed, y3Um: bars - block + bed, y4Um: asIs + closing, uUm: 0.5 })
      expect([answer.bars.shareUm, answer.block.shareUm, answer.bed.shareUm, answer.closing!.shareUm].map((value) => value + 0)).toEqual([bars, block, bed, closing].map((value) => value + 0))
      expect(answer.order.map((one) => Math.abs(answer[one]!.shareUm))).toEqual([bars, block, bed, closing].map(Math.abs).sort((a, b) => b - a))
    }))
  })

  // GUM (JCGM 100:2008), equation 10, worked by hand: ½√(u² + u²) = u/√2 for bars, block and bed, √(u² + u²) = u√2 for closing.
  test('carries the uncertainty of the readings', () => {
    const answer = answerGuilty({ y1Um: 4, y2Um: -6, y3Um: 2, y4Um: 16, uUm: 2, overMm: 50 })
    expect([answer.bars.uUm, answer.block.uUm, answer.bed.uUm]).toEqual([1, 1, 1].map((one) => expect.closeTo(one * 1.4142135623730951, 12)))
    expect(answer.closing!.uUm).toBeCloseTo(2.8284271247461903, 12)
    expect(answer).toMatchObject({ bars: { shareUm: 5, umPerMm: 0.1, shown: true }, block: { shareUm: 1, shown: false }, bed: { shareUm: -2, shown: false }, closing: { shareUm: 12, shown: true } })
    expect(answer.findings.map(({ code }) => code)).toEqual(['guilty-closing', 'guilty-bars'])
  })

  test('says so where nothing is shown, and where nobody knows the uncertainty', () => {
    expect(answerGuilty({ y1Um: 1, y2Um: 0, y3Um: 1, uUm: 1 })).toMatchObject({ closing: null, order: ['bars', 'bed', 'block'], findings: [{ code: 'guilty-none' }] })
    expect(answerGuilty({ y1Um: 9, y2Um: 0, y3Um: 1, y4Um: 9 })).toMatchObject({ bars: { uUm: null, shown: null }, findings: [{ code: 'guilty-not-known', facts: { largest: 'bars', shareUm: 4.5 } }] })
  })

  test('refuses in order', () => {
    const codeOf = (raw: object): string => refusalOf(answerGuilty, raw)
    expect(codeOf({ y1Um: 1, y2Um: 'x' })).toBe('field-missing y3Um')
    expect(codeOf({ y1Um: 1, y2Um: 'x', y3Um: 2 })).toBe('not-a-number y2Um')
    expect(codeOf({ y1Um: 1, y2Um: 1, y3Um: 2, overMm: 0, uUm: -1 })).toBe('size-not-positive overMm')
    expect(codeOf({ y1Um: 1, y2Um: 1, y3Um: 2, uUm: -1 })).toBe('uncertainty-negative uUm')
  })
})
