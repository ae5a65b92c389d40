import fc from 'fast-check'
import { expect, test } from 'vitest'
import { answerChuck } from '#engine/setup/chuck/answer-chuck.ts'
import { refusalOf } from '#engine/read/refusal-of.ts'

const bar = fc.record({ thicknessMm: fc.integer({ min: 1, max: 60 }).map((half) => half / 2), trust: fc.constantFrom('trusted', 'look first', 'drill bar', 'in work', 'gone') })

// The rule as shops tell it (common practice, no source): lower than the work, at least half its height, all round.
test('what serves is at least half as high as the part, half a millimetre lower, and can be used', () => {
  fc.assert(fc.property(fc.integer({ min: 1, max: 60 }), fc.array(bar, { maxLength: 8 }), (heightMm, bars) => {
    const given = bars.map((one, k) => ({ id: `B${k}`, heightMm: 40, lengthMm: 120, ...one }))
    const { serve, lowMm, highMm, order } = answerChuck({ part: { betweenJawsMm: 60, alongJawsMm: 90, heightMm }, bars: given })
    expect([2 * lowMm, highMm + 0.5]).toEqual([heightMm, heightMm])
    expect(serve).toEqual(given.filter(({ thicknessMm, trust }) => trust !== 'gone' && trust !== 'in work' && 2 * thicknessMm >= heightMm && 2 * thicknessMm + 1 <= 2 * heightMm).map(({ id }) => id))
    expect([...order].sort()).toEqual(['back', 'front', 'left', 'right'])
  }))
})

test('refuses in order', () => {
  const part = { betweenJawsMm: 60, alongJawsMm: 90, heightMm: 12 }, one = { id: 'A', heightMm: 25, thicknessMm: 8, lengthMm: 120 }
  const codeOf = (raw: object): string => refusalOf(answerChuck, raw)
  expect(codeOf({ part, bars: [{ ...one, id: 5 }], travel: 'round' })).toBe('field-missing bars[0].id')
  expect(codeOf({ part, bars: [one], travel: 'round' })).toBe('unknown-word travel')
  expect(codeOf({ part, bars: [{ ...one, lengthMm: 0 }, one] })).toBe('size-not-positive bars[0].lengthMm')
  expect(codeOf({ part, bars: [one, one] })).toBe('bar-id-twice bars[1].id')
})
