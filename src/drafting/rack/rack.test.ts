import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { faultsOf } from '#drafting/gallery/faults.ts'
import { barCard, inches, inchShelf, millimetres, shelf } from '#drafting/gallery/sheets.ts'
import { barDrawing } from '#drafting/rack/bar-card.ts'
import { type ShelfData, shelfDrawing } from '#drafting/rack/shelf.ts'
import type { Scene, ShapeItem } from '#drafting/scene.ts'

const shapesOf = ({ items }: Scene, line: string): readonly ShapeItem[] => items.filter((item): item is ShapeItem => item.kind === 'shape' && item.line === line)
const heightOf = ({ points }: ShapeItem): number => Math.max(...points.map(([, y]) => y)) - Math.min(...points.map(([, y]) => y))

describe('the shelf', () => {
  test('shows every bar true to scale, lowest first, with its slot, and a gap for each missing height', () => {
    const scene = shelfDrawing({ ...shelf, groups: shelf.groups.toReversed() }, { widthMm: 164, units: millimetres })
    const wanted = shelf.groups.flatMap(({ heightMm, thicknessesMm }) => thicknessesMm.map(() => heightMm * scene.scale))
    const leftToRight = (a: number, b: number) => scene.fields[a]!.at[1] - scene.fields[b]!.at[1] || scene.fields[a]!.at[0] - scene.fields[b]!.at[0]
    const inReadingOrder = scene.fields.map((_, i) => i).toSorted(leftToRight).map((i) => shelf.groups.find(({ id }) => id === scene.fields[i]!.name)!.heightMm)
    expect(inReadingOrder).toEqual(inReadingOrder.toSorted((a, b) => a - b))
    const drawn = [...shapesOf(scene, 'bar'), ...shapesOf(scene, 'thin')].map(heightOf)
    expect(drawn.toSorted((a, b) => a - b).map((mm) => mm.toFixed(6))).toEqual(wanted.toSorted((a, b) => a - b).map((mm) => mm.toFixed(6)))
    expect(shapesOf(scene, 'hidden').map(heightOf).map((mm) => (mm / scene.scale).toFixed(6))).toEqual(shelf.missingMm.map((mm) => mm.toFixed(6)))
    expect(scene.fields.map(({ name }) => name).toSorted()).toEqual(shelf.groups.map(({ id }) => id).toSorted())
    const said = scene.items.flatMap((item) => (item.kind === 'text' ? [item.text] : []))
    for (const { slot } of shelf.groups) expect(said).toContain(slot)
    expect(faultsOf(scene)).toEqual([])
    expect(faultsOf(shelfDrawing(inchShelf, { widthMm: 95, units: inches }))).toEqual([])
  })

  test('keeps its lettering and fields apart whatever stands on it', () => {
    const group = fc.record({ heightMm: fc.integer({ min: 2, max: 150 }), thick: fc.array(fc.integer({ min: 1, max: 25 }), { minLength: 1, maxLength: 4 }), slot: fc.constantFrom('', 'B4', 'drawer 3 at the back'), away: fc.boolean() })
    fc.assert(fc.property(fc.array(group, { maxLength: 40 }), fc.array(fc.integer({ min: 5, max: 60 }), { maxLength: 5 }), fc.constantFrom(millimetres, inches), (groups, missingMm, units) => {
      const data: ShelfData = { title: '', description: '', missingMm, groups: groups.map(({ heightMm, thick, slot, away }, i) => ({ id: String(i), heightMm, thicknessesMm: thick, slot, away })) }
      expect(faultsOf(shelfDrawing(data, { widthMm: 164, units }))).toEqual([])
    }), { numRuns: 200, seed: 2 })
  })
})

describe('the drawing of a bar', () => {
  test('is whole where it can be seen, to scale, with its three sizes', () => {
    const scene = barDrawing(barCard, { widthMm: 120, heightMm: 70, units: millimetres })
    expect(shapesOf(scene, 'bar').map(heightOf).map((mm) => mm / scene.scale)).toContainEqual(expect.closeTo(35.002, 6))
    const said = scene.items.flatMap((item) => (item.kind === 'text' ? [item.text] : []))
    expect(said).toEqual(expect.arrayContaining(['35.002', '150', '6', '35 C', 'marked end']))
    expect(faultsOf(scene)).toEqual([])
  })

  test('cuts a long low bar and still says its whole length', () => {
    const scene = barDrawing({ ...barCard, heightMm: 8, thicknessMm: 20, lengthMm: 300 }, { widthMm: 120, heightMm: 45, units: millimetres })
    expect(scene.items.some((item) => item.kind === 'text' && item.text === '300')).toBe(true)
    const length = scene.items.flatMap((item) => (item.kind === 'dimension' && item.from[1] === item.to[1] ? [item.to[0] - item.from[0]] : []))
    expect(Math.max(...length)).toBeLessThan(300 * scene.scale)
    expect(faultsOf(scene)).toEqual([])
  })

  test('keeps its lettering apart for any bar', () => {
    const size = fc.integer({ min: 2, max: 100 })
    fc.assert(fc.property(size, size, fc.integer({ min: 20, max: 500 }), (heightMm, thicknessMm, lengthMm) => {
      expect(faultsOf(barDrawing({ ...barCard, heightMm, thicknessMm, lengthMm }, { widthMm: 110, heightMm: 70, units: millimetres }))).toEqual([])
    }), { numRuns: 300, seed: 4 })
  })
})
