import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { answerFill } from '#engine/setup/fill/answer-fill.ts'
import { fillsOf, type Fill, type FillQuestion } from '#engine/setup/fill/fill.ts'
import { refusalOf } from '#engine/read/refusal-of.ts'

/** Every choice of up to three entries with bars of their own, in whole steps of 0.01, in the order that the rule asks for. */
function everyFill(targetSteps: number, toleranceSteps: number, sizes: readonly { readonly id: string; readonly steps: number }[]) {
  const found: { readonly ids: readonly string[]; readonly off: number }[] = []
  const go = (from: number, taken: readonly number[]): void => {
    const entries = taken.map((k) => sizes[k]!), off = Math.abs(entries.reduce((sum, one) => sum + one.steps, 0) - targetSteps)
    if (entries.length > 0 && off <= toleranceSteps && new Set(entries.map((one) => one.id)).size === entries.length) found.push({ ids: entries.map((one) => one.id).sort(), off })
    if (taken.length < 3) for (let k = from; k < sizes.length; k += 1) go(k + 1, [...taken, k])
  }
  go(0, [])
  return found.sort((a, b) => a.ids.length - b.ids.length || a.off - b.off || (a.ids.join('\0') < b.ids.join('\0') ? -1 : 1))
}

const entry = fc.record({ id: fc.constantFrom('A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'), steps: fc.oneof(fc.constantFrom(300, 500, 800), fc.integer({ min: 290, max: 320 })) })
const asked = fc.record({ target: fc.integer({ min: 280, max: 1700 }), tolerance: fc.integer({ min: 0, max: 20 }), sizes: fc.uniqueArray(entry, { maxLength: 12, selector: (one) => `${one.id} ${one.steps}` }), most: fc.oneof(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 25 })) })
const questionFrom = ({ target, tolerance, sizes, most }: { target: number; tolerance: number; sizes: readonly { id: string; steps: number }[]; most: number }): FillQuestion =>
  ({ targetMm: target / 100, toleranceMm: tolerance / 100, sizes: sizes.map(({ id, steps }) => ({ id, sizeMm: steps / 100 })), most })

describe('fillers', () => {
  test('are the first of all there are: fewest pieces, nearest, ids', () => {
    fc.assert(fc.property(asked, (question) => {
      const all = everyFill(question.target, question.tolerance, question.sizes).slice(0, question.most), found = fillsOf(questionFrom(question))
      expect(found.map((fill) => fill.ids)).toEqual(all.map((fill) => fill.ids))
      found.forEach((fill, k) => expect(Math.abs(fill.errorMm)).toBeCloseTo(all[k]!.off / 100, 9))
    }), { numRuns: 2000 })
  })

  test('keep the order of ids where a bar goes in by either of its sizes', () => {
    // 8 by hand: A lying 2 beside BB 6; A 3 beside C 5; A 5 beside B 3. By ids the last comes first.
    const sizes = [['A', 2], ['A', 3], ['A', 5], ['B', 3], ['BB', 6], ['C', 5]].map(([id, sizeMm]) => ({ id: String(id), sizeMm: Number(sizeMm) }))
    for (const most of [1, 2, 3]) expect(fillsOf({ targetMm: 8, toleranceMm: 0, sizes, most }).map(({ ids }) => ids.join(' '))).toEqual(['A B', 'A BB', 'A C'].slice(0, most))
  })

  test('add up, from bars that are there', () => {
    fc.assert(fc.property(asked, (raw) => {
      const question = questionFrom(raw)
      for (const { ids, sizesMm, totalMm, errorMm } of fillsOf(question)) {
        ids.forEach((id, k) => expect(question.sizes).toContainEqual({ id, sizeMm: sizesMm[k] }))
        expect(sizesMm.reduce((sum, mm) => sum + mm, 0)).toBeCloseTo(totalMm, 9)
        expect(totalMm - question.targetMm).toBeCloseTo(errorMm, 9)
      }
    }))
  })

  test('come out of a full rack', () => {
    // 3000 sizes in steps of 0.05, every size three times: what adds to 61 exactly is known without searching
    const sizes = Array.from({ length: 3000 }, (_, k) => ({ id: `B${String((k * 7) % 3000).padStart(4, '0')}`, sizeMm: (100 + (k % 1000)) / 20 }))
    const fills: readonly Fill[] = fillsOf({ targetMm: 61, toleranceMm: 0.05, sizes, most: 200 })
    expect(fills).toHaveLength(200)
    expect(fills.every((fill) => fill.ids.length === 2 && Math.abs(fill.errorMm) < 1e-9)).toBe(true)
  })
})

describe('the calculation fill', () => {
  const codeOf = (raw: unknown): string => refusalOf(answerFill, raw).split(' ')[0]!

  test('takes 0.05 and ten answers where nothing is said', () => {
    const sizes = Array.from({ length: 12 }, (_, k) => ({ id: `S${k}`, sizeMm: 10 + k / 100 }))
    expect(answerFill({ targetMm: 10, sizes }).fills.map((fill) => fill.ids)).toEqual([['S0'], ['S1'], ['S2'], ['S3'], ['S4'], ['S5']])
    expect(answerFill({ targetMm: 10, toleranceMm: 1, sizes, colour: 'blue' })).toMatchObject({ fills: { length: 10 }, ignored: ['colour'] })
  })

  test('refuses in order', () => {
    expect(codeOf({ targetMm: 'ten', sizes: [{ sizeMm: 3 }] })).toBe('field-missing')
    expect(codeOf({ targetMm: 'ten', sizes: [{ id: 'A', sizeMm: 3e6 }] })).toBe('not-a-number')
    expect(codeOf({ targetMm: 1, sizes: [{ id: 'A', sizeMm: 3e6 }], most: 5000 })).toBe('too-large')
    expect(codeOf({ targetMm: 0, toleranceMm: -1, sizes: [], most: 5000 })).toBe('too-many')
    expect(codeOf({ targetMm: 10, toleranceMm: -1, sizes: [{ id: 'A', sizeMm: 0 }] })).toBe('size-not-positive')
    expect(codeOf({ targetMm: 10, toleranceMm: -1, sizes: [{ id: 'A', sizeMm: 1 }] })).toBe('wish-negative')
    expect(codeOf({ targetMm: 10, sizes: [] })).toBe('answered')
  })
})
