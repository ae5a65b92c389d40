import { expect, test } from 'vitest'
import type { Height } from '#engine/rack/height-from.ts'
import { barNamer } from '#web/inspect/bar-names.ts'

const record = (id: string, name: string, code: string) => ({ id, saw: {}, code, name, thicknessMm: 8, thicknessStanding: 'marked' as const, lengthMm: 150, matesId: null, slotId: null, where: { at: 'slot' as const }, note: '' })
const shop = { bars: [record('a', 'C', 'ABCD2345'), record('b', 'C', 'EFGH6789'), record('c', 'D', 'JKLM2345')], mates: [], checks: [] }
const units = { length: 'mm', decimalMark: '.', words: 'US' } as const
const heights = (mm: number) => () => ({ heightMm: mm } as Height)

test('height and name; two of one name are told apart by the begin of their codes', () => {
  const nameOf = barNamer(['a', 'b', 'c'], shop, { heights: heights(25) }, units)
  expect(['a', 'b', 'c'].map(nameOf)).toEqual(['25 C ABCD', '25 C EFGH', '25 D'])
})

test('a bar nobody has given a height is called by its name, one without any by its place', () => {
  const nameOf = barNamer(['c', 'x'], shop, { heights: () => null }, units)
  expect(['c', 'x'].map(nameOf)).toEqual(['D', 'bar 2'])
})
