import { sql } from 'kysely'
import { expect, test } from 'vitest'
import { firstChange } from '#model/record-fields.ts'
import { applyChanges } from '#store/changes.ts'
import { byFrom, matesFields } from '#store/example-records.ts'
import { openStore } from '#store/open.ts'
import { recordsOf } from '#store/records.ts'

/** SQLite answers a database that has as many pages as it may just as it answers a disk that is full. */
test('a full disk is said so, loses nothing that was acknowledged, and is written again once there is room', async () => {
  const store = await openStore(':memory:'), by = byFrom('KM'), written: string[] = []
  const limited = (pages: number) => sql`pragma max_page_count = ${sql.lit(pages)}`.execute(store.db)
  const write = async () => {
    const id = by.newId()
    await applyChanges(store, [firstChange('mates', id, { ...matesFields, note: 'x'.repeat(200) }, by)])
    written.push(id)
  }
  await limited((await sql<{ page_count: number }>`pragma page_count`.execute(store.db)).rows[0]!.page_count + 10)
  await expect((async () => { for (let at = 0; at < 2000; at += 1) await write() })()).rejects.toMatchObject({ code: 'disk-full' })
  expect(written.length).toBeGreaterThan(3)
  await expect(write()).rejects.toMatchObject({ code: 'disk-full' })
  expect((await recordsOf(store, 'mates')).map(({ id }) => id)).toEqual([...written].sort((a, b) => (a < b ? -1 : 1)))
  await limited(1_000_000)
  await write()
  expect(await recordsOf(store, 'mates')).toHaveLength(written.length)
  await store.close()
})

test('a database that may only be read says so, and is read on', async () => {
  const store = await openStore(':memory:'), by = byFrom('KM')
  await applyChanges(store, [firstChange('mates', 'kept', matesFields, by)])
  await sql`pragma query_only = on`.execute(store.db)
  await expect(applyChanges(store, [firstChange('mates', 'not kept', matesFields, by)])).rejects.toMatchObject({ code: 'data-folder-not-writable', facts: { given: 'SQLITE_READONLY' } })
  expect(await recordsOf(store, 'mates')).toMatchObject([{ id: 'kept' }])
  await store.close()
})
