import fc from 'fast-check'
import jsQR from 'jsqr'
import { describe, expect, test } from 'vitest'
import { faultsOf } from '#drafting/gallery/faults.ts'
import { labels, life, strip, years } from '#drafting/gallery/rack-sheets.ts'
import { inches, millimetres } from '#drafting/gallery/sheets.ts'
import { paperEdgeMm } from '#drafting/paper.ts'
import { coverageStrip } from '#drafting/rack/coverage-strip.ts'
import { heightOverYears } from '#drafting/rack/height-over-years.ts'
import { labelMm, labelPages } from '#drafting/rack/labels.ts'
import { lineOfLifePages } from '#drafting/rack/line-of-life.ts'
import type { Scene } from '#drafting/scene.ts'
import { codeAlphabet } from '#model/code.ts'
import { labelText, readLabel } from '#model/label-code.ts'

const textsOf = ({ items }: Scene): readonly string[] => items.flatMap((item) => (item.kind === 'text' ? [item.text] : []))

/** One strip cut out of a sheet, as pixels: inked boxes and cut lines black, 12 dots to the mm. */
function cutOut({ items }: Scene, leftMm: number, topMm: number): { pixels: Uint8ClampedArray; wide: number; high: number } {
  const perMm = 12, wide = Math.round(labelMm.widthMm * perMm), high = Math.round(labelMm.heightMm * perMm), pixels = new Uint8ClampedArray(wide * high * 4).fill(255)
  const ink = (x0: number, y0: number, x1: number, y1: number) => {
    for (let y = Math.max(0, Math.round((y0 - topMm) * perMm)); y < Math.min(high, Math.round((y1 - topMm) * perMm)); y += 1) {
      for (let x = Math.max(0, Math.round((x0 - leftMm) * perMm)); x < Math.min(wide, Math.round((x1 - leftMm) * perMm)); x += 1) pixels.set([0, 0, 0, 255], (y * wide + x) * 4)
    }
  }
  for (const item of items) {
    if (item.kind === 'line') ink(item.from[0] - 0.15, item.from[1] - 0.15, item.to[0] + 0.15, item.to[1] + 0.15)
    if (item.kind !== 'shape' || item.fill !== 'ink') continue
    const [[x0, y0], , [x1, y1]] = item.points as readonly [readonly [number, number], unknown, readonly [number, number]]
    ink(x0, y0, x1, y1)
  }
  return { pixels, wide, high }
}

describe('labels', () => {
  test.each(['A4', 'Letter'] as const)('an independent reader reads each strip cut out of a sheet of %s', (paper) => {
    const data = labels(9), [scene] = labelPages(data, paper) as [Scene]
    const across = 3, left = (scene.widthMm - across * labelMm.widthMm) / 2
    data.labels.forEach(({ qr }, i) => {
      const { pixels, wide, high } = cutOut(scene, left + (i % across) * labelMm.widthMm, paperEdgeMm + Math.floor(i / across) * labelMm.heightMm)
      expect(jsQR(pixels, wide, high)?.data).toBe(qr)
    })
  })

  test('keep to their strips, 10 to 12 mm high, on as many sheets as they need', () => {
    expect(labelMm.heightMm).toBeGreaterThanOrEqual(10)
    expect(labelMm.heightMm).toBeLessThanOrEqual(12)
    for (const paper of ['A4', 'Letter'] as const) {
      const pages = labelPages(labels(100), paper)
      expect(pages).toHaveLength(2)
      for (const scene of pages) expect(faultsOf(scene, paperEdgeMm)).toEqual([])
      const said = pages.flatMap(textsOf)
      for (const { large, code } of labels(100).labels) { expect(said).toContain(large); expect(said).toContain(code) }
    }
  })

  test('cut a name that is too long, never the height', () => {
    const [scene] = labelPages({ ...labels(1), labels: [{ ...labels(1).labels[0]!, large: '1 13/64', under: 'left over from the old grinding shop · drawer 3 at the back' }] }, 'A4') as [Scene]
    expect(textsOf(scene)).toContain('1 13/64')
    expect(faultsOf(scene, paperEdgeMm)).toEqual([])
  })

  test('carry at most 20 capitals and digits, which read back as what was written', () => {
    fc.assert(fc.property(fc.constantFrom('bar' as const, 'slot' as const), fc.array(fc.constantFrom(...Array.from(codeAlphabet)), { minLength: 8, maxLength: 8 }).map((all) => all.join('')), (kind, code) => {
      const text = labelText(kind, code)
      expect(text).toMatch(/^[A-Z0-9]{1,20}$/)
      expect(readLabel(text)).toEqual({ kind, code })
      expect(readLabel(` ${code.toLowerCase().slice(0, 4)}-${code.slice(4)} `)).toEqual({ kind: null, code })
    }), { seed: 7 })
    for (const other of ['', 'TWB', 'TWX7KQ4M2XP', '7KQ4M2X', '7KQ4M2X0', 'https://example.org']) expect(readLabel(other)).toBeNull()
  })
})

describe('the height over the years', () => {
  test('shows the latest at zero, the oldest above by what was ground off', () => {
    const scene = heightOverYears(years, { widthMm: 164, heightMm: 70, units: millimetres })
    expect(textsOf(scene)).toEqual(expect.arrayContaining(['µm from 24.99', '± U, 95 %', 'reground', '2020', '2025', '0']))
    const heights = scene.items.flatMap((item) => (item.kind === 'circle' ? [item.centre[1]] : []))
    expect((heights[4]! - heights[0]!) / (heights[4]! - heights[3]!)).toBeCloseTo(14 / 1, 6)
    expect(faultsOf(scene)).toEqual([])
  })

  test('keeps its lettering apart for any history', () => {
    const day = fc.tuple(fc.integer({ min: 1990, max: 2040 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 28 })).map(([y, m, d]) => `${y}-${String(m).padStart(2, '0')}-${String(d).padStart(2, '0')}`)
    const height = fc.record({ day, heightMm: fc.double({ min: 24, max: 26, noNaN: true }), uUm: fc.option(fc.double({ min: 0.1, max: 5, noNaN: true })) }), event = fc.record({ day, says: fc.constantFrom('reground', 'knocked', 'came back nicked and drilled, not looked at') })
    fc.assert(fc.property(fc.array(height, { minLength: 1, maxLength: 12 }), fc.array(event, { maxLength: 12 }), fc.constantFrom(95, 164), fc.constantFrom(millimetres, inches), (heights, events, widthMm, units) => {
      expect(faultsOf(heightOverYears({ ...years, heights, events }, { widthMm, heightMm: 62, units }))).toEqual([])
    }), { numRuns: 200, seed: 11 })
  })
})

describe('the strip of a vise', () => {
  test('shows where the gaps lie, true to the jaw height', () => {
    const scene = coverageStrip(strip, { widthMm: 164, units: millimetres })
    expect(textsOf(scene)).toEqual(expect.arrayContaining(['32 to 32.4: 3', '38 to 39.6: 2', '41 to 41.4: 1', '1 of 7 setups served']))
    const owned = scene.items.flatMap((item) => (item.kind === 'line' && item.line === 'bar' ? [item.from[0]] : [])).slice(1, 8)
    owned.slice(1).forEach((x, i) => expect(x - owned[i]!).toBeCloseTo(owned[1]! - owned[0]!, 6))
    expect(faultsOf(scene)).toEqual([])
  })

  test('keeps its lettering apart for any windows and gaps, and tells how many are not drawn', () => {
    const range = fc.tuple(fc.double({ min: 1, max: 60, noNaN: true }), fc.double({ min: 0, max: 8, noNaN: true })).map(([lowMm, more]) => ({ lowMm, highMm: lowMm + more, setups: 1 + Math.round(more) }))
    fc.assert(fc.property(fc.array(range.map((one) => ({ ...one, served: one.setups % 2 === 0 })), { maxLength: 60 }), fc.array(range, { maxLength: 12 }), fc.constantFrom(95, 164), (windows, gaps, widthMm) => {
      expect(faultsOf(coverageStrip({ ...strip, vises: [{ ...strip.vises[0]!, windows, gaps }] }, { widthMm, units: millimetres }))).toEqual([])
    }), { numRuns: 150, seed: 13 })
    const same = Array.from({ length: 10 }, () => ({ lowMm: 20, highMm: 30, setups: 1, served: true }))
    expect(textsOf(coverageStrip({ ...strip, vises: [{ ...strip.vises[0]!, says: 'all', windows: same }] }, { widthMm: 164, units: millimetres })).join(' ')).toContain('3 more')
  })
})

test('the line of life is one page while the history is short, and loses nothing when it is long', () => {
  for (const paper of ['A4', 'Letter'] as const) {
    expect(lineOfLifePages(life, paper)).toHaveLength(1)
    const rows = Array.from({ length: 80 }, (_, i) => ['2025-01-01', `entry number ${i}`, 'KM'] as const), pages = lineOfLifePages({ ...life, rows }, paper), said = pages.flatMap(textsOf)
    for (const scene of pages) expect(faultsOf(scene, paperEdgeMm)).toEqual([])
    for (const [, what] of rows) expect(said).toContain(what)
  }
})
