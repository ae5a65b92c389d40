import { expect, test } from 'vitest'
import type { Units } from '#model/shop-record.ts'
import { groupFinder } from '#web/rack/find-bars.ts'
import type { RackBar, RackGroup } from '#web/rack/rack-bars.ts'

const mm: Units = { length: 'mm', decimalMark: ',', words: 'UK' }, inch: Units = { length: 'in', decimalMark: '.', words: 'US' }

const bar = (id: string, heightMm: number, more: { name?: string; slot?: string; pair?: string; trust?: RackBar['trust'] } = {}): RackBar => ({
  record: {
    id, saw: {}, code: `${id}2345678`.toUpperCase().slice(0, 8), name: more.name ?? '', thicknessMm: 8, thicknessStanding: 'marked', lengthMm: 150,
    matesId: null, slotId: null, where: { at: 'slot' }, note: '',
  },
  heightMm, calledMm: Math.round(heightMm * 1000) / 1000, standing: 'measured', trust: more.trust ?? 'trusted', latest: null,
  mates: more.pair ? { id: more.pair, saw: {}, name: more.pair, note: '' } : null,
  slot: more.slot ? { id: more.slot, saw: {}, code: 'ABCDEFGH', name: more.slot } : null,
  elsewhere: null, overdue: false, orphan: false, condition: { trust: 'trusted', open: [], magnetised: null, due: null }, checked: null,
})
const groups: readonly RackGroup[] = [
  { key: 'a', bars: [bar('a', 22.225, { slot: 'A7' })] },
  { key: 'b', bars: [bar('b', 34.998, { slot: 'B4', pair: 'Pair C' }), bar('b2', 35.001, { slot: 'B4', pair: 'Pair C', name: 'left' })] },
  { key: 'c', bars: [bar('c', 30, { slot: 'B3', trust: 'drill bar', name: '😀 <script>' })] },
]
const found = (typed: string, units = mm) => groupFinder(groups, units)(typed).map(({ key }) => key).join('')

test('nothing typed leaves all', () => expect(found('  ')).toBe('abc'))
test('a height is found by its beginning, and a measured one by its name', () => {
  expect(found('3')).toBe('bc')
  expect(found('35')).toBe('b')
  expect(found('22,2')).toBe('a')
})
test('a fraction is in inches whatever the shop works in', () => {
  expect(found('7/8')).toBe('a')
  expect(found('7/8', inch)).toBe('a')
  expect(found('.875', inch)).toBe('a')
})
test('slot, code, name, mates and state', () => {
  expect(found('b4')).toBe('b')
  expect(found('a23')).toBe('a')
  expect(found('LEFT')).toBe('b')
  expect(found('pair c')).toBe('b')
  expect(found('beater')).toBe('c')
  expect(found('odd')).toBe('ac')
  expect(found('😀')).toBe('c')
})
test('several words must fit the same bar', () => {
  expect(found('b4 left')).toBe('b')
  expect(found('b3 left')).toBe('')
})
