import { afterEach, beforeEach, expect, test } from 'vitest'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'
import { addChecks } from '#store/checks.ts'
import { addEvents } from '#store/events.ts'
import { historyOf } from '#store/history.ts'
import { openExample } from '#store/example-store.ts'
import { recordOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'
import { makerFor } from '#tasks/maker.ts'
import { addBars } from '#tasks/rack/add-bars.ts'
import { importRack } from '#tasks/rack/import-rack.ts'
import { listRack } from '#tasks/rack/list-rack.ts'

let store: Store
beforeEach(async () => { store = await openExample() })
afterEach(() => store.close())

const by = makerFor('KM', 'bench')
const later = () => ({ ...makerFor('KM', 'bench'), atIso: new Date(Date.now() + 60_000).toISOString() })
const pair = { height: '1 3/8', thickness: '1/4', length: '6 in', name: 'C', pair: true, slot: 'B4' }

test('a pair comes in as two bars that are mates, to be looked at first, with marked sizes', async () => {
  const added = await addBars(store, pair, by)
  // 1 3/8 in = 34.925 mm, 6 in = 152.4 mm by definition of the inch; a bare fraction is inches in a shop of millimetres too.
  expect(added).toMatchObject(Array.from({ length: 2 }, () => (
    { heightMm: 34.925, thicknessMm: 6.35, lengthMm: 152.4, name: 'C', mates: 'C', slot: 'B4', trust: 'look first', standing: 'marked', thicknessStanding: 'marked' })))
  expect(added[0]!.matesId).toBe(added[1]!.matesId)
  expect(added[0]!.code).not.toBe(added[1]!.code)
  await expect(recordOf(store, 'bar', added[0]!.id)).resolves.toMatchObject({ where: { at: 'slot' } })
  expect((await historyOf(store, 'bar', added[0]!.id)).map((entry) => entry.what).sort()).toEqual(['change', 'check', 'event'])
  const [single] = await addBars(store, { height: '34', thickness: '10', length: '120', drillBar: true, slot: 'b4' }, by)
  expect(single).toMatchObject({ mates: null, trust: 'drill bar', slot: 'B4' })
})

test('what is no size is refused by field, and nothing is added', async () => {
  const refused = (more: object) => expect(addBars(store, { ...pair, ...more }, by)).rejects
  await refused({ height: '' }).toMatchObject({ code: 'field-missing', facts: { field: 'height' } })
  await refused({ thickness: 'x' }).toMatchObject({ code: 'not-a-number', facts: { field: 'thickness', given: 'x' } })
  await refused({ length: '-6' }).toMatchObject({ code: 'size-not-positive', facts: { field: 'length', given: '-6' } })
  await refused({ height: '0' }).toMatchObject({ code: 'size-not-positive' })
  await refused({ height: '1e308' }).toMatchObject({ code: 'not-a-number' })
  await refused({ height: 'NaN' }).toMatchObject({ code: 'not-a-number' })
  await refused({ name: 'x'.repeat(41) }).toMatchObject({ code: 'value-not-allowed', facts: { field: 'name' } })
  await refused({ slot: 'x'.repeat(21) }).toMatchObject({ code: 'value-not-allowed', facts: { field: 'slot' } })
  expect(await listRack(store)).toEqual([])
  expect(await store.db.selectFrom('slot').selectAll().execute()).toEqual([])
})

test('the list stands in order of height and finds what is asked', async () => {
  await importRack(store, { id: 'one', csv: 'name,height,thickness,length,mates,slot,note\nodd,34,8,150,,,nicked\nC,35,8,150,C,B4,\nC,35,8,150,C,B4,\nlow,10,8,150,,A1,\n' }, by)
  const names = async (filter: Parameters<typeof listRack>[1]) => (await listRack(store, filter)).map((line) => line.name)
  expect(await names({})).toEqual(['low', 'odd', 'C', 'C'])
  expect(await names({ heightMm: 35 })).toEqual(['C', 'C'])
  expect(await names({ find: 'NICK' })).toEqual(['odd'])
  expect(await names({ find: 'b4' })).toEqual(['C', 'C'])
  expect(await names({ thicknessMm: 10 })).toEqual([])
  expect(await names({ trust: 'trusted' })).toEqual([])
  const [first] = await listRack(store, { heightMm: 35 })
  await addChecks(store, [{
    id: 'c1', method: 'micrometer', replaces: null, ...nothingTaken, readings: [{ bar: first!.id, station: 0, xMm: null, ...onTheFirstLine, text: '35,003', heightMm: 35.003 }], note: '', person: 'KM', device: 'bench', atIso: later().atIso,
  }])
  expect(await listRack(store, { heightMm: 35 })).toMatchObject(expect.arrayContaining([expect.objectContaining({ standing: 'marked', heightMm: 35 }), expect.objectContaining({ standing: 'measured', heightMm: 35.003 })]))
})

test('a bar that is gone leaves the list, is listed when asked for, and comes back when that is taken back', async () => {
  const [one] = await addBars(store, { ...pair, pair: false }, by), happened = { bar: one!.id, note: '', person: 'KM', device: 'bench' }
  await addEvents(store, [{ ...happened, id: 'e1', kind: 'gone', undoes: null, atIso: later().atIso }])
  expect(await listRack(store)).toEqual([])
  expect(await listRack(store, { gone: true })).toMatchObject([{ id: one!.id, trust: 'gone' }])
  await addEvents(store, [{ ...happened, id: 'e2', kind: 'undone', undoes: 'e1', atIso: later().atIso }])
  expect(await listRack(store)).toMatchObject([{ id: one!.id, trust: 'look first' }])
})

test('thousands of bars come in whole, more than one check holds', async () => {
  const csv = `name,height,thickness,length,mates,slot\n${Array.from({ length: 6000 }, (_none, at) => `n${at},${10 + (at % 50)},8,150,m${Math.floor(at / 2)},S${at % 200}\n`).join('')}`
  expect(await importRack(store, { id: 'one', csv }, by)).toMatchObject({ bars: 6000, mates: 3000 })
  expect(await listRack(store)).toHaveLength(6000)
})
