import { expect, test } from 'vitest'
import { sayEcho } from '#web/inspect/check/say-echo.ts'

const mm = { length: 'mm', decimalMark: '.', words: 'US' } as const

// One inch is 25.4 mm by definition: 25.4 µm are 0.001 in, 25.4254 mm 1.001 in.
test.each([
  [{ um: 25.4, heightMm: 25.4254 }, mm, '+25.4 µm (+0.001 in) · 25.4254 mm (1.001 in)'],
  [{ um: -0.5, heightMm: null }, { ...mm, decimalMark: ',' as const }, '−0,5 µm (−0,00002 in)'],
  [{ um: null, heightMm: 12.7 }, { ...mm, length: 'in' as const }, '0.5 in (12.7 mm)'],
  [{ um: null, heightMm: null }, mm, null],
])('%j', (one, units, said) => expect(sayEcho(one, units)).toBe(said))
