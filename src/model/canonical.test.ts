import fc from 'fast-check'
import { expect, test } from 'vitest'
import { canonical } from '#model/canonical.ts'

// RFC 8785, section 3.2.3 (from memory): its example, the names in the order in which it sorts them, by UTF-16 code units.
test('keys stand in the order of the canonical form of JSON', () => {
  const sorted = ['Carriage Return', 'One', 'Control', 'Latin Small Letter O With Diaeresis', 'Euro Sign', 'Emoji: Grinning Face', 'Hebrew Letter Dalet With Dagesh']
  const text = canonical({
    '\u20ac': 'Euro Sign', '\r': 'Carriage Return', '\ufb33': 'Hebrew Letter Dalet With Dagesh', '1': 'One', '\ud83d\ude00': 'Emoji: Grinning Face',
    '\u0080': 'Control', '\u00f6': 'Latin Small Letter O With Diaeresis',
  })
  expect(sorted.toSorted((a, b) => text.indexOf(a) - text.indexOf(b))).toEqual(sorted)
  for (const name of sorted) expect(text).toContain(name)
})

test('the same value is the same text, in whatever order its keys stand, and stays what it was', () => {
  const turned = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(turned)
    return typeof value === 'object' && value !== null ? Object.fromEntries(Object.entries(value).toReversed().map(([key, one]) => [key, turned(one)])) : value
  }
  fc.assert(fc.property(fc.jsonValue(), (value) => {
    expect(canonical(turned(value))).toBe(canonical(value))
    expect(JSON.parse(canonical(value))).toEqual(JSON.parse(JSON.stringify(value)))
  }))
})
