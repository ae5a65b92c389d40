import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { onPlate, pairMatched, profile, seriesAt, turnedBar, turnedOver } from '#drafting/gallery/checks.ts'
import { faultsOf } from '#drafting/gallery/faults.ts'
import { inches, millimetres } from '#drafting/gallery/sheets.ts'
import { barOnPlate } from '#drafting/inspect/bar-on-plate.ts'
import { pairMatch } from '#drafting/inspect/pair-match.ts'
import { profileDrawing } from '#drafting/inspect/profile.ts'
import { turnOverDrawing } from '#drafting/inspect/turn-over.ts'
import type { Scene } from '#drafting/scene.ts'
import { terminalFrom } from '#drafting/terminal.ts'

const textsOf = ({ items }: Scene): readonly string[] => items.flatMap((item) => (item.kind === 'text' ? [item.text] : []))
const drawnAs = { widthMm: 164, heightMm: 34, units: millimetres }

/** Open lines of more than two points: the profiles. */
const pathsOf = ({ items }: Scene) => items.flatMap((item) => (item.kind === 'shape' && !item.closed && item.points.length > 2 ? [item.points] : []))

describe('the profile', () => {
  test('enlarges heights against lengths by what it says', () => {
    fc.assert(fc.property(fc.array(fc.double({ min: -300, max: 300, noNaN: true }), { minLength: 3, maxLength: 9 }), fc.integer({ min: 80, max: 250 }), fc.constantFrom(millimetres, inches), (ums, widthMm, units) => {
      const scene = profileDrawing({ ...profile, series: [seriesAt('one', ums)] }, { widthMm, heightMm: 30, units }), [points] = pathsOf(scene) as [readonly (readonly [number, number])[]]
      expect(textsOf(scene).join(' ')).toContain(`heights ${String(scene.times).replace(/(?<=\d)(?=(\d{3})+$)/g, ' ')} × the lengths`)
      const perLength = (points.at(-1)![0] - points[0]![0]) / 140, perUm = scene.times * perLength / 1000
      ums.forEach((um, i) => expect(points[0]![1] - points[i]![1]).toBeCloseTo((um - ums[0]!) * perUm, 6))
    }), { numRuns: 200, seed: 1 })
  })

  test('keeps readings and whiskers on the paper, and zero and limits where they are near', () => {
    fc.assert(fc.property(fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 2, maxLength: 7 }), fc.double({ min: 0, max: 5, noNaN: true }), (ums, uUm) => {
      const scene = profileDrawing({ ...profile, series: [seriesAt('one', ums, uUm)] }, drawnAs)
      for (const item of scene.items) if (item.kind === 'line') for (const [, y] of [item.from, item.to]) { expect(y).toBeGreaterThan(-0.01); expect(y).toBeLessThan(scene.heightMm + 0.01) }
      expect(faultsOf(scene)).toEqual([])
    }), { numRuns: 200, seed: 3 })
    expect(textsOf(profileDrawing(profile, drawnAs))).toEqual(expect.arrayContaining(['zero: block of 25', '5 µm, fine milling', '0', '+6']))
    const far = profileDrawing({ ...profile, series: [seriesAt('one', [203, 204, 202])], band: null }, drawnAs)
    expect(textsOf(far)).not.toContain('0')
    expect(far.times).toBeGreaterThan(2000)
  })

  test('is there in the terminal', () => {
    const text = terminalFrom(profileDrawing(profile, { widthMm: 110, heightMm: 44, units: millimetres }), 78)
    expect(text).toContain('heights')
    expect(text).toContain('25 A, bar 1')
    expect(text).toMatch(/[\u2801-\u28ff]/)
  })
})

describe('bars on the plate', () => {
  test('give every reading a field of its own that a finger can hit, in the order of the stations', () => {
    fc.assert(fc.property(fc.integer({ min: 2, max: 25 }), fc.integer({ min: 95, max: 260 }), fc.constantFrom(millimetres, inches), (count, widthMm, units) => {
      const data = onPlate(count), scene = barOnPlate(data, { widthMm, units, fields: 'spots' })
      expect(scene.fields.map(({ name }) => name)).toEqual(data.bars.flatMap(({ rows }) => rows.flatMap(({ keys }) => keys)))
      for (const { widthMm: wide, heightMm } of scene.fields) { expect(wide).toBeGreaterThanOrEqual(19); expect(heightMm).toBeGreaterThanOrEqual(19) }
      expect(faultsOf(scene)).toEqual([])
    }), { numRuns: 150, seed: 5 })
  })

  test('put each of few fields over its station', () => {
    const scene = barOnPlate(onPlate(3), { widthMm: 164, units: millimetres, fields: 'spots' }), scale = (scene.fields[2]!.at[0] - scene.fields[0]!.at[0]) / 140
    expect(scene.fields[1]!.at[0] - scene.fields[0]!.at[0]).toBeCloseTo(70 * scale, 6)
  })

  test('say what was typed where there are no fields, and which reading comes next', () => {
    const scene = barOnPlate(onPlate(5), { widthMm: 95, units: millimetres, fields: 'none' })
    expect(scene.fields).toEqual([])
    expect(textsOf(scene)).toEqual(expect.arrayContaining(['+2', '+3', '?', 'marked end']))
    expect(faultsOf(scene)).toEqual([])
  })

  test('name rows and the marked end of a bar that is too low to write on', () => {
    const scene = barOnPlate(onPlate(3, { bars: [turnedBar], zero: null, current: null }), { widthMm: 164, units: millimetres, fields: 'spots' })
    expect(textsOf(scene)).toEqual(expect.arrayContaining(['face A up', 'face B up', 'marked end', '4 × 10 × 150']))
    expect(faultsOf(scene)).toEqual([])
  })
})

describe('a pair', () => {
  test('shows its worst place as laid and turned', () => {
    // +3 +4 +2 and +6 +5 +4, by hand: as laid 3 at the marked end; turned 4, 2 against 6.
    const scene = pairMatch(pairMatched, { widthMm: 164, units: millimetres }), bold = scene.items.flatMap((item) => (item.kind === 'text' && item.bold ? [item.text] : []))
    expect(bold).toEqual(['As laid', '3', '25 A, bar 2 turned', '4'])
    const [asLaid, , turned] = scene.items.filter((item) => item.kind === 'dimension').flatMap((item) => [item.from[0], item.to[0]])
    expect(asLaid!).toBeLessThan(60)
    expect(turned!).toBeGreaterThan(130)
    for (const widthMm of [95, 164]) expect(faultsOf(pairMatch(pairMatched, { widthMm, units: millimetres }))).toEqual([])
  })
})

test('turn-over keeps its lettering apart', () => {
  for (const widthMm of [95, 164]) expect(faultsOf(turnOverDrawing(turnedOver, { widthMm, units: millimetres }))).toEqual([])
})
