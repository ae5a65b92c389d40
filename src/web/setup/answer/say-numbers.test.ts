import { expect, it } from 'vitest'
import { fourNumbers, inOtherSystem, lengthIn } from '#web/setup/answer/say-numbers.ts'

const mm = { length: 'mm', decimalMark: ',', words: 'UK' } as const, inches = { length: 'in', decimalMark: '.', words: 'US' } as const

it('says four numbers in both systems', () => {
  const choice = { gripMm: 10.002, stickOutMm: 8.998, airMm: 2.54, matchUm: 1.27, bars: ['a', 'b'] }
  expect(fourNumbers(choice, mm).map(({ name, own, other }) => [name, own, other])).toEqual([
    ['grip', '10,0', '0,394 in'], ['above jaws', '9,0', '0,354 in'], ['clear of jaws', '2,54', '0,100 in'], ['µm match', '1,3', '0,00005 in'],
  ])
})

it('says what there is none of, and what nobody measured', () => {
  expect(fourNumbers({ gripMm: 7.5, stickOutMm: 5, airMm: null, matchUm: 0, bars: ['a'] }, mm).map(({ own }) => own)).toEqual(['7,5', '5,0', '–', '–'])
  expect(fourNumbers({ gripMm: 7.5, stickOutMm: 5, airMm: 1, matchUm: 2, matchUUm: 0.41, bars: ['a', 'b'] }, mm)[3]).toMatchObject({ own: '2,0', other: '± 0,9 µm' })
  expect(fourNumbers({ gripMm: 7.5, stickOutMm: 5, airMm: 1, matchUm: null, bars: ['a', 'b'] }, mm)[3]).toMatchObject({ own: '?', name: 'match, not measured' })
})

it('says a fraction of an inch where it is one and thousandths elsewhere', () => {
  expect([12.7, 25.4, 12.7013, 0.1016].map((length) => lengthIn(length, inches))).toEqual(['1/2', '1', '0.500', '0.004'])
  expect(inOtherSystem(12.7, inches)).toBe('12.70 mm')
})
