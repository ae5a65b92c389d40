import pg from 'pg'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { keepDeed } from '#store/deeds.ts'
import { type Installation, openInstallation } from '#store/postgres/installation.ts'
import { turnsOf } from '#store/postgres/turn.ts'
import { startShop } from '#store/start-shop.ts'
import { inTransaction, type Store } from '#store/store.ts'
import { deedOfBar } from '../endure/deed-of-bar.ts'
import { type Cluster, startCluster } from './cluster.ts'

let cluster: Cluster, installation: Installation, busy: Store, calm: Store
beforeAll(async () => {
  cluster = await startCluster()
  installation = await openInstallation(await cluster.makeDatabase('together'))
  ;[busy, calm] = [installation.storeOf('busy'), installation.storeOf('calm')]
  await startShop(busy)
  await startShop(calm)
})
afterAll(async () => { await installation.close(); await cluster.clear() })

const keep = (store: Store, name: string) => keepDeed(store, deedOfBar(name).deed)
const names = (count: number, of: string) => Array.from({ length: count }, (_none, at) => `${of}${at}`)
const isThere = async (store: Store, name: string) => (await store.db.selectFrom('bar').select('id').where('shop', '=', store.shop).where('id', '=', deedOfBar(name).bar).execute()).length === 1

test('what comes at the same moment into one shop is kept together, and one that is refused leaves the others be', async () => {
  const before = await turnsOf(busy), all = names(20, 'at-once-')
  const refused = inTransaction(busy, async (tx) => { await keep(tx, 'taken-back'); throw new Error('changed my mind') })
  // References are looked at when a transaction ends.
  const dangling = inTransaction(busy, async (tx) => { await tx.db.insertInto('event').values({ shop: 'busy', person: '', device: '', id: 'dangling', bar: 'nowhere', kind: 'cleaned', undoes: null, note: '', atIso: '' }).execute() })
  const answers = await Promise.allSettled([...all.map((name) => keep(busy, name)), refused, dangling])
  expect(answers.map(({ status }) => status)).toEqual([...all.map(() => 'fulfilled'), 'rejected', 'rejected'])
  expect(await Promise.all([...all, 'taken-back'].map((name) => isThere(busy, name)))).toEqual([...all.map(() => true), false])
  expect(await turnsOf(busy)).toBeGreaterThan(before)
})

test('however many wait to write into one shop, another is read and written meanwhile', async () => {
  const holder = new pg.Client(cluster.urlOf('together').replace('//twinrest@', '//owner@'))
  await holder.connect()
  await holder.query("begin; update revision set number = number where shop = 'busy'")
  let kept = 0
  const waiting = names(40, 'waits-').map((name) => keep(busy, name).then(() => { kept += 1 }))
  const began = performance.now()
  for (const name of names(3, 'goes-on-')) await keep(calm, name)
  expect(await isThere(calm, 'goes-on-2')).toBe(true)
  // A writer in its turn waits 15 s: whoever stood behind one would have waited as long.
  expect(performance.now() - began).toBeLessThan(10_000)
  expect(kept).toBe(0)
  await holder.query('commit')
  await holder.end()
  await Promise.all(waiting)
  expect(kept).toBe(40)
})

test('a program that ends as soon as it has written has told others before', async () => {
  const other = await openInstallation(cluster.urlOf('together')), heard: string[] = []
  const leave = busy.hear!(() => heard.push('busy'))
  await new Promise((done) => { setTimeout(done, 500) })
  heard.length = 0
  await keep(other.storeOf('busy'), 'last-words')
  await other.close()
  await expect.poll(() => heard).toEqual(['busy'])
  leave()
})
