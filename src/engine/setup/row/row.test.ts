import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { refusalOf } from '#engine/read/refusal-of.ts'
import { answerRow } from '#engine/setup/row/answer-row.ts'
import { rowOf } from '#engine/setup/row/row.ts'
import type { RowPair } from '#engine/setup/row/row-question.ts'

// All ways tried in whole numbers, written from the rule alone (docs/setup-rules.md section 10): tops in steps of a tenth
// of a micrometre, so that spreads and sums of squares compare exactly here, and not quite in binary fractions of a mm.
type Way = { readonly ids: readonly string[]; readonly spread: number; readonly squares: number }

function everyWay(beds: readonly number[], means: readonly number[], ids: readonly string[]): readonly Way[] {
  const ways: Way[] = []
  const go = (tops: readonly number[], used: readonly number[]): void => {
    if (tops.length === beds.length) {
      const total = tops.reduce((sum, top) => sum + top, 0)
      ways.push({
        ids: used.map((k) => ids[k]!), spread: Math.max(...tops) - Math.min(...tops),
        squares: tops.length * tops.reduce((sum, top) => sum + top * top, 0) - total * total,
      })
      return
    }
    means.forEach((mean, k) => { if (!used.includes(k)) go([...tops, beds[tops.length]! + mean], [...used, k]) })
  }
  go([], [])
  return ways
}

function bestWay(ways: readonly Way[]): { readonly best: Way; readonly unique: boolean } {
  const spread = Math.min(...ways.map((way) => way.spread)), tight = ways.filter((way) => way.spread === spread)
  const squares = Math.min(...tight.map((way) => way.squares))
  const [best] = tight.filter((way) => way.squares === squares).sort((a, b) => (a.ids.join('\0') < b.ids.join('\0') ? -1 : 1))
  return { best: best!, unique: tight.length === 1 }
}

const names = fc.uniqueArray(fc.string({ minLength: 1, maxLength: 2, unit: fc.constantFrom('A', 'B', 'a', 'Z', '1') }), { minLength: 6, maxLength: 6 })
const row = fc.integer({ min: 1, max: 4 }).chain((vises) => fc.record({
  beds: fc.array(fc.integer({ min: -12, max: 12 }), { minLength: vises, maxLength: vises }),
  means: fc.array(fc.oneof(fc.integer({ min: 250_000, max: 250_012 }), fc.integer({ min: 300_000, max: 300_008 })), { minLength: vises, maxLength: 6 }),
  ids: names,
}))

const questionFrom = (beds: readonly number[], means: readonly number[], ids: readonly string[], oneZ = true) => ({
  vises: beds.map((bed) => ({ bedUm: bed / 10 })),
  pairs: means.map((mean, k): RowPair => ({ id: ids[k]!, meanMm: mean / 10_000, matchUm: null })),
  oneZ, longBar: null,
})

describe('one Z for all', () => {
  test('is the best of all ways', () => {
    fc.assert(fc.property(row, ({ beds, means, ids }) => {
      const { best, unique } = bestWay(everyWay(beds, means, ids)), found = rowOf(questionFrom(beds, means, ids))
      expect({ assignment: found.assignment, unique: found.unique }).toEqual({ assignment: best.ids, unique })
      expect(found.spreadUm).toBeCloseTo(best.spread / 10, 6)
    }), { numRuns: 800 })
  })

  test('does not hang on where the beds are counted from', () => {
    fc.assert(fc.property(row, fc.integer({ min: -500, max: 500 }), ({ beds, means, ids }, shift) => {
      const moved = rowOf(questionFrom(beds.map((bed) => bed + shift), means, ids)), still = rowOf(questionFrom(beds, means, ids))
      expect(moved.assignment).toEqual(still.assignment)
      moved.zOffsetsUm.forEach((offset, k) => expect(offset).toBeCloseTo(still.zOffsetsUm[k]!, 6))
    }))
  })

  test('goes through many vises and many pairs', () => {
    // beds and means spread over ladders of their own: every top can be made equal, which no search could better
    const beds = Array.from({ length: 40 }, (_, k) => (k * 7) % 40), means = Array.from({ length: 1200 }, (_, k) => 300_000 + ((k * 331) % 1200))
    const found = rowOf(questionFrom(beds, means, means.map((_, k) => `P${String((k * 577) % 1200).padStart(4, '0')}`)))
    expect(new Set(found.assignment).size).toBe(40)
    expect(found.spreadUm).toBeCloseTo(0, 6)
    expect(found.unique).toBe(false)
  })
})

describe('a Z for each vise', () => {
  test('takes the best matched pairs, of equals the first by ids', () => {
    fc.assert(fc.property(row, fc.array(fc.option(fc.integer({ min: 0, max: 4 })), { minLength: 6, maxLength: 6 }), ({ beds, means, ids }, matches) => {
      const question = questionFrom(beds, means, ids, false), pairs = question.pairs.map((pair, k) => ({ ...pair, matchUm: matches[k]! }))
      const worstOf = (way: Way) => Math.max(...way.ids.map((id) => pairs.find((pair) => pair.id === id)!.matchUm ?? Infinity))
      const ways = everyWay(beds, means, ids), worst = Math.min(...ways.map(worstOf)), least = ways.filter((way) => worstOf(way) === worst)
      const [best] = least.sort((a, b) => (a.ids.join('\0') < b.ids.join('\0') ? -1 : 1))
      expect(rowOf({ ...question, pairs })).toMatchObject({ assignment: best!.ids, worstMatchUm: worst === Infinity ? null : worst, unique: least.length === 1 })
    }), { numRuns: 300 })
  })
})

describe('the calculation row', () => {
  const vises = [{ id: 'V1', bedUm: 0 }, { bedUm: 4 }], pairs = [{ id: 'A', meanMm: 20 }, { id: 'B', meanMm: 20.004, matchUm: 1 }]

  test('refuses in order', () => {
    const codeOf = (raw: object): string => refusalOf(answerRow, raw)
    expect(codeOf({ vises: [{ bedUm: 'low' }], pairs: [{ meanMm: 20 }] })).toBe('field-missing pairs[0].id')
    expect(codeOf({ vises: [{ bedUm: 'low' }], pairs, oneZ: 'yes' })).toBe('not-a-number vises[0].bedUm')
    expect(codeOf({ vises: [{ bedUm: 2e9 }], pairs, oneZ: 'yes' })).toBe('unknown-word oneZ')
    expect(codeOf({ vises: [{ bedUm: 2e9 }], pairs })).toBe('too-large vises[0].bedUm')
    expect(codeOf({ vises: Array.from({ length: 101 }, () => ({ bedUm: 0 })), pairs })).toBe('too-many vises')
    expect(codeOf({ vises: [], pairs: [{ id: 'A', meanMm: 0, matchUm: -1 }] })).toBe('size-not-positive pairs[0].meanMm')
    expect(codeOf({ vises: [], pairs: [pairs[0], { id: 'A', meanMm: 3, matchUm: -1 }] })).toBe('difference-negative pairs[1].matchUm')
    expect(codeOf({ vises: [], pairs: [pairs[0], pairs[0]] })).toBe('bar-id-twice pairs[1].id')
    expect(codeOf({ vises: [], pairs })).toBe('too-few-vises vises')
    expect(codeOf({ vises, pairs: pairs.slice(1) })).toBe('too-few-pairs pairs')
  })

  // Worked by hand: 18 µm over 250 are 0.072 µm for each mm, 28.8 µm over 400.
  test('says how a long bar lies over two vises', () => {
    const asked = { vises: [{ bedUm: 0 }, { bedUm: 18 }], pairs, longBar: { apartMm: 250, lengthMm: 400 } }
    expect(answerRow(asked).longBar!.slopeUmPerMm).toBeCloseTo(0.072, 12)
    expect(answerRow(asked).longBar!.endToEndUm).toBeCloseTo(28.8, 9)
    expect(answerRow({ ...asked, longBar: { ...asked.longBar, from: 1, to: 0 } }).longBar!.endToEndUm).toBeCloseTo(-28.8, 9)
    expect(refusalOf(answerRow, { ...asked, longBar: { ...asked.longBar, to: 2 } })).toBe('unknown-vise longBar.to')
    expect(refusalOf(answerRow, { ...asked, longBar: { apartMm: 0, lengthMm: 1, from: 5 } })).toBe('size-not-positive longBar.apartMm')
  })

  test('tells what it did not know, and how the numbers came about', () => {
    const { ignored, sum, zOffsetsUm } = answerRow({ vises, pairs, colour: 'blue', oneZ: null })
    expect(ignored).toEqual(['colour'])
    // B on the lower bed: tops 20.004 and 20.004
    expect(zOffsetsUm).toEqual([0, 0])
    expect(sum.find((one) => one.formula === 'row-top')).toMatchObject({ result: { name: 'tops[0].topMm', value: 20.004 }, inputs: { meanMm: 20.004, bedUm: 0 } })
  })
})
