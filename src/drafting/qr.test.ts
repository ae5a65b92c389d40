import jsQR from 'jsqr'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { qrScene } from '#drafting/qr.ts'
import type { Scene } from '#drafting/scene.ts'

/** The boxes of a code as pixels, white where nothing was painted. */
function pixelsOf({ items, widthMm }: Scene, side: number): Uint8ClampedArray {
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255), perMm = side / widthMm
  for (const item of items) {
    if (item.kind !== 'shape' || item.fill !== 'ink') continue
    const [[x0, y0], , [x1, y1]] = item.points as readonly [readonly [number, number], unknown, readonly [number, number]]
    for (let y = Math.round(y0 * perMm); y < Math.round(y1 * perMm); y += 1) {
      for (let x = Math.round(x0 * perMm); x < Math.round(x1 * perMm); x += 1) pixels.set([0, 0, 0, 255], (y * side + x) * 4)
    }
  }
  return pixels
}

/** Read by jsQR, a reader that has nothing to do with the writer. */
const read = (text: string, side = 500) => jsQR(pixelsOf(qrScene(text, { title: 'code', widthMm: 60 }), side), side, side)?.data

test('an independent reader reads what was written', () => {
  expect(read('https://192.168.1.20:4173/shop/enrol#K7MN2PQR')).toBe('https://192.168.1.20:4173/shop/enrol#K7MN2PQR')
  expect(read('B4')).toBe('B4')
})

test('and so for any address', () => {
  fc.assert(fc.property(fc.webUrl({ withFragments: true }).filter((url) => url.length < 100), (url) => { expect(read(url, 400)).toBe(url) }), { numRuns: 8 })
})

test('four modules of white stand around it', () => {
  // ISO/IEC 18004, 6.3.8. A version 1 code is 21 modules wide (6.3.1), so 29 with its quiet zone.
  const { items, widthMm, heightMm } = qrScene('B4', { title: 'code', widthMm: 29 })
  const xs = items.slice(1).flatMap((item) => (item.kind === 'shape' ? item.points.map(([x]) => x) : []))
  expect([widthMm, heightMm, Math.min(...xs), Math.max(...xs)]).toEqual([29, 29, 4, 25])
})
