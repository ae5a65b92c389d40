import Database from 'better-sqlite3'
import { createHash } from 'node:crypto'
import { copyFileSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { devicesOf, deviceWith, keptPassphrase } from '#store/access.ts'
import { checksOf } from '#store/checks.ts'
import { clashesOf } from '#store/changes.ts'
import { eventsOf } from '#store/events.ts'
import { historyOf } from '#store/history.ts'
import { importUnder } from '#store/imports.ts'
import { migrationsFor } from '#store/migrations/all.ts'
import { databaseFile, openStore } from '#store/open.ts'
import { openDraftsOf, recordOf, recordsOf } from '#store/records.ts'
import { toldOf } from '#store/told.ts'
import { unservedOf } from '#store/unserved.ts'

const fixtures = resolve(import.meta.dirname, '../../fixtures/databases')
const released = readdirSync(fixtures).filter((name) => name.endsWith('.sqlite'))

let folder: string
beforeEach(() => { folder = mkdtempSync(join(tmpdir(), 'twinrest-released-')) })
afterEach(() => rmSync(folder, { recursive: true, force: true }))

test('there is a database for every migration', () => {
  expect(released).toEqual(Object.keys(migrationsFor('sqlite')).map((_name, at) => `schema-${at + 1}.sqlite`))
})

test.each(released)('%s opens, is brought up to date and still says what it said', async (name) => {
  copyFileSync(join(fixtures, name), join(folder, databaseFile))
  const store = await openStore(folder)
  expect((await store.db.selectFrom('kysely_migration' as 'shop').select('name').execute()).map((row) => row.name)).toEqual(Object.keys(migrationsFor('sqlite')))
  expect(await recordsOf(store, 'bar')).toMatchObject([
    { id: 'left', code: 'ABCD2345', matesId: 'mates-1', slotId: 'slot-1', thicknessMm: 8, where: { at: 'slot' }, note: 'stoned' },
    { id: 'right', code: 'ABCD2346', matesId: 'mates-1', where: { at: 'out', who: 'JO' } },
  ])
  expect(await clashesOf(store)).toMatchObject([{ record: 'left', field: 'note', stands: { value: 'stoned', person: 'KM' }, aside: { value: 'lent', person: 'JO' } }])
  expect(await recordsOf(store, 'setup')).toMatchObject([{ viseId: 'vise-1', partId: 'part-1', bars: ['left', 'right'], retired: false }])
  expect(await recordsOf(store, 'shop')).toMatchObject([{ units: { length: 'mm' }, demo: false }])
  expect((await checksOf(store)).slice(0, 2).map(({ id, readings }) => [id, readings.map((reading) => reading.text)])).toEqual([['check-1', ['35', '35']], ['check-2', ['35,002']]])
  expect((await eventsOf(store, 'right')).map(({ kind, undoes }) => [kind, undoes])).toEqual([['added', null], ['gone', null], ['undone', 'event-4']])
  expect(await toldOf(store, 'setupId', 'setup-1')).toMatchObject([{ data: { seatMm: 35 } }])
  expect(await unservedOf(store)).toMatchObject([{ viseId: 'vise-1', lowMm: 49, highMm: 35 }])
  expect((await historyOf(store, 'bar', 'left')).slice(0, 7).every(({ atIso }) => atIso < '2025-05')).toBe(true)
  await store.close()
})

test('a file taken in under the second schema is known again, and no other is taken for it', async () => {
  copyFileSync(join(fixtures, 'schema-2.sqlite'), join(folder, databaseFile))
  const store = await openStore(folder)
  const file = { text: 'height,thickness,length\n35,8,150\n', unit: 'mm' }
  expect(await importUnder(store, 'file-1', file)).toMatchObject({ dryRun: false, bars: 1, lowestMm: 35 })
  await expect(importUnder(store, 'file-1', { ...file, unit: 'in' })).rejects.toMatchObject({ code: 'id-used-twice' })
  expect(await importUnder(store, 'file-2', file)).toBeNull()
  await store.close()
})

test('a check of the third schema comes back with all it was taken with', async () => {
  copyFileSync(join(fixtures, 'schema-3.sqlite'), join(folder, databaseFile))
  const store = await openStore(folder)
  expect((await checksOf(store)).at(-1)).toMatchObject({
    id: 'check-3', zero: { on: 'block', heightMm: 35 }, closing: { um: 0 }, temperature: { c: 21 }, asFound: true, looks: [{ rock: 'none', seen: ['nicked'] }],
    took: { instrument: { name: 'Lever 1 µm' }, readWith: { method: 'compare', plateFlatnessUm: 2 } },
    readings: [{ line: 0, face: 'A', heightMm: 35.003 }, { line: 1, text: '+4' }],
  })
  expect(await recordsOf(store, 'instrument')).toMatchObject([{ figures: { is: 'indicator', limitUm: 3 }, dueOn: '2026-05-06' }])
  expect(await openDraftsOf(store)).toMatchObject([{ typed: { 'left/0/A/0/0': '+3' }, state: 'open' }])
  expect(await recordsOf(store, 'outcome')).toMatchObject([{ setupId: 'setup-1', measuredUm: { along: 4, across: null } }])
  expect(await toldOf(store, 'checkId', 'check-3')).toMatchObject([{ what: 'certificate' }])
  await store.close()
})

test('devices of the fourth schema are still let in, and those revoked are not', async () => {
  copyFileSync(join(fixtures, 'schema-4.sqlite'), join(folder, databaseFile))
  const store = await openStore(folder), hashOf = (token: string) => createHash('sha256').update(token).digest('hex')
  expect(await deviceWith(store, hashOf('token-1'))).toMatchObject({ id: 'device-1', name: 'Tablet at the mill' })
  expect(await deviceWith(store, hashOf('token-2'))).toBeNull()
  expect((await devicesOf(store)).map(({ revokedAtIso }) => revokedAtIso !== null)).toEqual([false, true])
  expect(await keptPassphrase(store)).toMatchObject({ cost: '32768,8,3' })
  await store.close()
})

test('a job of the fifth schema comes back with its stock, its machines and what was read', async () => {
  copyFileSync(join(fixtures, 'schema-5.sqlite'), join(folder, databaseFile))
  const store = await openStore(folder)
  expect(await recordsOf(store, 'machine')).toMatchObject([{ name: 'Bench mill', kind: 'mill', perHour: 30, spindle: { speedsRpm: [400, 800, 1600], powerKw: null } }])
  expect(await recordsOf(store, 'stock')).toMatchObject([{ form: 'plate', lengthMm: 500, count: 2, price: 84.5, offcut: false }])
  expect(await recordsOf(store, 'job')).toMatchObject([{
    route: 'ground', form: { heights: '30', due: '2026-05-06' }, typed: { 'read after hardening/left/bow of the edges/0': '0,12' }, done: { saw: { hours: '1.5', person: 'KM' } },
    bars: [{ id: 'left', heightMm: 30, matesId: 'mates-1' }, { id: 'right' }], state: 'open', draftId: null,
  }])
  expect(await recordOf(store, 'shop', 'shop')).toMatchObject({ making: { handPerHour: 40, hardening: { cost: 120, days: 7 } } })
  expect(await toldOf(store, 'jobId', 'job-1')).toMatchObject([{ what: 'route sheet', data: { heading: 'Route' } }])
  await store.close()
})

test('a new database is made as the last release made it', async () => {
  const schemaOf = (file: string) => {
    const raw = new Database(file, { readonly: true })
    const rows = raw.prepare("select name, sql from sqlite_master where name not like 'sqlite%' order by name").all()
    raw.close()
    return rows
  }
  await (await openStore(folder)).close()
  copyFileSync(join(fixtures, released.at(-1)!), join(folder, 'old.sqlite'))
  expect(schemaOf(join(folder, databaseFile))).toEqual(schemaOf(join(folder, 'old.sqlite')))
})
