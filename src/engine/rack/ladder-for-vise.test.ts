// Own arithmetic: jaw 45, top 1 below, steps of 10 down to not below 10; 125 wide less 1.
import { expect, test } from 'vitest'
import { ladderForVise } from '#engine/rack/ladder-for-vise.ts'
import type { Bar } from '#model/bar.ts'

const bar = (id: string, heightMm: number, mates: string): Bar => ({ id, heightMm, thicknessMm: 8, lengthMm: 120, mates, trust: 'trusted', standing: 'measured', thicknessStanding: 'marked', where: 'slot' })
const wanted = { belowMm: 1, underMm: 1, stepMm: 10, lowestMm: 10, thicknessMm: 8, vises: 2, use: 'milling', hrc: null, dueDay: null, leaveOwned: true } as const
const vise = { jawHeightMm: 45, jawWidthMm: 125, openingMm: 150 }

test('a whole ladder for two vises from one form, without the rungs there are mates enough of', () => {
  const four = ['a', 'b', 'c', 'd'].map((id) => bar(id, 24.002, 'M')), two = ['e', 'f'].map((id) => bar(id, 34, 'N'))
  const { order, rungsMm, ownedMm } = ladderForVise(vise, [...four, ...two], wanted)
  expect(rungsMm).toEqual([14, 24, 34, 44])
  expect(ownedMm).toEqual([24])
  expect(order).toMatchObject({ heightsMm: [14, 34, 44], lengthMm: 124, each: 4, bars: 12 })
  expect(ladderForVise(vise, four, { ...wanted, leaveOwned: false }).order.heightsMm).toEqual([14, 24, 34, 44])
  expect(ladderForVise({ ...vise, lowerJawHeightMm: 40 }, [], wanted).rungsMm).toEqual([19, 29, 39])
  expect(() => ladderForVise({ jawHeightMm: 45, openingMm: 150 }, [], wanted)).toThrow('field-missing')
  expect(() => ladderForVise(vise, four, { ...wanted, lowestMm: 24, stepMm: 20, belowMm: 21 })).toThrow('nothing-to-order')
})
