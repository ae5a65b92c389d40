import { expect, test } from 'vitest'
import { namesToWrite, nameOfMates } from '#web/inspect/box/names-to-write.ts'

const pair = (a: string, b: string) => ({ bars: [a, b] as const, turnOne: false, worstUm: 1, uses: [], because: [] })
const rack = { bars: [{ name: 'a 1' }, { name: 'A 2' }], mates: [{ name: 'B' }] } as unknown as Parameters<typeof namesToWrite>[1]

test('no name of the rack is written twice; mates share a letter, what was typed stands', () => {
  const sorted = { pairs: [pair('p', 'q')], regrind: [{ bars: ['r', 's'], newHeightMm: 24, totalUm: 90, because: [] }], drillBars: [{ bar: 't', because: [] }] }
  expect(namesToWrite(sorted, rack, { q: ' mine ', r: '', gone: 'x' })).toEqual({ p: 'C 1', q: 'mine', r: 'D 1', s: 'D 2', t: 'E' })
})

test('letters go on after Z and never come twice', () => {
  const pairs = Array.from({ length: 700 }, (_, at) => pair(`a${at}`, `b${at}`)), names = Object.values(namesToWrite({ pairs, regrind: [], drillBars: [] }, rack, {}))
  expect(new Set(names).size).toBe(1400)
})

test('mates are called by what their names have in common', () => {
  expect(nameOfMates('C 1', 'C 2')).toBe('C')
  expect(nameOfMates('left', 'right')).toBe('')
})
