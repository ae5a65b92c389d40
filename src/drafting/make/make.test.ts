import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { faultsOf } from '#drafting/gallery/faults.ts'
import { cutBars, cutList, cutPlate, ladder, routeSheet, stepPictures } from '#drafting/gallery/make.ts'
import { cutBarsDrawing, cutPlateDrawing } from '#drafting/make/cut-drawing.ts'
import { ladderDrawing } from '#drafting/make/ladder.ts'
import { cutListPages } from '#drafting/make/list-sheets.ts'
import { routeSheetPages } from '#drafting/make/route-sheet.ts'
import { stepPicture } from '#drafting/make/step-picture.ts'
import type { Scene, ShapeItem } from '#drafting/scene.ts'

const boxes = ({ items }: Scene, fill: string): readonly ShapeItem[] => items.filter((item): item is ShapeItem => item.kind === 'shape' && item.fill === fill)
const spanOf = ({ points }: ShapeItem, axis: 0 | 1): number => Math.max(...points.map((point) => point[axis])) - Math.min(...points.map((point) => point[axis]))
const textsOf = ({ items }: Scene): readonly string[] => items.flatMap((item) => (item.kind === 'text' ? [item.text] : []))

describe('drawings of making', () => {
  test('a ladder is to one scale, whatever is ordered, and stays inside its paper', () => {
    const bar = fc.record({ heightMm: fc.integer({ min: 5, max: 120 }), thicknessMm: fc.integer({ min: 2, max: 20 }) })
    fc.assert(fc.property(fc.array(bar, { minLength: 1, maxLength: 20 }), (bars) => {
      const scene = ladderDrawing({ ...ladder, jaw: null, bars: bars.map((one) => ({ ...one, label: String(one.heightMm) })) }, 164), drawn = boxes(scene, 'bar').map((box) => spanOf(box, 1)), scale = drawn[0]! / bars[0]!.heightMm
      drawn.forEach((mm, at) => expect(mm / bars[at]!.heightMm).toBeCloseTo(scale, 9))
      expect(faultsOf(scene)).toEqual([])
    }), { numRuns: 100, seed: 3 })
  })

  test('pieces of a cut list are as long as they are cut, a kerf apart, and none leaves its stock', () => {
    const scene = cutBarsDrawing(cutBars, 164), scale = 160 / 3000, pieces = boxes(scene, 'bar')
    expect(pieces).toHaveLength(11)
    expect(spanOf(pieces[0]!, 0) / scale).toBeCloseTo(303.5, 6)
    const [first, second] = pieces.map(({ points }) => points.map(([x]) => x))
    expect((Math.min(...second!) - Math.max(...first!)) / scale).toBeCloseTo(1.5, 6)
    const plate = cutPlateDrawing(cutPlate, 164), inside = boxes(plate, 'cut-face')[0]!, right = Math.max(...inside.points.map(([x]) => x)), bottom = Math.max(...inside.points.map(([, y]) => y))
    for (const { points } of boxes(plate, 'bar')) for (const [x, y] of points) { expect(x).toBeLessThanOrEqual(right + 1e-9); expect(y).toBeLessThanOrEqual(bottom + 1e-9) }
    expect([...faultsOf(scene), ...faultsOf(plate)]).toEqual([])
  })

  test('every step has its picture, inside its paper, with the size it leaves', () => {
    for (const step of stepPictures) {
      const scene = stepPicture(step)
      expect(faultsOf(scene), step.kind).toEqual([])
      expect(textsOf(scene)).toContain('30.65 × 10 × 150')
    }
  })

  test('a sheet says all it was given, on as many pages as that takes', () => {
    for (const paper of ['A4', 'Letter'] as const) {
      const many = { ...routeSheet, steps: Array.from({ length: 9 }, () => routeSheet.steps).flat() }, pages = routeSheetPages(many, paper), said = pages.flatMap(textsOf)
      expect(pages.length).toBeGreaterThan(2)
      expect(said.filter((text) => text === '2  Grind the edges')).toHaveLength(9)
      expect(said).toContain('0.12')
      expect([...pages, ...cutListPages(cutList, paper)].flatMap(faultsOf)).toEqual([])
    }
  })
})
