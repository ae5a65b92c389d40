import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { answerMany } from '#engine/setup/many/answer-many.ts'
import { manyOf, type Heights, type HeightOfPair } from '#engine/setup/many/many.ts'
import { refusalOf } from '#engine/read/refusal-of.ts'

const serves = (mm: number, { lowMm, highMm }: Heights) => mm >= lowMm && mm <= highMm

/** The fewest runs by trying every way to cut the sequence; a run of one that nothing serves is allowed. */
function fewest(windows: readonly Heights[], heights: readonly number[]): number {
  const least = [0]
  for (let to = 1; to <= windows.length; to += 1) {
    least[to] = Infinity
    for (let from = 0; from < to; from += 1) {
      const run = windows.slice(from, to), can = heights.some((mm) => run.every((window) => serves(mm, window)))
      if (can || (run.length === 1 && !heights.some((mm) => serves(mm, run[0]!)))) least[to] = Math.min(least[to]!, least[from]! + 1)
    }
  }
  return least[windows.length]!
}

const mm = fc.integer({ min: 0, max: 30 })
const windowsGiven = fc.array(fc.tuple(mm, fc.integer({ min: -2, max: 12 })).map(([lowMm, widthMm]): Heights => ({ lowMm, highMm: lowMm + widthMm })), { minLength: 1, maxLength: 9 })
const pairs = fc.array(fc.integer({ min: 1, max: 40 }), { maxLength: 7 }).map((heights) => heights.map((heightMm, k): HeightOfPair => ({ id: `P${k}`, heightMm })))

describe('one pair for all, or the fewest changes', () => {
  test('out of a rack: no plan has fewer changes, and each run is served by what it names', () => {
    fc.assert(fc.property(windowsGiven, pairs, (windows, heights) => {
      const { one, changes, runs, unserved } = manyOf({ windows, heights }), all = heights.map((pair) => pair.heightMm)
      expect(changes).toBe(fewest(windows, all) - 1)
      expect(one.toSorted()).toEqual(heights.filter((pair) => windows.every((window) => serves(pair.heightMm, window))).map((pair) => pair.id))
      expect(runs.flatMap(({ from, to }) => windows.slice(from, to + 1))).toEqual(windows)
      for (const { from, to, ids } of runs) {
        expect(ids.toSorted()).toEqual(heights.filter((pair) => windows.slice(from, to + 1).every((window) => serves(pair.heightMm, window))).map((pair) => pair.id))
        expect(ids.length === 0).toBe(unserved.includes(from))
      }
    }), { numRuns: 1000 })
  })

  test('of any height: as with every height of the ladder at hand', () => {
    fc.assert(fc.property(windowsGiven, (windows) => {
      const ladder = Array.from({ length: 50 }, (_, k) => k), { changes, oneMm, unserved } = manyOf({ windows, heights: null })
      expect(changes).toBe(fewest(windows, ladder) - 1)
      expect(oneMm !== null).toBe(ladder.some((height) => windows.every((window) => serves(height, window))))
      expect(unserved).toEqual(windows.flatMap(({ lowMm, highMm }, k) => (highMm < lowMm ? [k] : [])))
    }), { numRuns: 500 })
  })

  test('the lowest of several first, for its grip', () => {
    expect(manyOf({ windows: [{ lowMm: 10, highMm: 30 }], heights: [{ id: 'A', heightMm: 25 }, { id: 'B', heightMm: 12 }, { id: 'C', heightMm: 12 }] }).one).toEqual(['B', 'C', 'A'])
  })
})

describe('the calculation setup-many', () => {
  const codeOf = (raw: object): string => refusalOf(answerMany, raw)

  // Worked by hand: 20 to 25 serves the first two; the third needs 5 to 8.
  test('answers runs with what sets their ends', () => {
    const { runs, sum, oneMm } = answerMany({ windows: [{ lowMm: 15, highMm: 30 }, { lowMm: 20, highMm: 25 }, { lowMm: 5, highMm: 8 }], heights: [{ id: 'P', heightMm: 22 }, { id: 'Q', heightMm: 6 }] })
    expect(runs).toEqual([{ from: 0, to: 1, lowMm: 20, highMm: 25, ids: ['P'] }, { from: 2, to: 2, lowMm: 5, highMm: 8, ids: ['Q'] }])
    expect(oneMm).toBeNull()
    expect(sum[0]).toMatchObject({ formula: 'run-low', inputs: { lowMm: 20, operation: 2 } })
  })

  test('refuses in order', () => {
    expect(codeOf({})).toBe('field-missing windows')
    expect(codeOf({ windows: [{ lowMm: 'a', highMm: 2e6 }] })).toBe('not-a-number windows[0].lowMm')
    expect(codeOf({ windows: Array.from({ length: 1001 }, () => ({ lowMm: 1, highMm: 2 })) })).toBe('too-many windows')
    expect(codeOf({ windows: [], heights: [{ id: 'A', heightMm: 0 }] })).toBe('size-not-positive heights[0].heightMm')
    expect(codeOf({ windows: [], heights: [{ id: 'A', heightMm: 1 }, { id: 'A', heightMm: 2 }] })).toBe('bar-id-twice heights[1].id')
    expect(codeOf({ windows: [] })).toBe('too-few-windows windows')
  })
})
