import fc from 'fast-check'
import { expect, test } from 'vitest'
import { textOf } from '#drafting/items.ts'
import { fitted, shortened, textBoxOf, textWidthMm, wrapped } from '#drafting/lettering.ts'

test('widths are a little above those of the bundled face', () => {
  // Measured in Chromium with Atkinson Hyperlegible Next, tabular figures, at 100 px.
  const measured: readonly (readonly [string, number, boolean])[] = [
    ['35 C', 223.5, true], ['fixed jaw', 386.6, false], ['Section', 331.7, false], ['two bars on edge', 760.5, false], ['clear of the jaws', 717.5, false],
    ['Mill 1, vise 125', 742.1, true],
  ]
  for (const [text, px, bold] of measured) {
    const ratio = textWidthMm(text, 100, bold) / px
    expect(ratio, text).toBeGreaterThan(0.98)
    expect(ratio, text).toBeLessThan(1.15)
  }
})

test('lines keep every word and their width', () => {
  fc.assert(fc.property(fc.lorem({ maxCount: 30 }), fc.integer({ min: 12, max: 80 }), (text, width) => {
    const lines = wrapped(text, width, 3.6)
    expect(lines.join('').replace(/\s/g, '')).toBe(text.replace(/\s/g, ''))
    for (const line of lines) expect(textWidthMm(line, 3.6)).toBeLessThanOrEqual(width)
  }), { numRuns: 200, seed: 1 })
  expect(wrapped('a  b', 100, 3.6)).toEqual(['a b'])
  for (let width = 20; width < 80; width += 1) expect(wrapped('Spring or filler between: 47.3 mm. By 12 µm.', width, 3.6).filter((line) => /^(mm|µm)/.test(line))).toEqual([])
  expect(wrapped('Donaudampfschiff', 12, 3.6).join('')).toBe('Donaudampfschiff')
})

test('a text is lettered smaller before it is cut', () => {
  fc.assert(fc.property(fc.lorem({ maxCount: 6 }), fc.integer({ min: 12, max: 80 }), (text, width) => {
    const said = fitted(text, width, [9, 6, 3])
    expect(textWidthMm(said.text, said.sizeMm)).toBeLessThanOrEqual(width)
    for (const larger of [9, 6, 3]) if (larger > said.sizeMm) expect(textWidthMm(text, larger)).toBeGreaterThan(width)
    expect(said.text === text || said.sizeMm === 3).toBe(true)
  }), { numRuns: 200, seed: 1 })
})

test('what is cut says so', () => {
  expect(shortened('35 C', 20, 3.6)).toBe('35 C')
  expect(shortened('22.225 left over from the lathe', 20, 3.6)).toMatch(/^22.*…$/)
  expect(textWidthMm(shortened('22.225 left over from the lathe', 20, 3.6), 3.6)).toBeLessThanOrEqual(20)
})

test('a turned text stands on its point', () => {
  const level = textBoxOf(textOf([10, 10], '35 C', { anchor: 'middle' })), upright = textBoxOf(textOf([10, 10], '35 C', { anchor: 'middle', turnDeg: 90 }))
  expect(upright.y1Mm - upright.y0Mm).toBeCloseTo(level.x1Mm - level.x0Mm, 9)
  expect(upright.x1Mm - upright.x0Mm).toBeCloseTo(level.y1Mm - level.y0Mm, 9)
})
