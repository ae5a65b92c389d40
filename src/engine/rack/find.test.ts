// What hands type: common practice, no source.
import { expect, test } from 'vitest'
import { type Findable, finderOf } from '#engine/rack/find.ts'
import type { Units } from '#model/shop-record.ts'

const mm: Units = { length: 'mm', decimalMark: ',', words: 'UK' }, inch: Units = { length: 'in', decimalMark: '.', words: 'US' }
const bar = (name: string, heightMm: number, more: Partial<Findable> = {}): Findable =>
  ({ code: `${name.toUpperCase().padEnd(8, 'Z')}`, name, heightMm, calledMm: null, thicknessMm: 8, lengthMm: 150, standing: 'measured', trust: 'trusted', mates: 'M', slot: null, elsewhere: null, more: [], ...more })
const bars = [
  bar('aaa', 29.9), bar('bbb', 30.002, { slot: 'A3' }), bar('ccc', 31.75, { thicknessMm: 6.35 }), bar('ddd', 32.04, { trust: 'look first' }),
  bar('eee', 34.998, { mates: null, lengthMm: 100 }), bar('fff', 32.06, { elsewhere: 'night shift', more: ['overdue'] }), bar('gg-hh', 50, { trust: 'drill bar' }),
]
const found = (typed: string, units = mm) => finderOf(bars, units)(typed).map((k) => bars[k]!.name[0]).join('')

test('a range of heights, with the ends in', () => {
  expect(found('30-32')).toBe('bcd')
  expect(found('32 – 30')).toBe('bcd')
  expect(found('30..35')).toBe('bcdef')
  expect(found('1.18-1.26', inch)).toBe('bcd')
  expect(found('1 1/4-1 3/8', inch)).toBe('cdf')
  expect(found('1 3/16 - 1 1/4', inch)).toBe('c')
})
test('thickness and length beside it', () => {
  expect(found('30-32 t8')).toBe('bd')
  expect(found('t8 30-32 look first')).toBe('d')
  expect(found('t1/4', inch)).toBe('c')
  expect(found('l100')).toBe('e')
  expect(found('L 100')).toBe('e')
  expect(found('30 t 8')).toBe('b')
})
test('sizes side by side, as the list has them, and heights from one upwards', () => {
  expect(found('30x8')).toBe('b')
  expect(found('8 × 150')).toBe('abdfg')
  expect(found('35 x 8 X 100')).toBe('e')
  expect(found('1.25x1/4', inch)).toBe('c')
  expect(found('30x8x')).toBe('')
  expect(found('34+')).toBe('eg')
  expect(found('34+ beater')).toBe('g')
})
test('a height, a slot, a state, who has it, a code', () => {
  expect(found('35')).toBe('e')
  expect(found('A3')).toBe('b')
  expect(found('look first')).toBe('d')
  expect(found('beater')).toBe('g')
  expect(found('odd')).toBe('e')
  expect(found('night')).toBe('f')
  expect(found('overdue')).toBe('f')
  expect(found('gg-hh')).toBe('g')
  expect(found('ddd first')).toBe('d')
  expect(found('no such bar')).toBe('')
})
test('the text of a label that was scanned or typed', () => {
  const labelled = [bar('a', 30, { code: 'ABCD2345' }), bar('b', 30, { code: 'EFGH2345' })]
  for (const text of ['TWBABCD2345', 'twb abcd-2345', 'ABCD2345']) expect(finderOf(labelled, mm)(text)).toEqual([0])
})
