import { expect, test } from 'vitest'
import type { RackLine } from '#tasks/rack/list-rack.ts'
import { plainUnits } from '#words/terms.ts'
import { linesSaid } from '#cli/commands/rack-list.ts'

test('a bar in a vise is said to be there in the words of the region', () => {
  const line: RackLine = {
    id: 'a', code: 'ABCD2345', name: '35 A', heightMm: 35, standing: 'measured', thicknessMm: 8, thicknessStanding: 'marked', lengthMm: 150,
    matesId: 'm1', mates: 'A', orphan: false, slot: 'B4', trust: 'trusted', where: { at: 'vise', viseId: 'v1' }, note: '',
  }
  const said = (words: 'US' | 'UK') => linesSaid([line], { ...plainUnits, words })
  expect([said('US'), said('UK')]).toEqual([expect.stringContaining('trusted, in a vise'), expect.stringContaining('trusted, in a vice')])
})
