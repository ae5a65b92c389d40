import { expect, test } from 'vitest'
import { textBoxOf } from '#drafting/lettering.ts'
import { outcomesPicture } from '#drafting/setup/outcomes-picture.ts'
import { seatPicture, type SeatPictureData } from '#drafting/setup/seat-picture.ts'

const data: SeatPictureData = {
  title: 'How it lies', description: '', lengthMm: 60, widthMm: 60, slopeUmPerMm: 0,
  bars: [{ label: '25 A', xMm: -20, yMm: 0, thicknessMm: 8, lengthMm: 100, aboveUm: 7, gapUm: 0, gapSaid: '0 µm' }, { label: '25 B', xMm: -20, yMm: 52, thicknessMm: 8, lengthMm: 100, aboveUm: 0, gapUm: 7, gapSaid: '7 µm' }],
  loose: [{ along: 0, across: 1, said: '7 µm' }, { along: 1, across: 1, said: '7 µm' }],
  words: { fixedJaw: 'fixed jaw', movingJaw: 'moving jaw', loose: 'loose', carries: 'carries', leftEnd: 'left end', times: (factor) => `gaps × ${factor}` },
}

test('the gap on paper is the gap times the factor that is stated, at the scale of the section', () => {
  const { items, widthMm } = seatPicture(data, { widthMm: 96 }), texts = items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])), factor = Number(/× (\d+)/.exec(texts[0]!)![1])
  const tops = items.flatMap((item) => (item.kind === 'shape' && item.line === 'bar' ? [Math.min(...item.points.map(([, y]) => y))] : [])), scale = (widthMm - 20) / 60
  expect(tops[1]! - tops[0]!).toBeCloseTo((7 / 1000) * scale * factor, 9)
  expect(texts.filter((text) => text === 'loose 7 µm')).toHaveLength(3)
})

test('a corner loose at the left end is crossed at the bottom, where every plan has its left end', () => {
  const marks = (along: 0 | 1) => seatPicture({ ...data, loose: [{ along, across: 1, said: '7 µm' }] }, { widthMm: 96 }).items
    .flatMap((item) => (item.kind === 'line' && item.line === 'danger' ? [item.from[1]] : item.kind === 'text' && item.text === 'left end' ? [-item.at[1]] : []))
  const atLeft = marks(0), atRight = marks(1), leftEnd = -atLeft.at(-1)!
  expect(leftEnd - atLeft[0]!).toBeLessThan(15)
  expect(leftEnd - atRight[0]!).toBeGreaterThan(35)
})

test('every word stays on the paper, whatever the gaps and the slope', () => {
  for (const slopeUmPerMm of [0, 0.3, -0.3]) for (const gapUm of [0, 0.02, 7, 400]) {
    const bars = data.bars.map((bar, at) => ({ ...bar, aboveUm: at === 0 ? gapUm : 0, gapUm: at === 1 ? gapUm : 0 })), { items, widthMm, heightMm } = seatPicture({ ...data, bars, slopeUmPerMm }, { widthMm: 96 })
    for (const item of items) if (item.kind === 'text') {
      const box = textBoxOf(item)
      expect([box.x0Mm >= 0, box.y0Mm >= 0, box.x1Mm <= widthMm, box.y1Mm <= heightMm], item.text).toEqual([true, true, true, true])
    }
  }
})

test('an outcome outside what was foretold is crossed, one inside is a dot', () => {
  const words = { thicker: 'thicker', thinner: 'thinner', scale: (um: number) => `${um} µm` }
  const { items } = outcomesPicture({ title: '', description: '', marks: [{ apartUm: 1, withinUm: 2 }, { apartUm: -5, withinUm: 2 }], words }, { widthMm: 96 })
  expect(items.filter(({ kind }) => kind === 'circle')).toHaveLength(1)
  expect(items.filter((item) => item.kind === 'line' && item.line === 'danger')).toHaveLength(2)
})
