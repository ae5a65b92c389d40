// Counts of the cases are proven (see the head of the file); the heights given there are one set of several as good, so ours are judged by what they serve.
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { answerHeights, type HeightsAnswer } from '#engine/rack/heights/answer-heights.ts'

type Windows = readonly (readonly [number, number])[]
type Raw = { readonly windows: Windows; readonly step: number; readonly lowest: number; readonly owned?: readonly number[]; readonly effortMillions?: number }
type Expected = { readonly count: number | null; readonly heights?: readonly number[] }
const names = ['single', 'stackedDifferentOnly', 'stackedSameAllowed'] as const
type Name = (typeof names)[number]
type Golden = Raw & { readonly id: string; readonly note: string; readonly expect: { readonly [name in Name]?: Expected } }

const { cases } = JSON.parse(readFileSync('fixtures/shop/stabbing/windows.json', 'utf8')) as { cases: Golden[] }

/** Whether heights of the ladder, or owned ones, serve each window in the way that is told. */
function refute({ windows, step, lowest, owned = [] }: Raw, name: Name, { heights, served, count }: NonNullable<HeightsAnswer[Name]>): string[] {
  const near = 1e-6 * step, offLadder = heights.filter((height) => Math.abs((height - lowest) / step - Math.round((height - lowest) / step)) > 1e-6 || height < lowest - near)
  const wrong = served.flatMap((by, k) => {
    const sum = by.reduce((total, height) => total + height, 0), [low, high] = windows[k]!
    const fits = sum >= low - near && sum <= high + near && by.every((height) => heights.includes(height) || owned.includes(height))
    const ways = by.length === 1 || (by.length === 2 && name !== 'single' && (name === 'stackedSameAllowed' || Math.abs(by[0]! - by[1]!) > near))
    return fits && ways ? [] : [`window ${k} by ${by.join('+')}`]
  })
  return [...offLadder.map((height) => `${height} is off the ladder`), ...wrong, ...(count === heights.length && served.length === windows.length ? [] : ['counts'])]
}

describe('the cases of heights', () => {
  test('are all there', () => expect(cases.length).toBeGreaterThanOrEqual(25))

  test.each(cases.map((golden) => [`${golden.id} ${golden.note}`, golden] as const))('%s', (_, { id: _id, note: _note, expect: wanted, ...raw }) => {
    const answer = answerHeights({ ...raw, stacks: 'stackedSameAllowed' in wanted })
    for (const name of names.filter((one) => wanted[one] !== undefined)) {
      const given = answer[name]
      expect(given?.count ?? null, name).toBe(wanted[name]!.count)
      if (given) expect(refute(raw, name, given)).toEqual([])
      if (given && 'status' in given) expect(given).toMatchObject({ status: 'optimal', bound: given.count })
    }
    expect(answer.findings.length).toBe(wanted.single?.count === null ? 1 : 0)
  })

  test('where too many are stacked to be proven, the answer says what is', () => {
    const { id: _id, note: _note, expect: _expect, ...raw } = cases.find(({ id }) => id === 'IV-001')!, answer = answerHeights({ ...raw, effortMillions: 2 })
    for (const name of ['stackedDifferentOnly', 'stackedSameAllowed'] as const) {
      const { status, bound, count } = answer[name]!
      expect(refute(raw, name, answer[name]!)).toEqual([])
      expect(status).toBe('gap')
      expect(bound).toBeLessThan(count)
      expect(count).toBeLessThanOrEqual(answer.single!.count)
    }
  })
})

/** The fewest of all sets of rungs, tried one after another by size; null where not even all of them do. */
function fewestOfAll({ windows, step, lowest, owned = [] }: Raw, name: Name): number | null {
  const near = 1e-6 * step, top = Math.max(...windows.map(([, high]) => high)), rungs: number[] = []
  for (let k = 0; lowest + k * step <= top + near; k += 1) rungs.push(lowest + k * step)
  const serves = (had: readonly number[]) => windows.every(([low, high]) => had.some((a, i) => {
    const fits = (height: number) => height >= low - near && height <= high + near
    return fits(a) || (name !== 'single' && had.some((b, j) => (name === 'stackedSameAllowed' ? j >= i : j > i && Math.abs(a - b) > near) && fits(a + b)))
  }))
  let fewest: number | null = null
  for (let set = 0; set < 2 ** rungs.length; set += 1) {
    const taken = rungs.filter((_, k) => (set >> k) % 2 === 1)
    if ((fewest === null || taken.length < fewest) && serves([...owned, ...taken])) fewest = taken.length
  }
  return fewest
}

const small: fc.Arbitrary<Raw> = fc.record({
  tenths: fc.constantFrom(1, 2, 5), from: fc.integer({ min: 3, max: 12 }), rungs: fc.integer({ min: 2, max: 9 }),
  windows: fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.integer({ min: 0, max: 9 })), { minLength: 1, maxLength: 7 }),
  owned: fc.array(fc.integer({ min: 2, max: 40 }), { maxLength: 3 }),
}).map(({ tenths, from, rungs, windows, owned }) => {
  const topTenths = from + tenths * rungs
  return {
    step: tenths / 10, lowest: from / 10, owned: owned.map((height) => height / 10),
    windows: windows.map(([share, width]): [number, number] => {
      const low = Math.round(from + share * (topTenths - from - 1))
      return [low / 10, Math.min(low + width, topTenths) / 10]
    }),
  }
})

describe('heights', () => {
  test('are the fewest of all there are', () => {
    fc.assert(fc.property(small, (raw) => {
      const answer = answerHeights(raw)
      for (const name of names) {
        const given = answer[name] ?? null
        expect(given?.count ?? null, name).toBe(fewestOfAll(raw, name))
        if (given) expect(refute(raw, name, given)).toEqual([])
      }
    }), { numRuns: 250 })
  })

  test('with little work, are never fewer than is proven, nor is what is proven too much', () => {
    fc.assert(fc.property(small, fc.integer({ min: 1, max: 400 }), (raw, effort) => {
      const answer = answerHeights({ ...raw, effortMillions: effort / 1e6 })
      for (const name of ['stackedDifferentOnly', 'stackedSameAllowed'] as const) {
        const given = answer[name]
        if (!given) continue
        const fewest = fewestOfAll(raw, name)!
        expect(given.bound).toBeLessThanOrEqual(fewest)
        expect(given.count).toBeGreaterThanOrEqual(fewest)
        expect(given.status === 'optimal').toBe(given.bound === given.count)
        expect(refute(raw, name, given)).toEqual([])
      }
    }), { numRuns: 150 })
  })

  test('count the same in tenths of a millimetre, millimetres and inches', () => {
    fc.assert(fc.property(small, (raw) => {
      const times = (factor: number): Raw => ({
        step: raw.step * factor, lowest: raw.lowest * factor, owned: raw.owned!.map((height) => height * factor), windows: raw.windows.map(([low, high]) => [low * factor, high * factor] as const),
      })
      const counts = (one: Raw) => names.map((name) => answerHeights(one)[name]?.count ?? null)
      expect(counts(times(10))).toEqual(counts(raw))
      expect(counts(times(1 / 25.4))).toEqual(counts(raw))
    }), { numRuns: 60 })
  })

  // Windows and set of the worked example; that three heights are needed is seen from 32.0–33.0, 36.0–38.4 and 41.0–41.4, which do not overlap.
  test('leave each window its room: any 32.0 to 32.4, any 38.0 to 38.4, any 41.0 to 41.4', () => {
    const windows = [[31, 32.4], [32, 33], [31.8, 34], [38, 39.6], [37.5, 39.6], [41, 41.4], [36, 38.4]], owned = [10, 15, 20, 25, 30, 35, 40, 45, 50]
    const { single } = answerHeights({ windows, owned, step: 0.1, lowest: 5 })
    expect(single).toMatchObject({ count: 3, ranges: [[32, 32.4], [38, 38.4], [41, 41.4]] })
    expect(answerHeights({ windows: [...windows, [20, 21]], owned, step: 0.1, lowest: 5 }).single).toMatchObject({ count: 3, served: expect.arrayContaining([[20]]) })
  })

  test('none are needed for nothing; what cannot be is refused', () => {
    expect(answerHeights({ windows: [], step: 1, lowest: 5 })).toMatchObject({ single: { count: 0 }, stackedSameAllowed: { count: 0, status: 'optimal' } })
    expect(answerHeights({ windows: [[3, 2]], step: 1, lowest: 1 })).toMatchObject({ single: null, findings: [{ code: 'window-between-heights', facts: { windows: [0] } }] })
    const codeOf = (raw: unknown) => {
      try { return answerHeights(raw).ignored } catch (error) { if (error instanceof Refusal) return error.code; throw error }
    }
    expect(codeOf({ windows: [[1, 2]], step: 1, lowest: 1, colour: 3 })).toEqual(['colour'])
    expect(codeOf({ windows: [[1]], step: 'x', lowest: 1 })).toBe('field-missing')
    expect(codeOf({ windows: [[1, 'x']], step: 1, lowest: 1 })).toBe('not-a-number')
    expect(codeOf({ windows: [[1, 2]], step: 1, lowest: 1, stacks: 'yes' })).toBe('unknown-word')
    expect(codeOf({ windows: [[1, 2e6]], step: 1, lowest: 1 })).toBe('too-large')
    expect(codeOf({ windows: Array.from({ length: 1001 }, () => [1, 2]), step: 1, lowest: 1 })).toBe('too-many')
    expect(codeOf({ windows: [[1, 2]], step: 0, lowest: 1 })).toBe('size-not-positive')
    expect(codeOf({ windows: [[1, 2]], step: 1, lowest: 1, owned: [-3] })).toBe('size-not-positive')
    expect(codeOf({ windows: [[1, 2000]], step: 0.01, lowest: 1 })).toBe('too-many')
  })
})
