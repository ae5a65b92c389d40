// Sizes by hand: two bars of 6 at the jaws of a part of 40 × 60 leave 28 between them, from 6 to 34.
import { expect, test } from 'vitest'
import type { Bar } from '#model/bar.ts'
import type { Cut, Hole } from '#model/cut.ts'
import { drillPlaceOf } from '#engine/setup/hold/drill-place.ts'

const bars = new Map(['a', 'b'].map((id) => [id, { id, heightMm: 30, thicknessMm: 6, lengthMm: 50 } as Bar]))
const choice = { bars: ['a', 'b'], stand: 'on edge', places: [{ xMm: 5, yMm: 0 }, { xMm: 5, yMm: 34 }], base: { x0Mm: 5, x1Mm: 55, y0Mm: 0, y1Mm: 40 } } as const
const hole = (yMm: number, more: Partial<Hole> = {}): Hole => ({ kind: 'hole', xMm: 30, yMm, diameterMm: 8, tool: 'drill', through: true, runThroughMm: 1, pointAngleDeg: 118, leadThreads: 0, ...more })
const at = (...cuts: readonly Cut[]) => drillPlaceOf({ cuts, part: { shape: 'block', betweenJawsMm: 40, alongJawsMm: 60, heightMm: 20, hollows: [] } }, choice, bars)

test('midway between the bars while no hole is drilled', () => {
  expect(at()).toEqual({ largestMm: null, carried: true, betweenBarsMm: 28 })
  expect(at(hole(20, { tool: 'ream' }))).toMatchObject({ largestMm: null })
})

test('between the bars, over one, and the largest of several', () => {
  expect(at(hole(20))).toEqual({ largestMm: 8, carried: true, betweenBarsMm: 28 })
  expect(at(hole(3, { through: false, depthMm: 5 }))).toEqual({ largestMm: 8, carried: true, betweenBarsMm: null })
  expect(at(hole(3), hole(20, { diameterMm: 5 }))).toEqual({ largestMm: 8, carried: true, betweenBarsMm: 28 })
})

test('nothing under a hole past the ends of the bars, or under one that may stand there', () => {
  expect(at(hole(20, { xMm: 57 })).carried).toBe(false)
  expect(at(hole(20), hole(20, { xMm: null })).carried).toBe(false)
})

test('on the bed all of it is carried', () => {
  expect(drillPlaceOf({ cuts: [hole(20)], part: { shape: 'block', betweenJawsMm: 40, alongJawsMm: 60, heightMm: 20, hollows: [] } }, { bars: [], stand: 'bed', places: [], base: null }, bars)).toEqual({ largestMm: 8, carried: true, betweenBarsMm: null })
})
