import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bothSystems, readLengthMm, readNumber, withUnit, wordLength, wordNumber } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'

const mm = { length: 'mm', decimalMark: '.' } as const
const inch = { length: 'in', decimalMark: '.' } as const
const codeOf = (text: string): string => {
  try { readLengthMm(text, 'mm', 'height') } catch (error) { if (error instanceof Refusal) return error.code; throw error }
  return 'taken'
}

describe('a length as a hand types it', () => {
  // Factor 25.4 exactly: international inch, 1959 (NIST SP 811, appendix B).
  it.each([
    ['25,003', 'mm', 25.003], ['+3', 'mm', 3], ['-0.5', 'mm', -0.5], ['−0,5', 'mm', -0.5], ['.0002"', 'mm', 0.00508], ['7/8', 'in', 22.225],
    ['7/8', 'mm', 22.225], ['1 3/8', 'in', 34.925], ['1-3/8', 'in', 34.925], ['1⅜', 'in', 34.925], ['⅞ in', 'mm', 22.225], ['22.225mm', 'in', 22.225],
    ['0.875 in', 'mm', 22.225], ['12 µm', 'mm', 0.012], ['12μm', 'in', 0.012], ['12 um', 'mm', 0.012], ['5 thou', 'mm', 0.127], ['3,0 mm', 'in', 3],
    ['35.', 'mm', 35], [',5', 'mm', 0.5], [' 35 ', 'mm', 35], ['1.75', 'in', 44.45], ['-1 1/2', 'in', -38.1], ['2 1/2"', 'mm', 63.5], ['25 MM', 'in', 25],
  ] as const)('%s in a field of %s is %d mm', (text, unit, expected) => {
    expect(readLengthMm(text, unit)).toBe(expected)
  })

  it.each([
    ['', 'field-missing'], ['   ', 'field-missing'], ['abc', 'not-a-number'], ['NaN', 'not-a-number'], ['Infinity', 'not-a-number'], ['1e308', 'not-a-number'],
    ['1.000,5', 'two-decimal-marks'], ['1,000,000', 'two-decimal-marks'], ['1/0', 'zero-denominator'], ['1 3/', 'not-a-number'], ['3 4', 'not-a-number'],
    ['--3', 'not-a-number'], ['5 furlongs', 'unknown-unit'], ['2000 inches 3', 'not-a-number'], ['99999999', 'too-large'], ['.', 'not-a-number'], ['mm', 'not-a-number'],
    ['1.5/2', 'not-a-number'], ['9'.repeat(400), 'not-a-number'],
  ])('%s is refused: %s', (text, code) => {
    expect(codeOf(text)).toBe(code)
  })

  it('names the field, what was given and what is needed', () => {
    expect(() => readLengthMm('abc', 'mm', 'part.heightMm')).toThrow(expect.objectContaining({ facts: { field: 'part.heightMm', given: 'abc', needed: 'number' } }))
  })

  it('reads back what it said, in either system and with either mark', () => {
    fc.assert(fc.property(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.constantFrom('.', ','), (um, decimalMark) => {
      const said = wordLength(um / 1000, { length: 'mm', decimalMark })
      expect(readLengthMm(said, 'mm')).toBe(um / 1000)
      const sixtyFourths = um % 100_000
      const saidInch = wordLength((sixtyFourths * 25.4) / 64, { length: 'in', decimalMark })
      expect(readLengthMm(saidInch, 'in')).toBeCloseTo((sixtyFourths * 25.4) / 64, 9)
    }))
  })

  it('is the nearest double for any decimal, as the language itself reads it', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 999_999 }), fc.integer({ min: 0, max: 999_999_999 }), (whole, after) => {
      const text = `${whole}.${String(after).padStart(9, '0')}`
      expect(readLengthMm(text, 'mm')).toBe(Number(text))
    }))
  })
})

describe('a length in words', () => {
  it.each([
    [35, mm, '35'], [10.75, mm, '10.75'], [-0.5, mm, '−0.5'], [0.00049, mm, '0'], [1.0005, mm, '1.001'], [26.225, mm, '26.225'], [-0.0001, mm, '0'],
    [34.925, inch, '1 3/8'], [22.225, inch, '7/8'], [25.4, inch, '1'], [26.225, inch, '1.0325'], [-12.7, inch, '−1/2'], [0, inch, '0'],
  ] as const)('%d in %o is %s', (value, units, expected) => {
    expect(wordLength(value, units)).toBe(expected)
  })

  it('keeps fixed places, the decimal mark and both systems', () => {
    expect(wordLength(10, { length: 'mm', decimalMark: ',' }, { decimals: 1 })).toBe('10,0')
    expect(wordLength(28.575, inch, { fractions: false })).toBe('1.125')
    expect(withUnit(28.575, inch)).toBe('1 1/8 in')
    expect(bothSystems(28.575, mm)).toBe('28.575 mm (1 1/8 in)')
    expect(wordNumber(2.25, ',')).toBe('2,25')
  })
})

describe('a plain number', () => {
  it('takes no unit', () => {
    expect(readNumber('118')).toBe(118)
    expect(() => readNumber('118 mm')).toThrow(expect.objectContaining({ code: 'not-a-number' }))
  })
})
