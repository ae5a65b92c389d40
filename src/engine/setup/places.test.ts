import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Rect } from '#model/part.ts'
import type { Place } from '#model/setup.ts'
import { obstaclesOf, type InTheWay, type PartInPlan } from '#engine/setup/obstacles.ts'
import { inTheWayAtPlain, placesOf } from '#engine/setup/places.ts'
import type { BarInPlan } from '#engine/setup/support.ts'
import { isInEndCut } from '#engine/setup/travel.ts'

const wishes = { holeAirMm: 0.5, gapMm: 2, airMm: 1, carryMm: 10 }
const hole = (xMm: number | null, yMm: number, diameterMm: number): InTheWay =>
  ({ kind: 'hole', tool: 'drill', through: true, xMm, yMm, diameterMm, runThroughMm: 1.5, pointAngleDeg: 118, leadThreads: 4 })
const block = (betweenJawsMm: number | null, alongJawsMm: number | null): PartInPlan => ({ shape: 'block', betweenJawsMm, alongJawsMm, heightMm: null, hollows: [] })

type Case = { readonly part: PartInPlan & { betweenJawsMm: number; alongJawsMm: number }; readonly list: readonly InTheWay[]; readonly bars: readonly BarInPlan[] }

const tenths = (least: number, most: number) => fc.integer({ min: least * 10, max: most * 10 }).map((n) => n / 10)
const inTheWay = (w: number, l: number): fc.Arbitrary<InTheWay> => fc.oneof(
  { weight: 3, arbitrary: fc.tuple(tenths(0, l), tenths(0, w), tenths(2, 20)).map(([x, y, d]) => hole(x, y, d)) },
  { weight: 1, arbitrary: fc.tuple(tenths(-5, l), tenths(1, 40), tenths(-5, w), tenths(1, 30)).map(([x, dx, y, dy]): InTheWay => ({ kind: 'through', rect: { x0Mm: x, x1Mm: x + dx, y0Mm: y, y1Mm: y + dy } })) },
)
const cases: fc.Arbitrary<Case> = fc.tuple(fc.integer({ min: 12, max: 90 }), fc.integer({ min: 30, max: 200 })).chain(([w, l]) => fc.record({
  part: fc.constant({ shape: 'block' as const, betweenJawsMm: w, alongJawsMm: l, heightMm: null, hollows: [] }),
  list: fc.array(inTheWay(w, l), { maxLength: 9 }),
  bars: fc.array(fc.record({ acrossMm: tenths(2, 12), lengthMm: fc.oneof(tenths(15, 100), fc.constant(150)) }), { minLength: 1, maxLength: 2 }),
}))

const answer = ({ part, list, bars }: Case) => placesOf(obstaclesOf(part, list, wishes), bars)

/** Distance between two rectangles, 0 where they touch, −1 where they overlap: by corners and sides, without the code under test. */
function distanceMm(a: Rect, b: Rect): number {
  const dx = Math.max(a.x0Mm - b.x1Mm, b.x0Mm - a.x1Mm), dy = Math.max(a.y0Mm - b.y1Mm, b.y0Mm - a.y1Mm)
  if (dx > 0 && dy > 0) return Math.sqrt(dx * dx + dy * dy)
  return Math.max(dx, dy) >= -1e-9 ? Math.max(dx, dy, 0) : -1
}

/** How much air a bar at a place has beyond what it needs; negative where it lacks some. */
function spareMm(bar: BarInPlan, place: Place, list: readonly InTheWay[]): number {
  const stands = { x0Mm: place.xMm, x1Mm: place.xMm + bar.lengthMm, y0Mm: place.yMm, y1Mm: place.yMm + bar.acrossMm }
  return Math.min(Infinity, ...list.map((entry) => {
    if (entry.kind === 'hole') {
      const x = Math.min(Math.max(entry.xMm!, stands.x0Mm), stands.x1Mm), y = Math.min(Math.max(entry.yMm, stands.y0Mm), stands.y1Mm)
      return Math.hypot(entry.xMm! - x, entry.yMm - y) - entry.diameterMm / 2 - wishes.holeAirMm
    }
    return entry.kind === 'through' ? distanceMm(stands, entry.rect) - wishes.holeAirMm : Infinity
  }))
}

const wantedY = (w: number, bars: readonly BarInPlan[], k: number) => (bars.length === 1 ? (w - bars[0]!.acrossMm) / 2 : k === 0 ? 0 : w - bars[k]!.acrossMm)
const placed = (status: string) => !['fouled', 'too-thick', 'bar-in-cut'].includes(status)

describe('places found', () => {
  test('are clear of everything, on the part, and keep their distance', () => {
    fc.assert(fc.property(cases, (one) => {
      const { status, places } = answer(one), { betweenJawsMm: w, alongJawsMm: l } = one.part
      fc.pre(placed(status))
      places.forEach((place, k) => {
        const bar = one.bars[k]!
        expect(spareMm(bar, place, one.list)).toBeGreaterThan(-2e-6)
        expect(place.yMm).toBeGreaterThanOrEqual(-1e-6)
        expect(place.yMm + bar.acrossMm).toBeLessThanOrEqual(w + 1e-6)
        if (bar.lengthMm >= l) expect(place.xMm).toBeCloseTo((l - bar.lengthMm) / 2, 9)
        else expect(place.xMm >= -1e-6 && place.xMm + bar.lengthMm <= l + 1e-6).toBe(true)
      })
      if (places.length === 2) expect(places[1]!.yMm - places[0]!.yMm - one.bars[0]!.acrossMm).toBeGreaterThanOrEqual(wishes.gapMm - 1e-6)
    }), { numRuns: 400 })
  })

  test('are not bettered by any place of a grid', () => {
    fc.assert(fc.property(cases, (one) => {
      const { status, places } = answer(one), { betweenJawsMm: w, alongJawsMm: l } = one.part
      fc.pre(placed(status))
      places.forEach((place, k) => {
        const bar = one.bars[k]!, wanted = wantedY(w, one.bars, k), moved = Math.abs(place.yMm - wanted), middle = (l - bar.lengthMm) / 2
        const clear = (xMm: number, yMm: number) => spareMm(bar, { xMm, yMm }, one.list) >= 0
        const xs = bar.lengthMm >= l ? [middle] : Array.from({ length: 161 }, (_, n) => ((l - bar.lengthMm) * n) / 160)
        for (let step = 0; step < 60; step += 1) {
          const nearer = (moved * step) / 60
          if (moved - nearer < 1e-4) continue
          for (const y of [wanted + nearer, wanted - nearer]) if (y >= 0 && y <= w - bar.acrossMm) expect(xs.some((x) => clear(x, y))).toBe(false)
        }
        expect(xs.filter((x) => Math.abs(x - middle) < Math.abs(place.xMm - middle) - 1e-4).some((x) => clear(x, place.yMm))).toBe(false)
      })
    }), { numRuns: 150 })
  })

  test('are given up only where a fine grid finds none either', () => {
    fc.assert(fc.property(cases, (one) => {
      const { status, fouledHoles } = answer(one), { betweenJawsMm: w, alongJawsMm: l } = one.part
      fc.pre(status === 'fouled' && one.bars.length === 1)
      const bar = one.bars[0]!, xs = bar.lengthMm >= l ? [(l - bar.lengthMm) / 2] : Array.from({ length: 101 }, (_, n) => ((l - bar.lengthMm) * n) / 100)
      for (let n = 0; n <= 100; n += 1) for (const xMm of xs) expect(spareMm(bar, { xMm, yMm: ((w - bar.acrossMm) * n) / 100 }, one.list)).toBeLessThan(1e-9)
      expect(fouledHoles.length).toBeGreaterThan(0)
    }), { numRuns: 60 })
  })

  test('of a part turned end for end are the same, turned end for end, but for equals', () => {
    const turned = ({ part, list, bars }: Case): Case => ({ part, bars, list: list.map((entry): InTheWay => {
      if (entry.kind === 'hole') return { ...entry, xMm: part.alongJawsMm - entry.xMm! }
      if (entry.kind !== 'through') return entry
      return { kind: 'through', rect: { ...entry.rect, x0Mm: part.alongJawsMm - entry.rect.x1Mm, x1Mm: part.alongJawsMm - entry.rect.x0Mm } }
    }) })
    fc.assert(fc.property(cases, (one) => {
      const here = answer(one), there = answer(turned(one))
      expect(there.status).toBe(here.status)
      expect(there.fouledHoles).toEqual(here.fouledHoles)
      here.places.forEach((place, k) => {
        const middle = (one.part.alongJawsMm - one.bars[k]!.lengthMm) / 2
        expect(there.places[k]!.yMm).toBeCloseTo(place.yMm, 5)
        expect(Math.abs(there.places[k]!.xMm - middle)).toBeCloseTo(Math.abs(place.xMm - middle), 4)
      })
    }), { numRuns: 400 })
  })

  test('of two bars alike, seen from the moving jaw, are exchanged', () => {
    fc.assert(fc.property(cases, ({ part, list, bars }) => {
      fc.pre(bars.length === 2)
      const w = part.betweenJawsMm
      const swapped = list.map((entry): InTheWay => entry.kind === 'hole' ? { ...entry, yMm: w - entry.yMm }
        : entry.kind === 'through' ? { kind: 'through', rect: { ...entry.rect, y0Mm: w - entry.rect.y1Mm, y1Mm: w - entry.rect.y0Mm } } : entry)
      const here = answer({ part, list, bars }), there = answer({ part, list: swapped, bars: bars.toReversed() })
      expect(there.status).toBe(here.status)
      here.places.forEach((place, k) => {
        expect(there.places[1 - k]!.yMm).toBeCloseTo(w - place.yMm - bars[k]!.acrossMm, 5)
        expect(there.places[1 - k]!.xMm).toBeCloseTo(place.xMm, 4)
      })
    }), { numRuns: 300 })
  })
})

// Rule: common practice, no source. Numbers by hand.
describe('a size nobody has given yet', () => {
  const bars = [{ acrossMm: 8, lengthMm: 150 }, { acrossMm: 8, lengthMm: 150 }], holes = [hole(10, 6, 8.5)]

  test('between the jaws: no places, nothing fouled', () => {
    expect(placesOf(obstaclesOf(block(null, 60), holes, wishes), bars)).toEqual({ status: 'at the jaws', places: [], fouledHoles: [], base: null, offBalance: false, notCarried: false })
    expect(placesOf(obstaclesOf(block(null, null), [], wishes), [bars[0]!]).status).toBe('in the middle')
  })

  test('between the jaws, with an end cut: a long bar is in it all the same', () => {
    const ends: InTheWay[] = [{ kind: 'end', side: 'left', stockMm: 2 }]
    expect(placesOf(obstaclesOf(block(null, 60), ends, wishes), bars).status).toBe('bar-in-cut')
    expect(isInEndCut(obstaclesOf(block(null, 60), ends, wishes), 50)).toBe(false)
  })

  test('along the jaws: bars are centred and a hole stands anywhere along', () => {
    const found = placesOf(obstaclesOf(block(38, null), [hole(10, 6, 8.5), hole(50, 6, 8.5)], wishes), [{ acrossMm: 8, lengthMm: 20 }, bars[1]!])
    expect(found).toMatchObject({ status: 'inboard', places: [{ xMm: 0, yMm: 10.75 }, { xMm: 0, yMm: 30 }], base: null })
  })

  test('too thick is seen without the length', () => {
    expect(placesOf(obstaclesOf(block(14, null), [], wishes), bars).status).toBe('too-thick')
  })

  test('the x of one hole: it keeps a band clear, whatever the bar is long', () => {
    const found = placesOf(obstaclesOf(block(38, 60), [hole(null, 6, 8.5)], wishes), [{ acrossMm: 8, lengthMm: 20 }, bars[1]!])
    expect(found).toMatchObject({ status: 'inboard', places: [{ yMm: 10.75 }, { yMm: 30 }] })
  })
})

test('each bar that is fouled at its plain place is told apart', () => {
  const obstacles = obstaclesOf(block(30, 80), [hole(40, 4, 20)], wishes)
  expect(inTheWayAtPlain(obstacles, [{ acrossMm: 6, lengthMm: 100 }, { acrossMm: 6, lengthMm: 100 }])).toEqual([[0], []])
})

test('lengths of half a kilometre and a thousand holes come to an end', () => {
  const list = Array.from({ length: 1000 }, (_, n) => hole(n * 997.3, (n * 6131.7) % 5e5, 30000 + n))
  const found = placesOf(obstaclesOf(block(5e5, 1e6), list, wishes), [{ acrossMm: 1e4, lengthMm: 4e5 }, { acrossMm: 1e4, lengthMm: 123456 }])
  expect(['inboard', 'fouled', 'shifted', 'at the jaws']).toContain(found.status)
})

// t1 + t2 + gap is 1e-6 mm over the width: still exactly fitting, whatever rounding makes of the distance between the bars.
test.each([12, 20, 43, 66.5])('two bars that just go under a part of %d stand at the jaws', (w) => {
  const across = (w - 2) / 2 + 5e-7
  expect(placesOf(obstaclesOf(block(w, 60), [], wishes), [{ acrossMm: across, lengthMm: 80 }, { acrossMm: across, lengthMm: 80 }]).status).toBe('at the jaws')
})
