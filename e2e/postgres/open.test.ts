import { afterAll, beforeAll, expect, test } from 'vitest'
import { firstChange } from '#model/record-fields.ts'
import { applyChanges } from '#store/changes.ts'
import { barFields, byFrom } from '#store/example-records.ts'
import { migrationsFor } from '#store/migrations/all.ts'
import { openStore } from '#store/open.ts'
import { openInstallation } from '#store/postgres/installation.ts'
import { recordsOf } from '#store/records.ts'
import { columnsOf } from '#store/schema.ts'
import { type Cluster, startCluster } from './cluster.ts'

let cluster: Cluster
beforeAll(async () => { cluster = await startCluster() })
afterAll(() => cluster.clear())

const added = (id: string, code: string) => firstChange('bar', id, barFields(code), byFrom('KM', id))

test('many that start at once on an empty database make its tables once and begin the shop once', async () => {
  const url = await cluster.makeDatabase('at_once'), stores = await Promise.all(Array.from({ length: 6 }, () => openStore(url)))
  const { rows } = await cluster.asOwner('at_once', 'select name from kysely_migration order by name')
  expect(rows.map(({ name }) => name)).toEqual(Object.keys(migrationsFor('postgres')))
  expect((await cluster.asOwner('at_once', 'select id from change')).rows).toEqual([{ id: 'first-start' }])
  await Promise.all(stores.map((store, at) => applyChanges(store, [added(`bar${at}`, `ABCD234${at + 2}`)])))
  expect(await recordsOf(stores[0]!, 'bar')).toHaveLength(6)
  await Promise.all(stores.map((store) => store.close()))
})

test('the tables are those of SQLite, each row says whose it is, and each table is walled in', async () => {
  const url = await cluster.makeDatabase('tables'), store = await openStore(url)
  await store.close()
  const { rows } = await cluster.asOwner('tables', `select relname as name, relrowsecurity and relforcerowsecurity as walled,
    (select count(*) from pg_policy where polrelid = pg_class.oid)::int as policies from pg_class where relnamespace = 'public'::regnamespace and relkind = 'r' and relname <> 'kysely_migration' order by relname`)
  expect(rows.map(({ name }) => name)).toEqual(expect.arrayContaining(Object.keys(columnsOf)))
  for (const row of rows) expect(row).toMatchObject({ walled: true, policies: 1 })
  const { rows: texts } = await cluster.asOwner('tables', `select table_name, column_name from information_schema.columns where table_schema = 'public' and table_name <> 'kysely_migration' and data_type = 'text' and collation_name is distinct from 'C'`)
  expect(texts).toEqual([])
})

test('a role that nothing holds back is refused', async () => {
  await cluster.makeDatabase('strong')
  await expect(openStore(cluster.urlOf('strong').replace('//twinrest@', '//owner@'))).rejects.toMatchObject({ code: 'database-role-too-strong', facts: { given: 'owner' } })
  expect((await cluster.asOwner('strong', "select 1 from pg_tables where schemaname = 'public'")).rows).toEqual([])
})

test('a database that is not there, of another program, of a later one, or that does not let one in, is refused and left as it is', async () => {
  await expect(openStore(cluster.urlOf('nowhere'))).rejects.toMatchObject({ code: 'database-refuses' })
  const other = await cluster.makeDatabase('other')
  await cluster.asOwner('other', 'create table song (title text)')
  await expect(openStore(other)).rejects.toMatchObject({ code: 'database-not-ours', facts: { given: ['song'] } })
  await cluster.asOwner('postgres', 'create database foreign_hands')
  await expect(openStore(cluster.urlOf('foreign_hands'))).rejects.toMatchObject({ code: 'database-refuses' })
  const later = await cluster.makeDatabase('later')
  await (await openStore(later)).close()
  await cluster.asOwner('later', "insert into kysely_migration values ('0099-later', '2031-01-01T00:00:00.000Z')")
  await expect(openStore(later)).rejects.toMatchObject({ code: 'database-newer-than-program', facts: { given: '0099-later' } })
})

test('a wall holds whatever is asked: another shop is neither read, written, moved nor taken away, and without a name nobody is', async () => {
  const { storeOf, close } = await openInstallation(await cluster.makeDatabase('walls'))
  const [north, south, nameless] = [storeOf('north'), storeOf('south'), storeOf('')]
  await applyChanges(north, [added('bar1', 'ABCD2345')])
  await applyChanges(south, [added('bar1', 'ABCD2345')])
  expect(await south.db.selectFrom('bar').select('shop').execute()).toEqual([{ shop: 'south' }])
  expect(await south.db.selectFrom('bar').select('shop').where('shop', '=', 'north').execute()).toEqual([])
  expect((await south.db.updateTable('bar').set({ note: 'mine' }).where('shop', '=', 'north').executeTakeFirst()).numUpdatedRows).toBe(0n)
  expect((await south.db.deleteFrom('change').where('shop', '=', 'north').executeTakeFirst()).numDeletedRows).toBe(0n)
  await expect(south.db.updateTable('bar').set({ shop: 'north' }).execute()).rejects.toThrow(/row-level security/)
  await expect(applyChanges({ ...south, shop: 'north' }, [added('bar2', 'ABCD2346')])).rejects.toThrow(/row-level security/)
  expect(await nameless.db.selectFrom('bar').select('shop').execute()).toEqual([])
  expect((await recordsOf(north, 'bar')).map(({ note }) => note)).toEqual([''])
  await close()
})

test('a text PostgreSQL cannot keep is refused, and nothing of it is kept', async () => {
  const store = await openStore(await cluster.makeDatabase('texts'))
  const whole = added('bar1', 'ABCD2345')
  await expect(applyChanges(store, [{ ...whole, fields: { ...whole.fields, note: { value: 'a\u0000b', saw: [] } } }])).rejects.toMatchObject({ code: 'value-not-allowed' })
  expect(await recordsOf(store, 'bar')).toEqual([])
  await store.close()
})
