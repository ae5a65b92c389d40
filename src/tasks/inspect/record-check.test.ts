// The pair on a 25,000 block is own arithmetic; limits 2, 5, 10, 25 µm are common practice, no source.
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { InstrumentIs } from '#model/instrument-record.ts'
import { firstChange } from '#model/record-fields.ts'
import { applyChanges } from '#store/changes.ts'
import { checksOf } from '#store/checks.ts'
import { openExample } from '#store/example-store.ts'
import type { Store } from '#store/store.ts'
import { checkOfShop } from '#tasks/inspect/check-of-shop.ts'
import { matesOfShop } from '#tasks/inspect/mates-of-shop.ts'
import { readingsFromCsv } from '#tasks/inspect/readings-from-csv.ts'
import { recordCheck } from '#tasks/inspect/record-check.ts'
import { type Maker, makerFor } from '#tasks/maker.ts'
import { addBars } from '#tasks/rack/add-bars.ts'
import { listRack } from '#tasks/rack/list-rack.ts'

let store: Store, by: Maker, minutes: number, codes: readonly string[], ids: readonly string[]
const instrument = (id: string, name: string, figures: InstrumentIs) => firstChange('instrument', id, { name, figures, dueOn: null, retired: false, note: '' }, by)
beforeEach(async () => {
  store = await openExample()
  by = makerFor('KM', 'bench')
  minutes = 0
  const bars = await addBars(store, { height: '25', thickness: '8', length: '100', pair: true }, by)
  codes = bars.map(({ code }) => code)
  ids = bars.map(({ id }) => id)
  await applyChanges(store, [
    instrument('lever', 'Lever 1 µm', { is: 'indicator', resolutionUm: 1, limitUm: null, repeatabilityUm: 0.3 }),
    instrument('plate', 'Plate', { is: 'plate', lengthMm: 630, widthMm: 400, grade: 'DIN 876 0', flatnessUm: null }),
    instrument('blocks', 'Blocks', { is: 'gauge blocks', grade: '1', limitUm: null, uUm: null }),
  ])
})
afterEach(() => store.close())

/** A minute later each time, so that the later check is the latest. */
const later = (): Maker => ({ ...by, atIso: new Date(Date.parse(by.atIso) + ++minutes * 60_000).toISOString() })

const pair = () => readingsFromCsv(`bar,reading\n${['+3', '+4', '+2'].map((text) => `${codes[0]},${text}`).join('\n')}\n${['+6', '+5', '+4'].map((text) => `${codes[1]!.toLowerCase()},${text}`).join('\n')}\n`)

test('a check out of a short table: kept as typed, its figures those of the books', async () => {
  const { check, checked, asks } = await recordCheck(store, { method: 'compare', readings: pair(), zero: '25,000', instrument: 'lever 1 µm', plate: 'Plate', blocks: 'blocks', closing: '0', temperature: '21' }, later())
  expect(checked.bars.map(({ heightMm }) => heightMm!.toFixed(4))).toEqual(['25.0030', '25.0050'])
  expect(checked.pair).toMatchObject({ worstAsLaidUm: 3, worstTurnedUm: 4 })
  expect(asks).toEqual([])
  // DIN 876 grade 0, longest side 630: 4 + 630/250 = 6.52 µm; a grade 1 block of 25 mm is within ±0.30 µm (DIN 861, ISO 3650).
  expect(check.took!.readWith).toMatchObject({ blockLimitUm: 0.3, awayC: 1 })
  expect(check.took!.readWith.plateFlatnessUm).toBeCloseTo(6.52, 9)
  expect((await checksOf(store)).at(-1)).toEqual(check)
  expect(await checkOfShop(store, check.id)).toMatchObject({ check, checked, replacedBy: null })
  expect((await listRack(store)).map(({ heightMm, standing, trust }) => [heightMm.toFixed(3), standing, trust])).toEqual([['25.003', 'measured', 'trusted'], ['25.005', 'measured', 'trusted']])
})

test('a dry run works it out and keeps nothing; a correction names the check it replaces', async () => {
  const before = (await checksOf(store)).length
  await recordCheck(store, { method: 'compare', readings: pair(), zero: '25' }, later(), { dryRun: true })
  expect(await checksOf(store)).toHaveLength(before)
  const first = await recordCheck(store, { method: 'compare', readings: pair(), zero: '25' }, later())
  const mended = await recordCheck(store, { method: 'compare', readings: pair(), zero: '30', replaces: first.check.id }, later())
  expect(await checkOfShop(store, first.check.id)).toMatchObject({ replacedBy: mended.check.id })
  expect((await listRack(store))[0]!.heightMm).toBeCloseTo(30.003, 9)
  await expect(checkOfShop(store, 'nobody')).rejects.toMatchObject({ code: 'check-not-known' })
})

test('a slip of the unit is kept as read and asked about', async () => {
  const { asks } = await recordCheck(store, { method: 'compare', readings: ['+3', '+4', '0.002'].map((reading) => ({ bar: ids[0]!, reading })), zero: '25', instrument: 'lever' }, later())
  expect(asks).toMatchObject([{ code: 'reading-unit-slip', text: '0.002', facts: { meant: '+2 µm' } }])
})

test.each<[string, () => Parameters<typeof recordCheck>[1], object]>([
  ['bar-not-known', () => ({ method: 'compare', zero: '25', readings: [{ bar: 'NOBODY', reading: '0' }] }), { given: 'NOBODY' }],
  ['instrument-not-known', () => ({ method: 'compare', zero: '25', instrument: 'micrometer', readings: pair() }), { field: 'instrument', needed: ['Lever 1 µm'] }],
  ['readings-uneven', () => ({ method: 'compare', zero: '25', readings: pair().slice(1) }), { given: 2, needed: 3 }],
  ['field-missing', () => ({ method: 'compare', readings: pair() }), { field: 'zero' }],
  ['not-a-number', () => ({ method: 'micrometer', readings: [{ bar: codes[0]!, reading: 'x' }] }), { given: 'x' }],
  ['check-not-known', () => ({ method: 'compare', zero: '25', readings: pair(), replaces: 'c-none' }), { field: 'replaces' }],
])('refuses %s', async (code, given, facts) => {
  const before = await checksOf(store)
  await expect(recordCheck(store, given(), later())).rejects.toMatchObject({ code, facts })
  expect(await checksOf(store)).toEqual(before)
})

test.each([
  ['', 'file-empty'], ['bar,reading,colour\nA,1,2', 'column-unknown'], ['bar\nA', 'column-missing'], ['bar,reading,face\nA,1,C', 'unknown-word'], ['bar,reading\nA,1,2', 'cells-miscounted'], ['bar,reading\n,1', 'field-missing'],
])('%j: %s', (csv, code) => {
  expect(() => readingsFromCsv(csv)).toThrow(expect.objectContaining({ code: 'csv-not-imported', facts: expect.objectContaining({ complaints: expect.arrayContaining([expect.objectContaining({ code })]) }) }))
})

test('mates out of the measured bars of the shop, or of those named', async () => {
  await recordCheck(store, { method: 'compare', readings: pair(), zero: '25', instrument: 'lever' }, later())
  const [other] = await addBars(store, { height: '25', thickness: '8', length: '100' }, by)
  const found = await matesOfShop(store, { wish: { want: 'pairs', withinUm: 5 } })
  expect(found.groups).toMatchObject([{ bars: [...ids].sort(), worstUm: 3, turnOne: false }])
  expect(found.bars.map(({ id }) => id)).not.toContain(other!.id)
  await expect(matesOfShop(store, { wish: { want: 'pairs', withinUm: 5 }, bars: [other!.code, codes[0]!] })).rejects.toMatchObject({ code: 'too-few-bars', facts: { given: 1 } })
})
