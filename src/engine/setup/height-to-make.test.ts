import { describe, expect, test } from 'vitest'
import { heightToMake } from '#engine/setup/height-to-make.ts'

// Worked out by hand from what the function says.
describe('the height to make', () => {
  test('is the highest half millimetre that serves', () => expect(heightToMake([27.2, 31.4], 0.5)).toBe(31))
  test('may lie on either end', () => expect([heightToMake([30, 30.4], 0.5), heightToMake([29.6, 30], 0.5)]).toEqual([30, 30]))
  test('is the middle of a window between two steps', () => expect(heightToMake([30.1, 30.3], 0.5)).toBe(30.2))
  test('comes on 32nds of an inch too', () => expect(heightToMake([25, 26], 25.4 / 32)).toBe(25.4))
})
