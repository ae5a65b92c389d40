import Database from 'better-sqlite3'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { firstChange } from '#model/record-fields.ts'
import { newShop } from '#model/shop-record.ts'
import { applyChanges } from '#store/changes.ts'
import { barFields, byFrom } from '#store/example-records.ts'
import { migrationsFor } from '#store/migrations/all.ts'
import { databaseFile, openStore } from '#store/open.ts'
import { atOneMoment, inTransaction } from '#store/store.ts'
import { recordsOf } from '#store/records.ts'
import { columnsOf } from '#store/schema.ts'

let folder: string
beforeEach(() => { folder = mkdtempSync(join(tmpdir(), 'twinrest-store-')) })
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const added = (id: string, code: string) => firstChange('bar', id, barFields(code), byFrom('KM', id))
const file = () => join(folder, databaseFile)

test('a data folder that is not there is made, and what was written is there again', async () => {
  const deep = join(folder, 'not', 'there', 'yet')
  const store = await openStore(deep)
  await applyChanges(store, [added('bar1', 'ABCD2345')])
  await store.close()
  const again = await openStore(deep)
  expect(await recordsOf(again, 'bar')).toMatchObject([{ id: 'bar1', code: 'ABCD2345' }])
  await again.close()
})

test('a new shop has its record with settings, made once', async () => {
  await (await openStore(folder)).close()
  const store = await openStore(folder)
  expect(await recordsOf(store, 'shop')).toMatchObject([{ id: 'shop', ...newShop }])
  expect(await store.db.selectFrom('change').select('id').execute()).toEqual([{ id: 'first-start' }])
  await store.close()
})

test('the database keeps every commit, minds references and lies in a write-ahead log', async () => {
  const store = await openStore(folder)
  const ask = (pragma: string) => new Promise((resolve) => { const raw = new Database(file()); resolve(raw.pragma(pragma, { simple: true })); raw.close() })
  expect(await ask('journal_mode')).toBe('wal')
  expect(await ask('integrity_check')).toBe('ok')
  await expect(store.db.insertInto('reading').values({
    shop: 'shop', person: '', device: '', check: 'none', number: 0, bar: 'none', station: 0, xMm: null, line: 0, face: 'A', text: '', heightMm: 1,
  }).execute()).rejects.toThrow(/FOREIGN KEY/)
  await store.close()
})

test('every table is strict and every row says whose it is: shop, person, device and change', async () => {
  const store = await openStore(folder)
  await store.close()
  const raw = new Database(file())
  const tables = raw.prepare<[], { name: string; strict: number }>("select name, strict from pragma_table_list where schema = 'main' and name not like 'sqlite%' and name not like 'kysely%'").all()
  expect(tables.length).toBeGreaterThanOrEqual(14)
  for (const { name, strict } of tables) {
    expect([name, strict]).toEqual([name, 1])
    const columns = raw.prepare<[string], string>('select name from pragma_table_info(?)').pluck().all(name)
    expect(columns, name).toEqual(expect.arrayContaining(['shop', 'person', 'device']))
    const isRecord = Object.hasOwn(columnsOf, name)
    // A row that is only ever added is its own change; a reading is part of its check, and a shop has one owner.
    expect(columns, name).toContain(isRecord ? 'change' : name === 'reading' ? 'check' : name === 'owner' ? 'shop' : 'id')
  }
  raw.close()
})

test('a folder that cannot be used is refused by name', async () => {
  writeFileSync(join(folder, 'a file'), 'x')
  await expect(openStore(join(folder, 'a file'))).rejects.toMatchObject({ code: 'data-folder-not-writable', facts: { folder: join(folder, 'a file') } })
  if (process.platform === 'linux') await expect(openStore('/proc/nowhere/below')).rejects.toMatchObject({ code: 'data-folder-not-writable', facts: { given: 'ENOENT' } })
  await expect(openStore(join(folder, 'a file', 'below'))).rejects.toMatchObject({ code: 'data-folder-not-writable', facts: { given: 'ENOTDIR' } })
  mkdirSync(file())
  await expect(openStore(folder)).rejects.toMatchObject({ code: 'data-folder-not-writable' })
})

test('a file that is no database, and one whose pages are spoilt, are refused and left as they are', async () => {
  writeFileSync(file(), 'not a database at all, but long enough to be looked at. '.repeat(40))
  const before = readFileSync(file())
  await expect(openStore(folder)).rejects.toMatchObject({ code: 'database-damaged', facts: { file: file() } })
  expect(readFileSync(file())).toEqual(before)

  rmSync(file())
  await (await openStore(folder)).close()
  const spoilt = readFileSync(file())
  spoilt.fill(0xa5, 4096, spoilt.length)
  writeFileSync(file(), spoilt)
  await expect(openStore(folder)).rejects.toMatchObject({ code: 'database-damaged' })
  expect(readFileSync(file())).toEqual(spoilt)
})

test("another program's database is refused and left as it is", async () => {
  const other = new Database(file())
  other.exec('create table song (title text)')
  other.close()
  const before = readFileSync(file())
  await expect(openStore(folder)).rejects.toMatchObject({ code: 'database-not-ours', facts: { given: ['song'] } })
  expect(readFileSync(file())).toEqual(before)
})

test('a database of a later program is refused and left as it is', async () => {
  await (await openStore(folder)).close()
  const raw = new Database(file())
  raw.exec("insert into kysely_migration (name, timestamp) values ('0099-later', '2031-01-01T00:00:00.000Z')")
  raw.pragma('wal_checkpoint(TRUNCATE)')
  raw.close()
  const before = readFileSync(file())
  await expect(openStore(folder)).rejects.toMatchObject({ code: 'database-newer-than-program', facts: { given: '0099-later', needed: Object.keys(migrationsFor('sqlite')).at(-1) } })
  expect(readFileSync(file())).toEqual(before)
})

test('several may have the same database open', async () => {
  const stores = [await openStore(folder), await openStore(folder), await openStore(folder)]
  for (const [at, store] of stores.entries()) await applyChanges(store, [added(`bar${at}`, `ABCD234${at + 2}`)])
  expect((await recordsOf(stores[0]!, 'bar')).map((bar) => bar.id)).toEqual(['bar0', 'bar1', 'bar2'])
  for (const store of stores) await store.close()
})

test('what fails inside a transaction leaves nothing behind, however deep', async () => {
  const store = await openStore(folder)
  await expect(inTransaction(store, async (tx) => {
    await applyChanges(tx, [added('bar1', 'ABCD2345')])
    await inTransaction(tx, () => applyChanges(tx, [added('bar2', 'ABCD2346')]))
    throw new Error('power cut')
  })).rejects.toThrow('power cut')
  expect(await recordsOf(store, 'bar')).toEqual([])
  await store.close()
})

test('reads of one moment do not see what another connection writes meanwhile', async () => {
  const reader = await openStore(folder), writer = await openStore(folder)
  await atOneMoment(reader, async (tx) => {
    expect(await recordsOf(tx, 'bar')).toEqual([])
    await applyChanges(writer, [added('bar1', 'ABCD2345')])
    expect(await recordsOf(tx, 'bar')).toEqual([])
  })
  expect(await recordsOf(reader, 'bar')).toHaveLength(1)
  await reader.close()
  await writer.close()
})
