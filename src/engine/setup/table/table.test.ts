import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { answerTable } from '#engine/setup/table/answer-table.ts'
import { hullOf, isInside, type Point } from '#engine/setup/table/hull.ts'

// Worked by hand: a 10 mm hole 15 from the edge spans 10 to 20 along; a bar from the part's edge may be 9.5 thick with the
// usual 0.5 of air, 8 with 2 wished for.
test.each([{ thicknessMm: 9.5, airMm: 0.5, fouled: [] }, { thicknessMm: 9.6, airMm: 0.5, fouled: [0] }, { thicknessMm: 8, airMm: 2, fouled: [] }, { thicknessMm: 8.1, airMm: 2, fouled: [0] }])(
  'a bar $thicknessMm thick at the edge, $airMm of air', ({ thicknessMm, airMm, fouled }) => {
    const { fouledHoles } = answerTable({
      part: { betweenJawsMm: 100, alongJawsMm: 150, heightMm: 20 }, cuts: [{ kind: 'hole', xMm: 15, yMm: 50, diameterMm: 10 }], wishes: { holeAirMm: airMm },
      bars: [{ xMm: 0, yMm: 0, thicknessMm, lengthMm: 100, turned: true }, { xMm: 150 - thicknessMm, yMm: 0, thicknessMm, lengthMm: 100, turned: true }],
    })
    expect(fouledHoles).toEqual([fouled, []])
  })

test('holes beyond bars that end short of the part tip it; a bar beside the part carries nothing', () => {
  const raw = {
    part: { betweenJawsMm: 100, alongJawsMm: 150, heightMm: 20 },
    cuts: [{ kind: 'hole', xMm: 75, yMm: 50, diameterMm: 6 }, { kind: 'hole', xMm: 75, yMm: 95, diameterMm: 6, through: false, depthMm: 5 }],
    bars: [{ xMm: 0, yMm: 10, thicknessMm: 8, lengthMm: 80, turned: true }, { xMm: 142, yMm: 10, thicknessMm: 8, lengthMm: 80, turned: true }],
  }
  expect(answerTable(raw).findings).toEqual([{ code: 'tips-under-thrust', index: 1 }])
  const beside = { ...raw, bars: [raw.bars[0], { ...raw.bars[1], xMm: 160 }] }
  expect(answerTable(beside).findings).toEqual([{ code: 'tips-under-thrust', index: 0 }, { code: 'tips-under-thrust', index: 1 }])
})

test('the cautions follow what is done', () => {
  const bars = [{ xMm: 0, yMm: 0, thicknessMm: 8, lengthMm: 100, turned: true }, { xMm: 142, yMm: 0, thicknessMm: 8, lengthMm: 100, turned: true }], part = { betweenJawsMm: 100, alongJawsMm: 150, heightMm: 20 }
  expect(answerTable({ part, bars, cuts: [{ kind: 'hole', xMm: 75, yMm: 50, diameterMm: 6 }] }).situations).toEqual(['straps', 'drilling through'])
  expect(answerTable({ part, bars, cuts: [{ kind: 'face', depthMm: 1 }] }).situations).toEqual(['straps', 'milling over bars'])
})

describe('the outline around points', () => {
  const point = fc.tuple(fc.integer({ min: -6, max: 6 }), fc.integer({ min: -6, max: 6 }))

  // Carathéodory's theorem: a point is in the outline if and only if it is in a triangle (or on a piece, or at a point) of those given.
  test('holds what lies in a triangle of three of the points, and nothing else', () => {
    const cross = ([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point) => (bx - ax) * (cy - ay) - (by - ay) * (cx - ax)
    const inTriangle = (a: Point, b: Point, c: Point, p: Point) => {
      const turns = [cross(a, b, p), cross(b, c, p), cross(c, a, p)]
      if (cross(a, b, c) !== 0) return turns.every((one) => one >= 0) || turns.every((one) => one <= 0)
      const between = (k: 0 | 1) => Math.min(a[k], b[k], c[k]) <= p[k] && p[k] <= Math.max(a[k], b[k], c[k])
      return turns.every((one) => one === 0) && between(0) && between(1)
    }
    fc.assert(fc.property(fc.array(point, { minLength: 1, maxLength: 7 }), point, (points, asked) => {
      const inAny = points.some((a) => points.some((b) => points.some((c) => inTriangle(a, b, c, asked))))
      expect(isInside(hullOf(points), asked)).toBe(inAny)
    }), { numRuns: 2000 })
  })

  test('holds nothing where there are no points', () => expect(isInside(hullOf([]), [0, 0])).toBe(false))
})
