import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { answerTurnOver } from '#engine/inspect/answer-turn-over.ts'
import { turnOverOf } from '#engine/inspect/turn-over.ts'

const number = (most: number) => fc.integer({ min: -4 * most, max: 4 * most }).map((n) => n / 4)

/** What the plate does to a bar: it lifts until two stations on either side of the middle touch, every other pair too low. */
function gapsOf(xs: readonly number[], underside: readonly number[], middle: number): number[] | null {
  for (let i = 0; i < xs.length; i += 1) for (let j = i + 1; j < xs.length; j += 1) {
    if (!(xs[i]! < middle && xs[j]! > middle)) continue
    const gaps = xs.map((x, s) => underside[s]! - underside[i]! - ((underside[j]! - underside[i]!) * (x - xs[i]!)) / (xs[j]! - xs[i]!))
    if (gaps.every((gap) => gap >= -1e-12)) return gaps
  }
  return null
}

const stationsMm = [10, 40, 70, 110, 140]
const simulated = fc.record({ heights: fc.array(number(5), { minLength: 5, maxLength: 5 }), bends: fc.array(number(8), { minLength: 5, maxLength: 5 }) })

// The forward model, written apart from the one under test: centre line plus or minus half the height, laid on the plate.
// Its middle, 75, is over no station, so the bar never rocks and the heights come back in full.
test('the heights of a simulated bar come back, whatever its bend', () => {
  fc.assert(fc.property(simulated, ({ heights, bends }) => {
    const layOn = (sign: 1 | -1) => gapsOf(stationsMm, heights.map((height, s) => sign * bends[s]! - height / 2), 75)!.map((gap, s) => gap + heights[s]!)
    const answer = turnOverOf({ zeroMm: 25, lengthMm: 150, stationsMm, faceAUpUm: layOn(1), faceBUpUm: layOn(-1) })
    answer.heightsUm!.forEach((height, s) => expect(height).toBeCloseTo(heights[s]!, 8))
    expect(answer.checkUm).toBeCloseTo(0, 8)
    expect([answer.rocksOnA, answer.rocksOnB]).toEqual([false, false])
  }))
})

const readings = fc.record({ zeroMm: fc.constant(25), lengthMm: fc.constant(150), stationsMm: fc.constant(stationsMm), faceAUpUm: fc.array(number(20), { minLength: 5, maxLength: 5 }), faceBUpUm: fc.array(number(20), { minLength: 5, maxLength: 5 }) })

describe('what must not matter', () => {
  test('which face is called A: the bend changes its sign', () => {
    fc.assert(fc.property(readings, (one) => {
      const plain = turnOverOf(one), other = turnOverOf({ ...one, faceAUpUm: one.faceBUpUm, faceBUpUm: one.faceAUpUm })
      expect(other.bowUm).toBeCloseTo(-plain.bowUm, 9)
      expect(other.heightCrownUm).toBeCloseTo(plain.heightCrownUm, 9)
      expect(other.parallelismUm!).toBeCloseTo(plain.parallelismUm!, 9)
    }))
  })

  test('where the zero was, and the order of typing', () => {
    fc.assert(fc.property(readings, fc.integer({ min: -1000, max: 1000 }), (one, shift) => {
      const plain = turnOverOf(one), other = turnOverOf({
        ...one, stationsMm: one.stationsMm.toReversed(), faceAUpUm: one.faceAUpUm.map((value) => value + shift).toReversed(), faceBUpUm: one.faceBUpUm.map((value) => value + shift).toReversed(),
      })
      expect(other.bowUm).toBeCloseTo(plain.bowUm, 8)
      expect(other.parallelismUm!).toBeCloseTo(plain.parallelismUm!, 8)
      expect(other.heightAtMiddleMm).toBeCloseTo(plain.heightAtMiddleMm + shift / 1000, 9)
    }))
  })
})

test('a bar that rocks on both faces says what cannot be told', () => {
  expect(answerTurnOver({ zeroMm: 25, lengthMm: 150, stationsMm: [10, 75, 140], faceAUpUm: [0, 6, 7.5], faceBUpUm: [0, 6, 7.5] }).findings).toEqual([{ code: 'taper-or-rocking', facts: {} }])
})

const good = { zeroMm: 25, lengthMm: 150, stationsMm: [10, 75, 140], faceAUpUm: [0, 1, 2], faceBUpUm: [0, 1, 2] }

test.each([
  [{ ...good, lengthMm: null }, 'field-missing', 'lengthMm'],
  [{ ...good, faceAUpUm: [0, 'x', 2] }, 'not-a-number', 'faceAUpUm[1]'],
  [{ ...good, faceBUpUm: [0, 1] }, 'readings-do-not-match-stations', 'faceBUpUm'],
  [{ ...good, stationsMm: [10, 140], faceAUpUm: [0, 1], faceBUpUm: [0, 1] }, 'too-few-readings', 'stationsMm'],
  [{ ...good, stationsMm: [10, 10, 140] }, 'stations-coincide', 'stationsMm'],
  [{ ...good, lengthMm: -1 }, 'size-not-positive', 'lengthMm'],
  [{ ...good, lengthMm: 400 }, 'middle-outside-stations', 'stationsMm'],
])('%j is refused: %s', (raw, code, field) => {
  expect(() => answerTurnOver(raw)).toThrow(expect.objectContaining({ code, facts: expect.objectContaining({ field }) }))
})
