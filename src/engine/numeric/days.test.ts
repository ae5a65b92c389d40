// Against the calendar of the JavaScript engine (Gregorian, in UTC).
import { expect, test } from 'vitest'
import { dayNumber, dayOf } from '#engine/numeric/days.ts'

test('days follow each other through leap years and centuries', () => {
  const start = Date.UTC(1995, 0, 1), first = dayNumber('1995-01-01')
  for (let day = 0; day < 40_000; day += 1) {
    const text = new Date(start + day * 86_400_000).toISOString().slice(0, 10)
    if (dayNumber(text) !== first + day || dayOf(first + day) !== text) throw new Error(`${text}: ${dayNumber(text)}, ${dayOf(first + day)}`)
  }
  expect(dayNumber('2000-03-01') - dayNumber('2000-02-28')).toBe(2)
  expect(dayNumber('2100-03-01') - dayNumber('2100-02-28')).toBe(1)
})
