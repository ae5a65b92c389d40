import { afterEach, beforeEach, expect, test } from 'vitest'
import { editOf, firstChange } from '#model/record-fields.ts'
import { applyChanges } from '#store/changes.ts'
import { barFields, byFrom, event, setupFields, setupForm, stated, viseFields } from '#store/example-records.ts'
import { keepDeed } from '#store/deeds.ts'
import { historyOf } from '#store/history.ts'
import { openExample } from '#store/example-store.ts'
import type { Store } from '#store/store.ts'
import { recordOf } from '#store/records.ts'
import { addTold, toldOf } from '#store/told.ts'
import { addUnserved, unservedOf } from '#store/unserved.ts'

let store: Store
beforeEach(async () => { store = await openExample() })
afterEach(() => store.close())

const at = (hour: string) => `2025-03-04T${hour}:00:00.000Z`
const by = { person: 'KM', device: 'bench' }
const added = () => ({
  changes: [firstChange('bar', 'left', barFields('ABCD2345'), byFrom('KM', 'bench', at('08')))],
  checks: [stated('c1', 'left', 35, { atIso: at('08') })],
  events: [event('e1', 'left', 'added', { atIso: at('08') })],
})

test('a deed is kept whole, or nothing of it is', async () => {
  await expect(keepDeed(store, { ...added(), events: [event('e1', 'nobody', 'added')] })).rejects.toMatchObject({ code: 'bar-not-known' })
  expect(await store.db.selectFrom('bar').selectAll().execute()).toEqual([])
  await keepDeed(store, added())
  await keepDeed(store, added())
  expect(await store.db.selectFrom('reading').selectAll().execute()).toHaveLength(1)
})

test('the history of a bar tells changes, checks and events, and what became of each value', async () => {
  await keepDeed(store, added())
  const seen = await recordOf(store, 'bar', 'left')
  const one = editOf('bar', seen, { note: 'dinged' }, byFrom('KM', 'tablet', at('09')))
  const two = editOf('bar', seen, { note: 'lent' }, byFrom('JO', 'phone', at('10')))
  await applyChanges(store, [one, two])
  const history = await historyOf(store, 'bar', 'left')
  expect(history.map((entry) => [entry.atIso, entry.what, entry.person])).toEqual([
    [at('08'), 'change', 'KM'], [at('08'), 'check', 'KM'], [at('08'), 'event', 'KM'], [at('09'), 'change', 'KM'], [at('10'), 'change', 'JO'],
  ])
  expect(history[0]).toMatchObject({ fields: { note: { value: '', fate: 'followed' }, name: { value: '35', fate: 'stands' } } })
  // `tablet-…` is the greater id, whatever the clocks say.
  expect(history[3]).toMatchObject({ fields: { note: { value: 'dinged', fate: 'stands' } } })
  expect(history[4]).toMatchObject({ fields: { note: { value: 'lent', fate: 'aside' } } })
  await expect(historyOf(store, 'bar', 'nobody')).rejects.toMatchObject({ code: 'unknown-record', facts: { kind: 'bar', given: 'nobody' } })
})

test('what was told about a setup is kept as it was, and is part of its history', async () => {
  await applyChanges(store, [firstChange('vise', 'v1', viseFields, byFrom('KM', 'a')), firstChange('setup', 's1', setupFields('v1'), byFrom('KM', 'b'))])
  const told = { id: 't1', setupId: 's1', checkId: null, jobId: null, what: 'setup sheet' as const, data: { seatMm: 35, bars: ['left'] }, ...by, atIso: at('11') }
  await addTold(store, told)
  await addTold(store, told)
  expect(await toldOf(store, 'setupId', 's1')).toEqual([told])
  expect((await historyOf(store, 'setup', 's1')).at(-1)).toMatchObject({ what: 'told', told })
  await expect(addTold(store, { ...told, data: { seatMm: 36 } })).rejects.toMatchObject({ code: 'id-used-twice' })
  await expect(addTold(store, { ...told, id: 't2', setupId: 'nobody' })).rejects.toMatchObject({ code: 'unknown-record', facts: { field: 'setupId' } })
})

test('a check sheet is told about the half-done check that its data name', async () => {
  const form = {
    method: 'compare' as const, unit: 'mm' as const, bars: [], stations: 3, places: [], lines: 1 as const, repeats: 1, instrumentId: null, plateId: null, blocksId: null,
    zeroOn: 'block' as const, zero: '', zeroBar: null, closing: '', temperature: '', asFound: false, replaces: null, note: '',
  }
  const draft = (id: string) => firstChange('draft', id, { form, typed: {}, looks: {}, state: 'open', checkId: null }, byFrom('KM', id))
  await applyChanges(store, [draft('d1'), draft('d2')])
  const told = { id: 't1', setupId: null, checkId: null, jobId: null, what: 'check sheet' as const, data: { draft: 'd1', code: 'D1' }, ...by, atIso: at('11') }
  await addTold(store, told)
  await addTold(store, told)
  expect((await historyOf(store, 'draft', 'd1')).filter(({ what }) => what === 'told')).toMatchObject([{ told }])
  expect((await historyOf(store, 'draft', 'd2')).filter(({ what }) => what === 'told')).toEqual([])
  await expect(addTold(store, { ...told, id: 't2', data: { draft: 'nobody' } })).rejects.toMatchObject({ code: 'unknown-record', facts: { field: 'data.draft' } })
  for (const other of [{ data: {} }, { data: { draft: 3 } }, { what: 'certificate' as const }]) await expect(addTold(store, { ...told, id: 't3', ...other })).rejects.toMatchObject({ code: 'field-missing' })
})

test('a question nothing served is remembered once a day', async () => {
  await applyChanges(store, [firstChange('vise', 'v1', viseFields, byFrom('KM'))])
  const asked = (id: string, day: string, height = '19') => ({
    id, viseId: 'v1', form: { ...setupForm, height }, lowMm: 33, highMm: 34, ...by, atIso: `${day}T08:00:00.000Z`,
  })
  expect(await addUnserved(store, asked('u1', '2025-03-04'))).toBe(true)
  expect(await addUnserved(store, asked('u1', '2025-03-04'))).toBe(false)
  expect(await addUnserved(store, asked('u2', '2025-03-04'))).toBe(false)
  expect(await addUnserved(store, asked('u3', '2025-03-05'))).toBe(true)
  expect(await addUnserved(store, asked('u4', '2025-03-04', '20'))).toBe(true)
  expect(await unservedOf(store)).toEqual([asked('u1', '2025-03-04'), asked('u4', '2025-03-04', '20'), asked('u3', '2025-03-05')])
  await expect(addUnserved(store, { ...asked('u5', '2025-03-06'), viseId: 'nobody' })).rejects.toMatchObject({ code: 'unknown-record' })
})

test('a question nothing served is asked again under its id by another device, later and typed otherwise', async () => {
  await applyChanges(store, [firstChange('vise', 'v1', viseFields, byFrom('KM'))])
  const asked = { id: 'u1', viseId: 'v1', form: setupForm, lowMm: 33, highMm: 34, ...by, atIso: '2025-03-04T08:00:00.000Z' }
  await addUnserved(store, asked)
  const again = { ...asked, form: { ...setupForm, height: `${setupForm.height} mm`, hold: { group: '2', kd: '', yieldMPa: '', width: '', drill: '' } }, person: 'AB', device: 'tablet', atIso: '2025-03-04T15:00:00.000Z' }
  expect(await addUnserved(store, again)).toBe(false)
  expect(await unservedOf(store)).toEqual([asked])
  for (const other of [{ lowMm: 32 }, { highMm: 35 }, { viseId: 'v2' }, { atIso: '2025-03-05T08:00:00.000Z' }]) await expect(addUnserved(store, { ...again, ...other })).rejects.toMatchObject({ code: 'id-used-twice', facts: { field: 'id', given: 'u1' } })
})
