// Bars of unlike thickness are no pair: common practice, no source. Differences by own arithmetic.
import { expect, test } from 'vitest'
import { matesBySize, type SizedMeasuredBar } from '#engine/inspect/mates-by-size.ts'

const limits = { drilling: 25, milling: 10, 'fine milling': 5, grinding: 2 }
const bar = (id: string, um: readonly number[], thicknessMm = 8): SizedMeasuredBar => ({
  id, thicknessMm, lengthMm: 100, check: 'c', atIso: '2026-03-02T08:00:00.000Z', heightMm: 25 + (um[0] ?? 0) / 1000, uUm: 0.5, uAloneUm: 0.4, uses: [],
  profile: um.map((one, at) => [5 + (90 * at) / (um.length - 1), 25 + one / 1000]),
})
const flat = (id: string, um: number): SizedMeasuredBar => ({ ...bar(id, []), heightMm: 25 + um / 1000 })

test('the nearest of one thickness, each way round', () => {
  // b turned end for end lies within 1 µm of a; c is nearer to a than either, but thicker.
  const { groups, leftOver } = matesBySize([bar('a', [0, 2, 4]), bar('b', [4, 2, 1]), bar('c', [0, 2, 4], 12)], { want: 'pairs', withinUm: 5 }, limits)
  expect(groups.map(({ bars, turnOne, worstUm }) => ({ bars, turnOne, worstUm }))).toEqual([{ bars: ['a', 'b'], turnOne: true, worstUm: 1 }])
  expect(leftOver).toEqual(['c'])
})

test('a bar without places leaves the profiles of the others as they are', () => {
  const { groups, findings } = matesBySize([bar('a', [0, 5, 0]), bar('b', [0, 5, 1]), flat('c', 0), flat('d', 3)], { want: 'pairs', withinUm: 5 }, limits)
  expect(groups.map(({ bars }) => bars.join(''))).toEqual(['ab', 'cd'])
  expect(findings).toHaveLength(1)
})

test('a row takes the lot of least spread', () => {
  const lots = [bar('a', [0, 0, 0]), bar('b', [9, 9, 9]), bar('c', [0, 0, 0], 12), bar('d', [2, 2, 2], 12)]
  expect(matesBySize(lots, { want: 'row', vises: 1 }, limits)).toMatchObject({ row: { spreadUm: 2 }, leftOver: ['a', 'b'] })
  expect(() => matesBySize(lots, { want: 'row', vises: 2 }, limits)).toThrow('too-few-bars')
})
