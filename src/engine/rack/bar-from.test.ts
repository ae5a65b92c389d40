import fc from 'fast-check'
import { expect, test } from 'vitest'
import { barFrom, barsFrom } from '#engine/rack/bar-from.ts'
import type { BarEvent } from '#model/bar-event.ts'
import type { BarRecord } from '#model/bar-record.ts'
import { newShop } from '#model/shop-record.ts'
import type { Check } from '#model/check.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'

const record: BarRecord = {
  id: 'b', code: 'ABCD2345', name: '35', thicknessMm: 8, thicknessStanding: 'marked', lengthMm: 150, matesId: null, slotId: null,
  where: { at: 'slot' }, note: '', saw: {},
}
const check = (id: string, method: Check['method'], heights: readonly (number | [xMm: number, heightMm: number])[], more: Partial<Check> = {}): Check => ({
  id, method, replaces: null, ...nothingTaken, note: '', person: 'KM', device: 'd', atIso: '2025-03-04T08:00:00.000Z',
  readings: heights.map((height, station) => ({
    bar: 'b', station, ...onTheFirstLine, text: '', ...(typeof height === 'number' ? { xMm: null, heightMm: height } : { xMm: height[0], heightMm: height[1] }),
  })),
  ...more,
})
const later = '2025-04-04T08:00:00.000Z', latest = '2025-05-04T08:00:00.000Z'
const event = (kind: BarEvent['kind'], atIso: string): BarEvent => ({ id: `e-${kind}`, bar: 'b', kind, undoes: null, note: '', person: 'KM', device: 'd', atIso })
const shop = newShop, none = { viseId: null }

test('a stated height is marked, a micrometer makes it measured: the mean of its readings', () => {
  expect(barFrom(record, [check('c1', 'stated', [35])], [], none, shop)).toEqual({
    id: 'b', heightMm: 35, thicknessMm: 8, lengthMm: 150, trust: 'look first', standing: 'marked', thicknessStanding: 'marked', where: 'slot',
  })
  const measured = barFrom(record, [check('c1', 'stated', [35]), check('c2', 'micrometer', [[140, 35.004], [10, 35.001], 35.001], { atIso: later })], [], none, shop)!
  expect(measured.standing).toBe('measured')
  expect(measured.heightMm).toBeCloseTo(35.002, 9)
  // Only where the place along the bar is known, in the order of the stations: +2 µm and −1 µm about the mean by hand.
  expect(measured.heightsUm!.map(([xMm, um]) => [xMm, Math.round(um * 1000) / 1000])).toEqual([[10, -1], [140, 2]])
})

test('the latest check counts, whichever comes first, unless another replaces it', () => {
  const old = check('c1', 'micrometer', [35.01]), typo = check('c2', 'micrometer', [53], { atIso: later })
  const mended = check('c3', 'micrometer', [35.03], { replaces: 'c2', atIso: later })
  expect(barFrom(record, [typo, old], [], none, shop)!.heightMm).toBe(53)
  expect(barFrom(record, [mended, typo, old], [], none, shop)!.heightMm).toBe(35.03)
  const twice = check('c4', 'micrometer', [35.04], { replaces: 'c3', atIso: '2025-01-01T08:00:00.000Z' })
  expect(barFrom(record, [mended, typo, twice], [], none, shop)!.heightMm).toBe(35.04)
})

test('a bar reground after its check is marked until it is measured again', () => {
  const measured = check('c1', 'micrometer', [35.01])
  expect(barFrom(record, [measured], [event('reground', later)], none, shop)!.standing).toBe('marked')
  expect(barFrom(record, [measured, check('c2', 'micrometer', [34.8], { atIso: latest })], [event('reground', later)], none, shop)).toMatchObject({ standing: 'measured', heightMm: 34.8 })
})

test('where a bar is, as seen from a vise', () => {
  const inVise = { ...record, where: { at: 'vise', viseId: 'v1' } as const }
  const whereOf = (one: BarRecord, viseId: string | null) => barFrom(one, [check('c1', 'stated', [35])], [], { viseId }, shop)!.where
  expect(whereOf(record, 'v1')).toBe('slot')
  expect(whereOf(inVise, 'v1')).toBe('here')
  expect(whereOf(inVise, 'v2')).toBe('out')
  expect(whereOf(inVise, null)).toBe('out')
  expect(whereOf({ ...record, where: { at: 'out', who: 'JO' } }, 'v1')).toBe('out')
})

test('a bar whose height has not arrived is not in the rack', () => {
  expect(barFrom(record, [], [], none, shop)).toBeNull()
  const other = { ...record, id: 'other', matesId: 'm' }
  const bars = barsFrom({ bars: [record, other], checks: [check('c1', 'stated', [35], { readings: [{ bar: 'other', station: 0, xMm: null, ...onTheFirstLine, text: '35', heightMm: 35 }] })], events: [], shop }, none)
  expect(bars).toMatchObject([{ id: 'other' }])
})

test('equal readings give exactly themselves, and a mean lies between its readings', () => {
  const height = fc.double({ min: 1, max: 300, noNaN: true })
  fc.assert(fc.property(height, fc.integer({ min: 1, max: 30 }), (heightMm, count) => {
    expect(barFrom(record, [check('c', 'micrometer', Array.from({ length: count }, () => heightMm))], [], none, shop)!.heightMm).toBe(heightMm)
  }))
  fc.assert(fc.property(fc.array(height, { minLength: 1, maxLength: 20 }), (heights) => {
    const mean = barFrom(record, [check('c', 'micrometer', heights)], [], none, shop)!.heightMm
    expect(mean).toBeGreaterThanOrEqual(Math.min(...heights) - 1e-9)
    expect(mean).toBeLessThanOrEqual(Math.max(...heights) + 1e-9)
  }))
})
