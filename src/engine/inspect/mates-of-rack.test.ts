// Own arithmetic on invented bars; limits 2, 5, 10, 25 µm are common practice, no source.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { newShop } from '#model/shop-record.ts'
import { useLimits } from '#engine/rack/use-limits.ts'
import { proposeMates } from '#engine/inspect/mates-of-rack.ts'
import type { MeasuredBar } from '#engine/inspect/measured-bar.ts'
import { usesProved } from '#engine/inspect/uses-proved.ts'

const limits = useLimits(newShop.limitsUm)
const bar = (id: string, um: readonly number[], more: Partial<MeasuredBar> = {}): MeasuredBar => ({
  id, lengthMm: 100, check: 'c', atIso: '', heightMm: 25 + um.reduce((sum, one) => sum + one, 0) / um.length / 1000, uUm: 1, uAloneUm: 0.3,
  profile: um.map((one, i) => [5 + (90 * i) / (um.length - 1), 25 + one / 1000]), uses: usesProved(Math.max(...um) - Math.min(...um), 0.3, limits), ...more,
})

describe('pairs', () => {
  test('as many as keep within the limit, the better way round, what is over named', () => {
    const found = proposeMates([bar('d', [40, 40, 40]), bar('b', [4, 2, 0]), bar('a', [0, 2, 4]), bar('c', [9, 9, 9]), bar('e', [10, 10, 10])], { want: 'pairs', withinUm: 5 }, limits)
    expect(found.groups.map(({ bars, turnOne, worstUm }) => ({ bars, turnOne, worstUm }))).toEqual([{ bars: ['a', 'b'], turnOne: true, worstUm: 0 }, { bars: ['c', 'e'], turnOne: false, worstUm: 1 }])
    expect(found.leftOver).toEqual(['d'])
  })

  test('good for the worst of their difference and of their own parallelism', () => {
    const [tapered] = proposeMates([bar('a', [0, 2, 4]), bar('b', [4, 2, 0])], { want: 'pairs', withinUm: 5 }, limits).groups
    // Difference 0, but each bar 4 µm out of parallel: 4 + 1.65 · 0.3 is within 5 and beyond 2.
    expect(tapered!.uses.map(({ use, verdict }) => [use, verdict])).toEqual([['drilling', 'proved'], ['milling', 'proved'], ['fine milling', 'proved'], ['grinding', 'out']])
    const [even] = proposeMates([bar('a', [0, 0, 0]), bar('b', [1, 1, 1])], { want: 'pairs', withinUm: 5 }, limits).groups
    expect(even!.uses.at(-1)).toMatchObject({ use: 'grinding', verdict: 'proved' })
    expect(even!.uUm).toBeCloseTo(Math.hypot(0.3, 0.3), 12)
  })

  test('of two checks share nothing, which is said', () => {
    const [mates] = proposeMates([bar('a', [0, 0, 0]), bar('b', [1, 1, 1], { check: 'other' })], { want: 'pairs', withinUm: 5 }, limits).groups
    expect(mates!.uUm).toBeCloseTo(Math.SQRT2, 12)
    expect(mates!.because.map(({ code }) => code)).toContain('mates-of-two-checks')
  })

  test('without uncertainty prove nothing, which is said', () => {
    const [mates] = proposeMates([bar('a', [0, 0, 0], { uUm: null, uAloneUm: null, uses: [] }), bar('b', [1, 1, 1])], { want: 'pairs', withinUm: 5 }, limits).groups
    expect(mates).toMatchObject({ provedToUm: null, uses: [] })
    expect(mates!.because.map(({ code }) => code)).toContain('mates-uncertainty-not-known')
  })

  test('read at different places are compared between their readings', () => {
    // The same straight taper read at 3 and at 5 places.
    const found = proposeMates([bar('a', [0, 2, 4]), bar('b', [0, 1, 2, 3, 4])], { want: 'pairs', withinUm: 5 }, limits)
    expect(found.groups[0]!.worstUm).toBeCloseTo(0, 6)
    expect(found.groups[0]!.turnOne).toBe(false)
  })

  test('of unknown places are compared by their means, which is said', () => {
    const found = proposeMates([bar('a', [0, 2, 4]), bar('b', [2, 2, 2], { profile: [] })], { want: 'pairs', withinUm: 5 }, limits)
    expect(found.groups[0]).toMatchObject({ turnOne: false, worstUm: 0 })
    expect(found.findings).toEqual([{ code: 'mates-by-mean-height', facts: { bar: ['b'] } }])
  })

  test('the order in which the bars are given changes nothing', () => {
    const profile = fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 3, maxLength: 3 })
    fc.assert(fc.property(fc.array(profile, { minLength: 2, maxLength: 9 }), fc.integer({ min: 1, max: 30 }), fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })), (profiles, withinUm, order) => {
      const bars = profiles.map((um, i) => bar(`b${i}`, um)), shuffled = bars.map((one) => ({ one, at: order.next().value as number })).sort((a, b) => a.at - b.at).map(({ one }) => one)
      expect(proposeMates(shuffled, { want: 'pairs', withinUm }, limits)).toEqual(proposeMates(bars, { want: 'pairs', withinUm }, limits))
    }))
  })
})

test('a row takes two bars for each vise, all as equal as they can be', () => {
  const bars = [bar('a', [0, 0, 0]), bar('b', [30, 30, 30]), bar('c', [31, 31, 31]), bar('d', [33, 33, 33]), bar('e', [34, 34, 34]), bar('f', [60, 60, 60])]
  const found = proposeMates(bars, { want: 'row', vises: 2 }, limits)
  expect(found.groups.map((one) => one.bars)).toEqual([['b', 'c'], ['d', 'e']])
  expect(found.row!.spreadUm).toBeCloseTo(4, 9)
  expect(found.row!.uses.find(({ use }) => use === 'fine milling')!.verdict).toBe('proved')
  expect(found.leftOver).toEqual(['a', 'f'])
})

test.each<[string, () => unknown]>([
  ['too-few-bars', () => proposeMates([bar('a', [0, 0, 0])], { want: 'pairs', withinUm: 5 }, limits)],
  ['too-few-bars', () => proposeMates([bar('a', [0, 0]), bar('b', [0, 0])], { want: 'row', vises: 2 }, limits)],
  ['size-not-positive', () => proposeMates([bar('a', [0, 0]), bar('b', [0, 0])], { want: 'pairs', withinUm: 0 }, limits)],
])('refuses %s', (code, propose) => {
  try { propose(); expect.unreachable() } catch (error) { expect(error).toBeInstanceOf(Refusal); expect(error).toMatchObject({ code }) }
})
