import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { answerShape } from '#engine/inspect/answer-shape.ts'
import { loneHighReading } from '#engine/inspect/lone-reading.ts'
import { pairShapeOf } from '#engine/inspect/pair-shape.ts'
import { type BarReadings, type BarShape, shapeOf } from '#engine/inspect/shape.ts'
import { unitSlipOf } from '#engine/inspect/unit-slip.ts'

const bar = (values: readonly number[], stationsMm: readonly number[], more: Partial<BarReadings> = {}): BarReadings =>
  ({ id: 'A', stationsMm, lines: [values.map((value) => [value])], lengthMm: null, closingZeroUm: null, ...more })

// The readings of the shop's own example; heights against a block of 25 mm.
test('+3 +4 +2 and +6 +5 +4 on a 25,000 block', () => {
  const stationsMm = [10, 75, 140], answer = answerShape({ zeroMm: 25, bars: [{ id: '1', stationsMm, lines: [[[3], [4], [2]]] }, { id: '2', stationsMm, lines: [[[6], [5], [4]]] }] })
  expect(answer.bars.map(({ meanHeightMm }) => meanHeightMm)).toEqual([expect.closeTo(25.003, 9), expect.closeTo(25.005, 9)])
  expect(answer.pair).toEqual({ meanDifferenceUm: 2, allWithinUm: 4, worstAsLaidUm: 3, worstTurnedUm: 4, betterWay: 'as laid' })
})

const reading = fc.integer({ min: -200, max: 200 }).map((n) => n / 10)
const bars = fc.record({ stations: fc.uniqueArray(fc.integer({ min: 0, max: 200 }), { minLength: 3, maxLength: 9 }), lines: fc.constantFrom(1, 2) }).chain(({ stations, lines }) =>
  fc.array(fc.array(fc.array(reading, { minLength: 1, maxLength: 3 }), { minLength: stations.length, maxLength: stations.length }), { minLength: lines, maxLength: lines })
    .map((readings): BarReadings => ({ id: 'A', stationsMm: stations, lines: readings, lengthMm: 220, closingZeroUm: null })))

const near = (given: BarShape, wanted: Partial<BarShape>, digits = 7): void => {
  for (const [key, value] of Object.entries(wanted)) {
    const found = given[key as keyof BarShape]
    if (typeof value === 'number' && typeof found === 'number') expect(found, key).toBeCloseTo(value, digits)
    else expect(found, key).toBe(value)
  }
}

describe('what must not matter to the shape', () => {
  test('where the zero was: the height moves with it, nothing else', () => {
    fc.assert(fc.property(bars, fc.integer({ min: -1e6, max: 1e6 }), (one, shift) => {
      const shape = shapeOf(one, 25), moved = shapeOf({ ...one, lines: one.lines.map((line) => line.map((repeats) => repeats.map((value) => value + shift))) }, 25)
      near(moved, { ...shape, meanHeightMm: shape.meanHeightMm + shift / 1000 }, 6)
    }))
  })

  test('the unit of the readings', () => {
    fc.assert(fc.property(bars, (one) => {
      const shape = shapeOf(one, 0), thousandfold = shapeOf({ ...one, lines: one.lines.map((line) => line.map((repeats) => repeats.map((value) => value * 1000))) }, 0)
      for (const key of ['parallelismUm', 'taperUm', 'taperSeUm', 'crownUm', 'twistUm', 'acrossUm', 'repeatabilityUm'] as const) {
        if (shape[key] === null) expect(thousandfold[key]).toBeNull()
        else expect(thousandfold[key]! / 1000).toBeCloseTo(shape[key], 8)
      }
    }))
  })

  test('from where stations are counted, and in which order they were typed', () => {
    fc.assert(fc.property(bars, fc.integer({ min: -1e5, max: 1e5 }), (one, origin) => {
      const shape = shapeOf(one, 25)
      near(shapeOf({ ...one, stationsMm: one.stationsMm.map((x) => x + origin) }, 25), shape)
      near(shapeOf({ ...one, stationsMm: one.stationsMm.toReversed(), lines: one.lines.map((line) => line.toReversed()) }, 25), shape)
    }))
  })

  test('which end is marked: taper and twist change sign with the ends, across with the lines', () => {
    fc.assert(fc.property(bars, (one) => {
      const shape = shapeOf(one, 25), turned = shapeOf({ ...one, stationsMm: one.stationsMm.map((x) => 220 - x), lines: one.lines.toReversed() }, 25)
      near(turned, { ...shape, taperUm: -shape.taperUm, acrossUm: shape.acrossUm === null ? null : -shape.acrossUm })
    }))
  })
})

test('a pair looked at from the other side', () => {
  fc.assert(fc.property(bars, bars, (one, other) => {
    const there = pairShapeOf(one, other), back = pairShapeOf(other, one)
    expect(back.meanDifferenceUm).toBeCloseTo(-there.meanDifferenceUm, 9)
    expect({ ...back, meanDifferenceUm: 0 }).toEqual({ ...there, meanDifferenceUm: 0 })
    if (there.worstAsLaidUm !== null) expect(there.worstAsLaidUm).toBeLessThanOrEqual(there.allWithinUm + 1e-12)
  }))
})

// When a reading stands out, and from which size on, is common practice, no source.
describe('a lone high reading', () => {
  const xs = [10, 42, 75, 108, 140, 160]

  test('is found where a chip lay', () => {
    expect(loneHighReading(xs, [0, 0.4, 9, 0.2, 0.1, 0.5])).toMatchObject({ station: 2, aboveUm: expect.closeTo(8.76, 1) })
    expect(loneHighReading(xs, [0, 1, 2, 3, 4, 12])).toMatchObject({ station: 5 })
  })

  test('is neither a low one, a crown, a hollow, a taper nor noise, and never one of three', () => {
    for (const values of [[0, 0.4, -9, 0.2, 0.1, 0.5], [0, 3, 4, 4, 3, 1], [5, 2, 1, 1, 2, 4], [0, 1, 2, 3, 4, 4.7], [0.2, -0.4, 0.6, -0.1, 0.3, -0.2]]) expect(loneHighReading(xs, values), values.join()).toBeNull()
    expect(loneHighReading([10, 75, 140], [0, 9, 0])).toBeNull()
  })

  test('does not depend on a taper or a height common to all', () => {
    fc.assert(fc.property(fc.array(reading, { minLength: 6, maxLength: 6 }), fc.integer({ min: -5, max: 5 }), fc.integer({ min: -1000, max: 1000 }), (values, slope, height) => {
      const found = loneHighReading(xs, values)
      fc.pre(found === null || found.aboveUm > 2.001)
      expect(loneHighReading(xs, values.map((value, i) => value + (slope * xs[i]!) / 10 + height))?.station ?? null).toBe(found?.station ?? null)
    }))
  })
})

describe('a slip of the unit', () => {
  test.each([
    [30, [3, 4, 2], 10], [25.004, [250.03, 250.05], 0.1], [0.9844, [25.003, 25.004], 1 / 25.4], [25.003, [0.9844], 25.4], [-2000, [-2, -3], 1000], [25003, [25.004, 25.002], 1000],
  ])('%d beside %j looks %d times too large', (value, neighbours, factor) => expect(unitSlipOf(value, neighbours)).toBe(factor))

  test.each([[3, [3, 4, 2]], [9, [3, 4, 2]], [30, [-1, 0, 1]], [30, [1, 9]], [-30, [3, 4]], [5, []], [0, [3, 4]]])('%d beside %j does not', (value, neighbours) => expect(unitSlipOf(value, neighbours)).toBeNull())

  test('works alike in any unit', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 300 }), fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 5 }), (value, neighbours) => {
      expect(unitSlipOf(value * 64, neighbours.map((one) => one * 64))).toBe(unitSlipOf(value, neighbours))
    }))
  })
})

describe('what to look at again', () => {
  const codes = (raw: object) => answerShape({ zeroMm: 25, ...raw }).findings.map(({ code }) => code)
  const stationsMm = [10, 42, 75, 108, 140, 160]

  test('drift, a chip, a slip, repeats that follow one another', () => {
    expect(codes({ bars: [bar([0.2, 0.8, 1.4], [10, 75, 140], { closingZeroUm: 1.5 })] })).toEqual(['zero-drifted'])
    expect(codes({ bars: [bar([3, 3.4, 12, 3.2, 3.1, 3.5], stationsMm)] })).toEqual(['lone-high-reading'])
    expect(codes({ bars: [bar([3, 40, 3], [10, 75, 140])] })).toEqual(['unit-slip'])
    expect(codes({ bars: [bar([], [10, 140], { lines: [[Array.from({ length: 12 }, (_, i) => i), [5]]] })] })).toEqual(['readings-not-independent'])
    expect(codes({ bars: [bar([3, 4, 2], [10, 75, 140], { closingZeroUm: 0.4 })] })).toEqual([])
  })

  test('a finding names the bar, the line and the place', () => {
    expect(answerShape({ zeroMm: 25, bars: [bar([3, 3.4, 12, 3.2, 3.1, 3.5], stationsMm)] }).findings[0]!.facts).toMatchObject({ bar: 'A', line: 0, xMm: 75, aboveUm: expect.closeTo(8.76, 1) })
  })
})

const stationsMm = [10, 75, 140]
const good = { id: 'A', stationsMm, lines: [[[1], [2], [3]]] }

test.each([
  [{ bars: [good] }, 'field-missing', 'zeroMm'],
  [{ zeroMm: 25, bars: [{ ...good, lines: [[[1], [2], '3']] }] }, 'field-missing', 'bars[0].lines[0][2]'],
  [{ zeroMm: 25, bars: [{ ...good, lines: [[[1], [2], ['3']]] }] }, 'not-a-number', 'bars[0].lines[0][2][0]'],
  [{ zeroMm: 1e308, bars: [good] }, 'too-large', 'zeroMm'],
  [{ zeroMm: 25, bars: [{ ...good, lines: [good.lines[0], good.lines[0], good.lines[0]] }] }, 'too-many', 'bars[0].lines'],
  [{ zeroMm: 25, bars: [good], limitsUm: { grinding: 2 } }, 'field-missing', 'readWith'],
  [{ zeroMm: 25, bars: [good], readWith: { resolutionUm: 1, method: 'guess' } }, 'unknown-word', 'readWith.method'],
  [{ zeroMm: 25, bars: [good, { ...good, lines: [] }] }, 'readings-do-not-match-stations', 'bars[1].lines'],
  [{ zeroMm: 25, bars: [{ ...good, lines: [[[1], [], [2]]] }] }, 'readings-do-not-match-stations', 'bars[0].lines[0][1]'],
  [{ zeroMm: 25, bars: [{ ...good, stationsMm: [5], lines: [[[1]]] }, { ...good, lines: [[[1]]] }] }, 'readings-do-not-match-stations', 'bars[1].lines[0]'],
  [{ zeroMm: 25, bars: [{ ...good, stationsMm: [], lines: [[]] }] }, 'too-few-readings', 'bars[0].stationsMm'],
  [{ zeroMm: 25, bars: [{ ...good, stationsMm: [10, 140, 10] }] }, 'stations-coincide', 'bars[0].stationsMm'],
  [{ zeroMm: 25, bars: [{ ...good, lengthMm: 0 }] }, 'size-not-positive', 'bars[0].lengthMm'],
  [{ zeroMm: 25, bars: [] }, 'too-few-bars', 'bars'],
  [{ zeroMm: 25, bars: [good], noiseUm: -1 }, 'uncertainty-negative', 'noiseUm'],
  [{ zeroMm: 25, bars: [good], readWith: { resolutionUm: -1 } }, 'uncertainty-negative', 'readWith.resolutionUm'],
  [{ zeroMm: 25, bars: [good], readWith: { resolutionUm: 1 }, limitsUm: { milling: 0 } }, 'size-not-positive', 'limitsUm.milling'],
])('%j is refused: %s', (raw, code, field) => {
  expect(() => answerShape(raw)).toThrow(expect.objectContaining({ code, facts: expect.objectContaining({ field }) }))
})

test('keys nobody knows are told by their paths', () => {
  expect(answerShape({ zeroMm: 25, bars: [{ ...good, colour: 'blue' }], weather: 'fine' }).ignored).toEqual(['bars[0].colour', 'weather'])
})
