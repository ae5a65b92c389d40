import { expect, test } from 'vitest'
import { inventedShop } from '#web/setup/invented-shop.ts'
import { pathOfLabel } from '#web/rack/path-of-label.ts'

const made = inventedShop([{ heightMm: 35, name: 'C' }])
const shop = { bars: made.bars.map((bar, at) => ({ ...bar, code: at === 0 ? '7KQ4M2XP' : '7KQ4M2XQ' })), slots: made.slots.map((slot) => ({ ...slot, code: '3HJ8VWAC' })) }

test('a label leads to its bar or its slot, however it is typed', () => {
  for (const text of ['TWB7KQ4M2XP', '7KQ4M2XP', ' 7kq4-m2xp ', 'twb 7kq4 m2xp']) expect(pathOfLabel(text, shop)).toBe('/rack/35-C-1')
  for (const text of ['TWS3HJ8VWAC', '3hj8vwac']) expect(pathOfLabel(text, shop)).toBe('/rack/slot/slot-35-C')
})

test('a label that is not of this shop, or says another kind of thing, leads nowhere', () => {
  for (const text of ['', '35', 'TWB3HJ8VWAC', 'TWS7KQ4M2XP', 'ZZZZZZZZ']) expect(pathOfLabel(text, shop)).toBeNull()
})
