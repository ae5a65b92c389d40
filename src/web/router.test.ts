import { expect, test } from 'vitest'
import { routeFrom } from '#web/router.ts'

test('the first screen is the setup', () => {
  expect(routeFrom('/')).toEqual({ place: 'setup', rest: [] })
  expect(routeFrom('/setup')).toEqual({ place: 'setup', rest: [] })
})

test('what stands behind a place is handed on, escapes taken off', () => {
  expect(routeFrom('/rack/bar/35%20C')).toEqual({ place: 'rack', rest: ['bar', '35 C'] })
  expect(routeFrom('/c/7KQ4M2XP')).toEqual({ place: 'rack', rest: ['code', '7KQ4M2XP'] })
  expect(routeFrom('/shop/vise/v1/card/')).toEqual({ place: 'shop', rest: ['vise', 'v1', 'card'] })
})

test('an address we do not have is said to be none, a broken escape is kept', () => {
  expect(routeFrom('/racks')).toEqual({ place: null, rest: [] })
  expect(routeFrom('/rack/%E0%A4%A')).toEqual({ place: 'rack', rest: ['%E0%A4%A'] })
})
