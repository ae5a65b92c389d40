import { afterAll, beforeAll, expect, test } from 'vitest'
import { keepDeed } from '#store/deeds.ts'
import { openStore } from '#store/open.ts'
import { recordsOf } from '#store/records.ts'
import { inTransaction } from '#store/store.ts'
import { deedOfBar } from '../endure/deed-of-bar.ts'
import { type Cluster, startCluster } from './cluster.ts'

let cluster: Cluster
beforeAll(async () => { cluster = await startCluster({ lasting: true }) })
afterAll(() => cluster.clear())

test('a database cut off and started again costs no process and no acknowledged write', async () => {
  const store = await openStore(await cluster.makeDatabase('cut_off')), kept: string[] = [], refused: string[] = []
  let ended = false
  const writing = (async () => {
    for (let at = 0; !ended; at += 1) {
      const { deed, bar } = deedOfBar(`w-${at}`)
      await keepDeed(store, deed).then(() => kept.push(bar), (error: { code?: string }) => refused.push(String(error.code)))
    }
  })()
  for (let round = 0; round < 3; round += 1) {
    const before = kept.length
    while (kept.length < before + 20) await new Promise((done) => { setTimeout(done, 10) })
    await cluster.kill()
    await cluster.start()
  }
  const before = kept.length
  while (kept.length < before + 20) await new Promise((done) => { setTimeout(done, 10) })
  ended = true
  await writing
  const there = new Set((await recordsOf(store, 'bar')).map(({ id }) => id))
  expect(kept.filter((id) => !there.has(id))).toEqual([])
  expect(new Set(refused)).toEqual(new Set(['database-away']))
  await store.close()
})

test('a database that stays away is said to be, in a while, by whatever is asked', async () => {
  const store = await openStore(await cluster.makeDatabase('away'))
  await cluster.stop()
  await Promise.all([recordsOf(store, 'bar'), inTransaction(store, async () => undefined), openStore(cluster.urlOf('away'))]
    .map((asked) => expect(asked).rejects.toMatchObject({ code: 'database-away' })))
  await cluster.start()
  expect(await recordsOf(store, 'bar')).toEqual([])
  await store.close()
})
