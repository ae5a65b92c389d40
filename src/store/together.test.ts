import Database from 'better-sqlite3'
import { Kysely, sql } from 'kysely'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { ImmediateDialect } from '#store/immediate.ts'
import type { Tables } from '#store/schema.ts'
import type { Store } from '#store/store.ts'
import { writeTogether } from '#store/together.ts'

let raw: Database.Database, store: Store, commits: number
beforeEach(() => {
  raw = new Database(':memory:')
  raw.pragma('foreign_keys = ON')
  raw.exec('create table slot (id text primary key); create table bar (id text primary key, slot text references slot deferrable initially deferred)')
  commits = 0
  const database = { prepare: (text: string) => { if (text === 'commit') commits += 1; return raw.prepare(text) }, close: () => { raw.close() } }
  store = { db: new Kysely<Tables>({ dialect: new ImmediateDialect({ database }) }), kind: 'sqlite', shop: 'shop', hear: null, tell: null, folder: '', close: () => Promise.resolve() }
})
afterEach(() => store.db.destroy())

const bars = () => raw.prepare('select id from bar order by id').pluck().all()
const putBar = (id: string, slot: string | null = null) => writeTogether(store, async ({ db }) => { await sql`insert into bar values (${id}, ${slot})`.execute(db); return id })
const refused = (id: string) => writeTogether(store, async ({ db }) => { await sql`insert into bar values (${id}, null)`.execute(db); throw new Refusal('not-json') })

test('what comes at the same moment is kept by one commit, each answered with its own', async () => {
  expect(await Promise.all(['a', 'b', 'c'].map((id) => putBar(id)))).toEqual(['a', 'b', 'c'])
  expect([commits, bars()]).toEqual([1, ['a', 'b', 'c']])
  await putBar('d')
  expect(commits).toBe(2)
})

test('nobody is answered before the commit', async () => {
  const open: boolean[] = []
  await Promise.all(['a', 'b'].map((id) => putBar(id).then(() => { open.push(raw.inTransaction) })))
  expect(open).toEqual([false, false])
})

test('one that is refused leaves nothing behind and the others be', async () => {
  const all = await Promise.allSettled([putBar('a'), refused('b'), putBar('a'), putBar('c')])
  expect(all.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'rejected', 'fulfilled'])
  expect(all[1]).toMatchObject({ reason: { code: 'not-json' } })
  expect([commits, bars()]).toEqual([1, ['a', 'c']])
})

test('one whose reference is wrong, which shows at the commit alone, is told so alone', async () => {
  const all = await Promise.allSettled([putBar('a'), putBar('b', 'nowhere'), putBar('c')])
  expect(all.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled'])
  expect(bars()).toEqual(['a', 'c'])
})

test('where everything was taken back, as on a full disk, nobody is told that it was kept', async () => {
  raw.pragma(`max_page_count = ${Number(raw.pragma('page_count', { simple: true })) + 2}`)
  const all = await Promise.allSettled([putBar('a'), putBar('b'.repeat(60_000)), putBar('c')])
  expect(all.filter(({ status }) => status === 'fulfilled').length).toBe(bars().length)
  expect(all[1]).toMatchObject({ status: 'rejected', reason: { code: 'SQLITE_FULL' } })
  raw.pragma('max_page_count = 100000')
  await putBar('d')
  expect(bars()).toContain('d')
})
