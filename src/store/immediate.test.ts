import Database from 'better-sqlite3'
import { Kysely } from 'kysely'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { ImmediateDialect } from '#store/immediate.ts'

type Tables = { readonly drawer: { readonly held: string } }

let folder: string, other: Database.Database
const opened: Kysely<Tables>[] = []
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'twinrest-immediate-'))
  other = new Database(join(folder, 'x.sqlite'))
  other.pragma('journal_mode = WAL')
  other.exec('create table drawer (held text)')
})
afterEach(async () => {
  for (const db of opened.splice(0)) await db.destroy()
  other.close()
  rmSync(folder, { recursive: true })
})

const writer = (patienceMs: number) => {
  const db = new Kysely<Tables>({ dialect: new ImmediateDialect({ database: new Database(join(folder, 'x.sqlite'), { timeout: 1 }) }, patienceMs) })
  opened.push(db)
  return { write: (held: string) => db.transaction().execute((tx) => tx.insertInto('drawer').values({ held }).execute()), db }
}

test('a writer waits for the writing of another program, and the rest of its own goes on meanwhile', async () => {
  const { write, db } = writer(5000)
  other.exec("begin immediate; insert into drawer values ('theirs')")
  const written = write('ours')
  await setTimeout(60)
  other.exec('commit')
  await written
  expect(await db.selectFrom('drawer').select('held').execute()).toEqual([{ held: 'theirs' }, { held: 'ours' }])
})

test('one whose turn does not come is refused with nothing written, and may try again', async () => {
  const { write, db } = writer(50)
  other.exec('begin immediate')
  await expect(write('ours')).rejects.toMatchObject({ code: 'database-busy', facts: { waitedMs: 50 } })
  expect(await db.selectFrom('drawer').select('held').execute()).toEqual([])
  other.exec('rollback')
  await write('ours')
  expect(await db.selectFrom('drawer').select('held').execute()).toEqual([{ held: 'ours' }])
})
