// Cases and expected answers were computed by independent programs in exact fractions (see the head of the file).
import fc from 'fast-check'
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { answerSeat } from '#engine/setup/seat/answer-seat.ts'
import { gapsOf, heightOf, type Plane, type SupportPoint } from '#engine/setup/seat/plane.ts'
import { type Seat, seatOf, type SeatQuestion } from '#engine/setup/seat/seat.ts'

type Golden = { readonly id: string; readonly note: string; readonly expect: { readonly [key: string]: unknown } }
const { cases } = JSON.parse(readFileSync('fixtures/shop/seat/seat-lp.json', 'utf8')) as { cases: Golden[] }

type Way = { readonly contacts: readonly number[]; readonly plane: Plane }
const byContacts = (ways: readonly Way[]) => ways.toSorted((a, b) => (a.contacts.join() < b.contacts.join() ? -1 : 1))

function differences(expected: unknown, given: unknown, path = ''): string[] {
  if (path.endsWith('Exact')) return []
  if (path.endsWith('facetsAtLoad')) return Array.isArray(given) ? differences(byContacts(expected as Way[]), byContacts(given as Way[]), `${path}, `) : [`${path}: missing`]
  if (typeof expected === 'number') return typeof given === 'number' && Math.abs(expected - given) <= (path.endsWith('PerMm') ? 1e-9 : 1e-6) ? [] : [`${path}: ${String(given)}, expected ${expected}`]
  if (typeof expected !== 'object' || expected === null) return expected === given ? [] : [`${path}: ${String(given)}, expected ${String(expected)}`]
  const more = Array.isArray(expected) && (!Array.isArray(given) || given.length !== expected.length) ? [`${path}: not ${expected.length} entries`] : []
  return [...more, ...Object.entries(expected).flatMap(([key, value]) => differences(value, (given as { [key: string]: unknown } | undefined)?.[key], `${path}.${key}`))]
}

describe('the cases of seat', () => {
  test('are all there', () => expect(cases.length).toBeGreaterThanOrEqual(51))
  test.each(cases.map((golden) => [`${golden.id} ${golden.note}`, golden] as const))('%s', (_, { id: _id, note: _note, expect: expected, ...raw }) => {
    const answer = answerSeat(raw)
    expect(differences(expected, answer)).toEqual([])
    expect(answer.ignored).toEqual([])
  })
})

/** Two or three bars with whole readings, or scattered points; pressed somewhere inside, ties and edges among them. */
const spot = fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 12 }))
const asked = fc.record({
  places: fc.oneof(fc.uniqueArray(spot, { minLength: 3, maxLength: 14, selector: ([x, y]) => `${x} ${y}` }), fc.constantFrom([0, 10].flatMap((y) => [0, 8, 15, 30].map((x) => [x, y] as [number, number])))),
  heights: fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 14, maxLength: 14 }), load: fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 24 })),
  slope: fc.option(fc.integer({ min: -3, max: 3 })),
}).map(({ places, heights, load: [x, y], slope }): SeatQuestion => ({
  part: { lengthMm: 30, widthMm: 12, loadMm: [x / 2, y / 2] }, points: places.map(([xMm, yMm], i) => ({ xMm, yMm, zUm: heights[i]! / 10 })), jawSlopeUmPerMm: slope === null ? null : slope / 10,
}))

/** Every plane through two (held) or three (free) points with the load among them and nothing above: the height there, and the slopes along that reach it. */
function triedAll({ part: { loadMm: [x, y] }, points, jawSlopeUmPerMm: c }: SeatQuestion): { readonly heightUm: number; readonly slopes: readonly number[] } | null {
  const tried: { heightUm: number; slope: number }[] = [], n = points.length
  const offer = (a: number, b: number, across: number) => {
    if (points.every((p) => a + b * p.xMm + across * p.yMm >= p.zUm - 1e-7)) tried.push({ heightUm: a + b * x + across * y, slope: b })
  }
  for (let i = 0; i < n; i += 1) for (let j = i + 1; j < n; j += 1) {
    const p = points[i]!, q = points[j]!
    if (c !== null) {
      if (p.xMm === q.xMm || (x - p.xMm) * (x - q.xMm) > 0) continue
      const b = (q.zUm - c * q.yMm - p.zUm + c * p.yMm) / (q.xMm - p.xMm)
      offer(p.zUm - c * p.yMm - b * p.xMm, b, c)
      continue
    }
    for (let k = j + 1; k < n; k += 1) {
      const r = points[k]!, area = (q.xMm - p.xMm) * (r.yMm - p.yMm) - (q.yMm - p.yMm) * (r.xMm - p.xMm)
      if (area === 0) continue
      const side = (a: SupportPoint, d: SupportPoint) => ((d.xMm - a.xMm) * (y - a.yMm) - (d.yMm - a.yMm) * (x - a.xMm)) * Math.sign(area)
      if (Math.min(side(p, q), side(q, r), side(r, p)) < 0) continue
      const b = ((q.zUm - p.zUm) * (r.yMm - p.yMm) - (r.zUm - p.zUm) * (q.yMm - p.yMm)) / area, across = ((q.xMm - p.xMm) * (r.zUm - p.zUm) - (r.xMm - p.xMm) * (q.zUm - p.zUm)) / area
      offer(p.zUm - b * p.xMm - across * p.yMm, b, across)
    }
  }
  return tried.length === 0 ? null : { heightUm: tried[0]!.heightUm, slopes: tried.map(({ slope }) => slope) }
}

const waysAt = (seat: Seat): readonly Way[] => (seat.status === 'seated' ? [seat] : seat.status === 'tie' || seat.status === 'on-edge' ? seat.facetsAtLoad : [])

describe('a seat', () => {
  test('is what trying every two or three points gives', () => {
    fc.assert(fc.property(asked, (question) => {
      const seat = seatOf(question), all = triedAll(question)
      if (all === null) { expect(['tips', 'collinear']).toContain(seat.status); return }
      if (seat.status === 'tips' || seat.status === 'collinear') { expect(seat.status).toBe('collinear'); return }
      expect(seat.heightUnderLoadUm).toBeCloseTo(all.heightUm, 6)
      const slopes = waysAt(seat).map(({ plane }) => plane.bUmPerMm)
      expect(Math.min(...slopes)).toBeCloseTo(Math.min(...all.slopes), 6)
      expect(Math.max(...slopes)).toBeCloseTo(Math.max(...all.slopes), 6)
    }), { numRuns: 1000 })
  })

  test('has nothing above it, and contacts that carry the load', () => {
    fc.assert(fc.property(asked, (question) => {
      const seat = seatOf(question)
      for (const way of waysAt(seat)) expect(Math.min(...gapsOf(way.plane, question.points))).toBeGreaterThanOrEqual(0)
      if (seat.status !== 'seated' || seat.loadShares === null) return
      const at = seat.contacts.map((i) => question.points[i]!), moment = (of: (p: SupportPoint) => number) => at.reduce((sum, p, k) => sum + seat.loadShares![k]! * of(p), 0)
      expect(Math.min(...seat.loadShares)).toBeGreaterThan(0)
      expect(moment(() => 1)).toBeCloseTo(1, 9)
      expect(moment((p) => p.xMm)).toBeCloseTo(question.part.loadMm[0], 8)
      if (question.jawSlopeUmPerMm === null) expect(moment((p) => p.yMm)).toBeCloseTo(question.part.loadMm[1], 8)
    }))
  })

  test('does not hang on where the frame stands, on a common height or on the order of the points', () => {
    fc.assert(fc.property(asked, fc.integer({ min: -500, max: 500 }), fc.integer({ min: -9, max: 9 }), (question, dx, dy) => {
      const [x, y] = question.part.loadMm, points = question.points.map((p) => ({ xMm: p.xMm + dx, yMm: p.yMm + dy, zUm: p.zUm + 25_000 })).toReversed()
      const one = seatOf(question), other = seatOf({ ...question, part: { ...question.part, loadMm: [x + dx, y + dy] }, points })
      expect(other.status).toBe(one.status)
      const slopes = (seat: Seat) => waysAt(seat).map(({ plane }) => plane.bUmPerMm).toSorted((a, b) => a - b)
      slopes(other).forEach((slope, k) => expect(slope).toBeCloseTo(slopes(one)[k]!, 7))
    }))
  })
})

describe('a part on bars as they stand', () => {
  // Two bars 8 thick, 7 µm apart, under a part 60 wide: middles 52 apart, 7/52 = 0.135 µm/mm, 8.08 over 60 (plane geometry).
  const bars = [{ id: 'A', xMm: 0, yMm: 0, heightMm: 30, thicknessMm: 8, lengthMm: 150 }, { id: 'B', xMm: 0, yMm: 52, heightMm: 29.993, thicknessMm: 8, lengthMm: 150 }]
  const raw = { part: { lengthMm: 150, widthMm: 60 }, bars }

  test('held by the jaw the low bar is loose and nothing tilts', () => {
    const seat = answerSeat({ ...raw, side: 'machined', toleranceUm: 5 })
    expect(seat).toMatchObject({ status: 'seated', tiltAcrossUm: 0, tiltAlongUm: 0 })
    expect(seat.loose.bars).toEqual([{ bar: 1, leastGapUm: expect.closeTo(7, 6) as number, mostGapUm: expect.closeTo(7, 6) as number }])
    expect(seat.loose.corners.map(({ corner }) => corner)).toEqual(['moving-left', 'moving-right'])
    expect(seat.findings.map(({ code }) => code)).toEqual(['bar-loose', 'one-often-loose', 'corner-loose', 'corner-loose', 'tilt-within-tolerance'])
  })

  test('free it lies on both and tilts', () => {
    const seat = answerSeat({ ...raw, side: 'sawn', toleranceUm: 5 })
    expect(seat).toMatchObject({ status: 'seated', plane: { cUmPerMm: expect.closeTo(-7 / 52, 9) as number }, tiltAcrossUm: expect.closeTo(-60 * 7 / 52, 6) as number, loose: { bars: [], corners: [] } })
    expect(seat.findings.at(-1)).toMatchObject({ code: 'tilt-beyond-tolerance' })
  })

  test('where nobody knows, both are told; where the jaws do more than the bars differ, that nobody can tell', () => {
    const seat = answerSeat({ ...raw, vise: { jawSlope: { umPerMm: 0.01, uUmPerMm: 0.1 } } })
    expect(seat).toMatchObject({ status: 'seated', ifHeld: { status: 'seated', findings: [{ code: 'cannot-tell-which-bar' }, {}, {}, {}, {}] } })
    expect(answerSeat({ ...raw, side: 'machined', vise: { jawSlope: { umPerMm: 0.01, uUmPerMm: 0.01 } } }).findings[0]).toMatchObject({ code: 'bar-loose' })
    expect(answerSeat({ ...raw, side: 'machined', vise: { jawLift: { um: 30 } } }).findings[0]).toMatchObject({ code: 'cannot-tell-which-bar' })
  })

  test('stations, turned bars and the bed enter the heights', () => {
    const tapered = [{ ...bars[0]!, heightsUm: [[0, 0], [150, 3]] }, { ...bars[0]!, id: 'C', yMm: 52, turned: true, heightsUm: [[0, 3], [150, 0]] }]
    expect(answerSeat({ ...raw, side: 'round', bars: tapered })).toMatchObject({ status: 'seated', tiltAlongUm: expect.closeTo(3, 6) as number, tiltAcrossUm: expect.closeTo(0, 6) as number })
    const bed = { vise: { bedUm: [[0, 0, 0], [150, 0, 3], [0, 60, 6], [150, 60, 9]] } }
    expect(answerSeat({ ...raw, ...bed, side: 'round', bars: [bars[0]!, { ...bars[1]!, heightMm: 30 }] })).toMatchObject({ status: 'seated', tiltAlongUm: expect.closeTo(3, 6) as number, tiltAcrossUm: expect.closeTo(6, 6) as number })
  })

  test('a bar longer than the part carries to its ends, straight between stations', () => {
    const long = bars.map((bar) => ({ ...bar, xMm: -25, lengthMm: 200, heightMm: 30, heightsUm: [[0, 0], [200, 4]] }))
    const seat = answerSeat({ ...raw, side: 'round', bars: long })
    expect(seat).toMatchObject({ status: 'seated', tiltAlongUm: expect.closeTo(3, 6) as number })
    if (seat.status === 'seated') expect(heightOf(seat.plane, 0, 30)).toBeCloseTo(0.5, 6)
  })
})

test('what cannot be worked out is refused, in order', () => {
  const part = { lengthMm: 90, widthMm: 60, loadMm: [45, 25] }, points = [[0, 0, 0], [90, 15, 1], [45, 60, 1]], bars = [{ id: 'A', xMm: 0, yMm: 0, heightMm: 30, thicknessMm: 8, lengthMm: 50 }]
  const codeOf = (raw: unknown): string => {
    try { return answerSeat(raw).status } catch (error) { if (error instanceof Refusal) return error.code; throw error }
  }
  expect(codeOf({ part, points })).toBe('field-missing')
  expect(codeOf({ mode: 'jaw', part, points })).toBe('field-missing')
  expect(codeOf({ mode: 'free', part, points: [[0, 0]] })).toBe('field-missing')
  expect(codeOf({ mode: 'free', part, points: [[0, 0, 'high']] })).toBe('not-a-number')
  expect(codeOf({ mode: 'stuck', part, points })).toBe('unknown-word')
  expect(codeOf({ mode: 'free', part, points: [[2e6, 0, 0]] })).toBe('too-large')
  expect(codeOf({ mode: 'free', part: { ...part, widthMm: 0 }, points: [] })).toBe('size-not-positive')
  expect(codeOf({ mode: 'free', part, points: [] })).toBe('too-few-points')
  expect(codeOf({ mode: 'free', part, points, toleranceUm: -1 })).toBe('wish-negative')
  expect(codeOf({ mode: 'free', part, points: points.slice(0, 1) })).toBe('collinear')
  expect(codeOf({ part, bars: [] })).toBe('too-few-bars')
  expect(codeOf({ part, bars: [{ ...bars[0], xMm: 90 }] })).toBe('bar-off-part')
  expect(codeOf({ part, bars: [{ ...bars[0], uUm: -1 }] })).toBe('uncertainty-negative')
  expect(codeOf({ part, bars })).toBe('collinear')
})
