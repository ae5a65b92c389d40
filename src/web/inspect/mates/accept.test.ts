import { expect, test } from 'vitest'
import type { BarRecord } from '#model/bar-record.ts'
import { acceptMates, areMates } from '#web/inspect/mates/accept.ts'

const bar = (id: string, matesId: string | null, name = id): BarRecord => ({ id, saw: {}, code: 'ABCD2345', name, thicknessMm: 8, thicknessStanding: 'marked', lengthMm: 150, matesId, slotId: null, where: { at: 'slot' }, note: '' })
const bars = [bar('a', 'm'), bar('b', 'm'), bar('c', 'n'), bar('d', 'n'), bar('e', 'n'), bar('f', null), bar('g', null)]
const accept = (...groups: string[][]) => { let made = 0; return acceptMates(groups, { bars }, () => `new${(made += 1)}`) }
const matesAfter = (edits: ReturnType<typeof accept>['edits']) => Object.fromEntries(edits.flatMap((edit) => (edit.kind === 'bar' ? [[edit.record, edit.fields.matesId]] : [])))

test('a bar left behind alone is no pair any more; three of whom one leaves stay two', () => {
  const taken = accept(['a', 'c'])
  expect(matesAfter(taken.edits)).toEqual({ a: 'new1', c: 'new1', b: null })
  expect(taken.orphans).toEqual(['b'])
  expect(taken.leaves).toEqual([{ bar: 'a', behind: ['b'] }, { bar: 'c', behind: ['d', 'e'] }])
  expect(matesAfter(taken.undo)).toEqual({ a: 'm', c: 'n', b: 'm' })
})

test('odd bars leave nobody; mates that exchange partners leave nobody alone', () => {
  expect(accept(['f', 'g'])).toMatchObject({ leaves: [], orphans: [] })
  expect(accept(['a', 'f'], ['b', 'g']).orphans).toEqual([])
})

test('what are mates already stays as it is, also among more of them', () => {
  expect([areMates(['b', 'a'], bars), areMates(['c', 'd'], bars)]).toEqual([true, true])
  expect([areMates(['f', 'g'], bars), areMates(['a', 'f'], bars)]).toEqual([false, false])
  expect(accept(['a', 'b'], ['e', 'c']).edits).toEqual([])
})

test('a row of vises is one group of mates, named by what their names share', () => {
  expect(accept(['a', 'c', 'f', 'g']).edits.filter(({ kind }) => kind === 'mates')).toEqual([{ kind: 'mates', record: 'new1', fields: { name: '', note: '' } }])
  const named = acceptMates([['x', 'y']], { bars: [bar('x', null, 'Q 1'), bar('y', null, 'Q 2')] }, () => 'new')
  expect(named.edits[0]).toEqual({ kind: 'mates', record: 'new', fields: { name: 'Q', note: '' } })
})
