import { expect, test } from 'vitest'
import { viseCardOf } from '#engine/setup/card.ts'
import { defaultWishes } from '#engine/setup/read-wishes.ts'

const vise = { jawHeightMm: 45, openingMm: 150 }

// By hand: J + K − P, J − P, 2 · tan 59° · (P − 1.5 − B) with tan 59° = 1.664279 from a table of functions.
test('each pair says from which finished height it works, what is gripped, which drill is clear of the bed', () => {
  const rows = viseCardOf({ vise, wishes: defaultWishes, pairs: [{ name: '35', slot: 'B2', heightMm: 35 }, { name: '5', slot: null, heightMm: 5 }, { name: '2', slot: null, heightMm: 2 }] })
  expect(rows).toEqual([
    { name: '2', slot: null, heightMm: 2, worksFromMm: 44, gripMm: 43, largestDrillMm: null },
    { name: '5', slot: null, heightMm: 5, worksFromMm: 41, gripMm: 40, largestDrillMm: expect.closeTo(2 * 1.664279 * 2.5, 4) },
    { name: '35', slot: 'B2', heightMm: 35, worksFromMm: 11, gripMm: 10, largestDrillMm: expect.closeTo(2 * 1.664279 * 32.5, 3) },
  ])
})

test('the higher jaw has to be cleared, the lower one grips; equals stand by name, a pair level with the lower jaw is left out', () => {
  const pairs = [{ name: 'b', slot: null, heightMm: 43.5 }, { name: 'level', slot: null, heightMm: 44 }, { name: 'a', slot: null, heightMm: 43.5 }]
  const rows = viseCardOf({ vise: { ...vise, lowerJawHeightMm: 44 }, wishes: defaultWishes, pairs })
  expect(rows.map((row) => row.name)).toEqual(['a', 'b'])
  expect(rows[0]).toMatchObject({ worksFromMm: 2.5, gripMm: 0.5 })
})
