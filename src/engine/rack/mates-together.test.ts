import { expect, test } from 'vitest'
import { calledFrom } from '#engine/rack/marked-height.ts'
import { matesTogether } from '#engine/rack/mates-together.ts'
import type { Bar } from '#model/bar.ts'

const bar = (id: string, heightMm: number, mates?: string): Bar => ({ id, heightMm, ...(mates === undefined ? {} : { mates }) }) as Bar

test('mates stand together, each group lowest first; an odd bar, and one whose mate is not there, are in none', () => {
  const groups = matesTogether([bar('b', 35.002, 'C'), bar('odd', 20), bar('a', 35, 'C'), bar('x', 10, 'D'), bar('c', 35, 'C')])
  expect(groups.map((group) => group.map(({ id }) => id))).toEqual([['a', 'c', 'b']])
})

test('a bar is called by its mark until it is a tenth away from it', () => {
  expect([calledFrom(34.96, 35), calledFrom(35.09, 35), calledFrom(34.89, 35), calledFrom(20.004, null)]).toEqual([35, 35, 34.89, 20])
})
