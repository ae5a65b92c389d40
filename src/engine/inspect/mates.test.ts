import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { answerMates } from '#engine/inspect/answer-mates.ts'
import { matesOf, type Paired, type Windowed } from '#engine/inspect/mates.ts'

type Rows = readonly (readonly number[])[]

const costOf = (rows: Rows, i: number, j: number): number =>
  Math.min(...[rows[j]!, rows[j]!.toReversed()].map((other) => Math.max(...rows[i]!.map((value, s) => Math.abs(value - other[s]!)))))

/** Worst and total of every way to make k pairs, by trying all: the first bar goes with nobody or with each other one. */
function everyPairing(rows: Rows, left: readonly number[], k: number): { worst: number; total: number }[] {
  if (k === 0) return [{ worst: 0, total: 0 }]
  if (left.length < 2 * k) return []
  const [i, ...rest] = left as [number, ...number[]]
  const paired = rest.flatMap((j) => everyPairing(rows, rest.filter((one) => one !== j), k - 1).map(({ worst, total }) => ({ worst: Math.max(worst, costOf(rows, i, j)), total: total + costOf(rows, i, j) })))
  return [...everyPairing(rows, rest, k), ...paired]
}

function subsets(left: readonly number[], size: number): number[][] {
  if (size === 0) return [[]]
  const [first, ...rest] = left
  return first === undefined ? [] : [...subsets(rest, size - 1).map((some) => [first, ...some]), ...subsets(rest, size)]
}

const spreadOf = (rows: Rows, bars: readonly number[]): number => { const all = bars.flatMap((bar) => rows[bar]!); return Math.max(...all) - Math.min(...all) }
const totalOf = ({ groups }: Paired): number => groups.reduce((sum, { cost }) => sum + cost, 0)

const height = fc.integer({ min: 0, max: 30 })
const pile = (stations: number) => fc.array(fc.array(height, { minLength: stations, maxLength: stations }), { minLength: 4, maxLength: 8 })
const piles = fc.constantFrom(1, 2, 3, 4).chain(pile).chain((rows) => fc.record({ rows: fc.constant(rows), k: fc.integer({ min: 1, max: Math.floor(rows.length / 2) }) }))

describe('beside trying everything', () => {
  test('the worst pair of profiles is least, and one step better there are fewer pairs', () => {
    fc.assert(fc.property(piles, ({ rows, k }) => {
      const answer = matesOf({ kind: 'profile', profiles: rows, k }) as Paired, every = everyPairing(rows, [...rows.keys()], k)
      expect(answer.worst).toBe(Math.min(...every.map(({ worst }) => worst)))
      expect(answer.pairsBelow).toBeLessThan(k)
      for (const more of [answer.pairsBelow, answer.pairsBelow + 1]) {
        const best = Math.min(...everyPairing(rows, [...rows.keys()], more).map(({ worst }) => worst))
        if (more > 0 && more === answer.pairsBelow) expect(best).toBeLessThan(answer.worst)
        if (more > answer.pairsBelow) expect(best).toBeGreaterThanOrEqual(answer.worst)
      }
    }))
  })

  test('no pair can be exchanged for a smaller total', () => {
    fc.assert(fc.property(piles, ({ rows, k }) => {
      const { groups, worst } = matesOf({ kind: 'profile', profiles: rows, k }) as Paired
      const used = groups.flatMap(({ bars }) => bars), spare = [...rows.keys()].filter((bar) => !used.includes(bar)), cost = (i: number, j: number) => costOf(rows, i, j)
      const least = Math.min(...spare.flatMap((i) => spare.filter((j) => j > i).map((j) => cost(i, j))), Infinity)
      groups.forEach(({ bars: [a, b] }, g) => {
        expect(cost(a, b)).toBeLessThanOrEqual(least)
        for (const e of spare) expect(cost(a, b)).toBeLessThanOrEqual(Math.min(cost(a, e), cost(b, e)))
        for (const { bars: [c, d] } of groups.slice(g + 1)) for (const [x, y] of [[cost(a, c), cost(b, d)], [cost(a, d), cost(b, c)]] as const) if (Math.max(x, y) <= worst) expect(cost(a, b) + cost(c, d)).toBeLessThanOrEqual(x + y)
      })
    }))
  })

  test('of heights the total is least as well', () => {
    fc.assert(fc.property(fc.array(height, { minLength: 4, maxLength: 9 }), fc.integer({ min: 1, max: 2 }), (heights, k) => {
      const rows = heights.map((one) => [one]), answer = matesOf({ kind: 'pairs', heights, k }) as Paired, every = everyPairing(rows, [...rows.keys()], k)
      const worst = Math.min(...every.map((one) => one.worst))
      expect(answer.worst).toBe(worst)
      expect(totalOf(answer)).toBe(Math.min(...every.filter((one) => one.worst === worst).map(({ total }) => total)))
    }))
  })

  test('bars for vises have the least spread, and the best pairs among them', () => {
    fc.assert(fc.property(piles, ({ rows, k }) => {
      const profiles = matesOf({ kind: 'profile-window', profiles: rows, vises: k }) as Windowed
      expect(profiles.spread).toBe(Math.min(...subsets([...rows.keys()], 2 * k).map((bars) => spreadOf(rows, bars))))
      expect(spreadOf(rows, profiles.bars)).toBe(profiles.spread)
      expect(Math.max(...profiles.groups.map(({ cost }) => cost))).toBe(Math.min(...everyPairing(rows, profiles.bars, k).map(({ worst }) => worst)))
      const heights = rows.map(([first]) => first!), single = matesOf({ kind: 'window', heights, vises: k }) as Windowed
      expect(single.spread).toBe(Math.min(...subsets([...rows.keys()], 2 * k).map((bars) => spreadOf(heights.map((one) => [one]), bars))))
      expect(spreadOf(heights.map((one) => [one]), single.bars)).toBe(single.spread)
    }), { numRuns: 60 })
  })
})

describe('what must not matter', () => {
  test('the order of the bars', () => {
    fc.assert(fc.property(piles, fc.array(fc.nat(1e6), { minLength: 8, maxLength: 8 }), ({ rows, k }, keys) => {
      const shuffled = rows.map((row, i) => ({ row, key: keys[i]! })).sort((a, b) => a.key - b.key).map(({ row }) => row)
      expect((matesOf({ kind: 'profile', profiles: shuffled, k }) as Paired).worst).toBe((matesOf({ kind: 'profile', profiles: rows, k }) as Paired).worst)
      expect((matesOf({ kind: 'profile-window', profiles: shuffled, vises: k }) as Windowed).spread).toBe((matesOf({ kind: 'profile-window', profiles: rows, vises: k }) as Windowed).spread)
    }))
  })

  test('which way round a bar was read, where the zero was, and the unit', () => {
    fc.assert(fc.property(piles, fc.integer({ min: 0, max: 255 }), fc.integer({ min: -1e6, max: 1e6 }), ({ rows, k }, turned, zero) => {
      const other = rows.map((row, i) => ((turned >> i) & 1 ? row.toReversed() : row).map((value) => (value + zero) * 4))
      expect((matesOf({ kind: 'profile', profiles: other, k }) as Paired).worst).toBe(4 * (matesOf({ kind: 'profile', profiles: rows, k }) as Paired).worst)
    }))
  })

  test('heights are profiles of one station', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 10, maxLength: 60 }), fc.integer({ min: 1, max: 5 }), (heights, k) => {
      const single = matesOf({ kind: 'pairs', heights, k }) as Paired, profile = matesOf({ kind: 'profile', profiles: heights.map((one) => [one]), k }) as Paired
      expect([profile.worst, profile.pairsBelow]).toEqual([single.worst, single.pairsBelow])
      expect(totalOf(profile)).toBeGreaterThanOrEqual(totalOf(single))
    }))
  })
})

test('one bar far off drags no other pair along', () => {
  const { groups } = matesOf({ kind: 'profile', profiles: [[0, 0, 0], [1, 1, 1], [10, 10, 10], [11, 11, 11], [20, 20, 20], [500, 500, 500]], k: 3 }) as Paired
  expect(groups.map(({ cost }) => cost)).toEqual([1, 1, 480])
})

test.each([
  [{ heights: [1, 2], k: 1 }, 'field-missing', 'kind'],
  [{ kind: 'triples' }, 'unknown-word', 'kind'],
  [{ kind: 'pairs', k: 1 }, 'field-missing', 'heights'],
  [{ kind: 'pairs', heights: [1, 2] }, 'field-missing', 'k'],
  [{ kind: 'pairs', heights: [1, '2'], k: 1 }, 'not-a-number', 'heights[1]'],
  [{ kind: 'pairs', heights: [1, 2], k: 0.5 }, 'not-a-number', 'k'],
  [{ kind: 'profile', profiles: [[1, 2], 3], k: 1 }, 'field-missing', 'profiles[1]'],
  [{ kind: 'pairs', heights: Array.from({ length: 3001 }, () => 1), k: 1 }, 'too-many', 'heights'],
  [{ kind: 'pairs', heights: [1, 2], k: 0 }, 'size-not-positive', 'k'],
  [{ kind: 'profile', profiles: [[1, 2], [3]], k: 1 }, 'readings-do-not-match-stations', 'profiles[1]'],
  [{ kind: 'profile', profiles: [[], []], k: 1 }, 'too-few-readings', 'profiles[0]'],
  [{ kind: 'pairs', heights: [1, 2, 3], k: 2 }, 'too-few-bars', 'heights'],
  [{ kind: 'profile', profiles: [], k: 1 }, 'too-few-bars', 'profiles'],
  [{ kind: 'window', heights: [1, 2, 3], vises: 2 }, 'too-few-bars', 'heights'],
  [{ kind: 'profile-window', profiles: [[1], [2], [3]], vises: 2 }, 'too-few-bars', 'profiles'],
])('%j is refused: %s', (raw, code, field) => {
  expect(() => answerMates(raw)).toThrow(expect.objectContaining({ code, facts: expect.objectContaining({ field }) }))
})
