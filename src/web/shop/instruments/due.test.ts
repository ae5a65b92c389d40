import { expect, test } from 'vitest'
import { dueOf } from '#web/shop/instruments/due.ts'

test('overdue from the day after, due soon thirty days before', () => {
  expect(dueOf(null, '2026-03-01')).toBe('not kept')
  expect(dueOf('2026-03-01', '2026-03-01')).toBe('soon')
  expect(dueOf('2026-02-28', '2026-03-01')).toBe('overdue')
  expect(dueOf('2026-03-31', '2026-03-01')).toBe('soon')
  expect(dueOf('2026-04-01', '2026-03-01')).toBe('in date')
})
