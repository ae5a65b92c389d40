// What counts as proved is the engine's (engine/rack/proved-uses.test.ts); here: which reason is given. Readings and limits by own arithmetic.
import { expect, test } from 'vitest'
import type { BarRecord } from '#model/bar-record.ts'
import type { Check, Took } from '#model/check.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'
import { newShop, type ShopRecord } from '#model/shop-record.ts'
import { proofOf } from '#web/rack/proof.ts'
import { sayWhyNot } from '#web/rack/say-proof.ts'

const record: BarRecord = { id: 'b', saw: {}, code: 'ABCD2345', name: '25', thicknessMm: 8, thicknessStanding: 'marked', lengthMm: 100, matesId: null, slotId: null, where: { at: 'slot' }, note: '' }
const took: Took = {
  instrument: { id: 'i', name: 'lever', dueOn: null }, plate: null, blocks: null,
  readWith: { method: 'compare', resolutionUm: 1, limitUm: null, repeatabilityUm: 0.3, plateFlatnessUm: null, blockLimitUm: 0.3, blockUUm: null, betweenC: null, awayC: null, expansionPerC: 11.5e-6, expansionApartPerC: 1e-6 },
}
const check = (um: readonly number[], more: Partial<Check> = {}): Check => ({
  id: 'c', method: 'compare', replaces: null, ...nothingTaken, took, zero: { on: 'block', heightMm: 25, text: '25' }, note: '', person: 'KM', device: 'd', atIso: '2026-03-02T08:00:00.000Z',
  readings: um.map((one, station) => ({ bar: 'b', station, xMm: 5 + (90 * station) / (um.length - 1), ...onTheFirstLine, text: '', heightMm: 25 + one / 1000 })), ...more,
})
const shop: ShopRecord = { ...newShop, id: 'shop', saw: {} }
const whys = (checks: readonly Check[], events: Parameters<typeof proofOf>[1]['events'] = []) =>
  proofOf(record, { bars: [record], checks, events, shop }).uses.map(({ whyNot }) => (whyNot === null ? 'proved' : sayWhyNot(whyNot, newShop.units)))

test('a bar that was only marked was never checked', () => {
  expect(new Set(whys([check([0], { method: 'stated', took: null, zero: null })]))).toEqual(new Set(['never checked: the height is only marked']))
})

test('out of parallel for the finer uses, proved for the others', () => {
  expect(whys([check([0, 7, 7])])).toEqual(['proved', 'proved', 'out: further from parallel than 5 µm', 'out: further from parallel than 2 µm'])
})

test('a quick look leaves the plate to be asked for', () => {
  const looks: Check['looks'] = [{ bar: 'b', wiped: true, stoned: true, rock: 'none', feelerText: '', feelerUm: null, seen: [] }]
  const plate = 'wants a check on the plate, both ends and the middle'
  expect(whys([check([0, 1], { method: 'micrometer', looks })])).toEqual(['proved', 'proved', plate, plate])
})

test('what happened since the check, and a rock, take all away', () => {
  const knocked = { id: 'e', bar: 'b', kind: 'knocked', undoes: null, note: '', person: 'KM', device: 'd', atIso: '2026-03-03T08:00:00.000Z' } as const
  expect(whys([check([0, 1, 0])], [knocked]).every((why) => /^knocked .*2026, after its check$/.test(why))).toBe(true)
  expect(whys([check([0, 1, 0], { looks: [{ bar: 'b', wiped: true, stoned: true, rock: 'rocks', feelerText: '', feelerUm: null, seen: [] }] })])).toEqual(Array.from({ length: 4 }, () => 'it rocked at its last check'))
})

test('the height carries the uncertainty of its check', () => {
  const { height } = proofOf(record, { bars: [record], checks: [check([3, 4, 2])], events: [], shop })
  expect(height!.heightMm).toBeCloseTo(25.003, 9)
  expect(height!.uUm).toBeGreaterThan(0.2)
})
