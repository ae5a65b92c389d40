import { afterEach, beforeEach, expect, test } from 'vitest'
import { keepDeed } from '#store/deeds.ts'
import { openStore } from '#store/open.ts'
import { recordsOf } from '#store/records.ts'
import { type Cluster, startCluster } from '../postgres/cluster.ts'
import { type ShopProcess, startShop } from '../shop-process.ts'
import { deedOfBar } from './deed-of-bar.ts'

const kills = Number(process.env['TWINREST_KILLS'] ?? 10)
const hands = 4

let cluster: Cluster, closing: (() => Promise<void>)[]
beforeEach(async () => { cluster = await startCluster({ lasting: true }); closing = [() => cluster.clear()] })
afterEach(async () => { for (const close of closing.reverse()) await close() })

const pause = (ms: number) => new Promise((done) => { setTimeout(done, ms) })

async function send(shop: ShopProcess, name: string): Promise<boolean> {
  const answer = await fetch(`${shop.url}/api/deeds`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(deedOfBar(name).deed) }).catch(() => null)
  if (answer !== null && answer.status !== 200 && answer.status !== 503) throw new Error(`the server refused ${name}: ${answer.status} ${await answer.text()}`)
  return answer?.status === 200
}

test(`the server or its database killed ${kills} times in a loop of writes, nothing that was acknowledged is lost`, async () => {
  const shop = await startShop({ demo: false, env: { TWINREST_DATABASE_URL: await cluster.makeDatabase('killed') } })
  closing.push(() => shop.clear())
  const acknowledged = new Set<string>(), unanswered: string[] = []
  for (let round = 0; round < kills; round += 1) {
    let running = true, answered = 0
    const all = Array.from({ length: hands }, async (_none, which) => {
      for (let at = 0; running; at += 1) {
        const name = `${round}-${which}-${at}`
        if (await send(shop, name)) { acknowledged.add(deedOfBar(name).bar); answered += 1 } else { unanswered.push(name); await pause(20) }
      }
    })
    while (answered < 5 + ((round * 17) % 40)) await pause(2)
    const struck = round % 2 === 0 ? shop : cluster
    await struck.kill()
    await struck.start()
    running = false
    await Promise.all(all)
    const { rows } = await cluster.asOwner('killed', 'select id from bar'), there = new Set((rows as { id: string }[]).map(({ id }) => id))
    expect([...acknowledged].filter((bar) => !there.has(bar))).toEqual([])
    const { rows: halves } = await cluster.asOwner('killed', 'select id from bar where not exists (select 1 from reading where reading.bar = bar.id and reading.shop = bar.shop)')
    expect(halves).toEqual([])
  }
  // What nobody answered is sent again, as a tablet does: it is there once, whether it had been written or not.
  for (const name of unanswered) expect(await send(shop, name)).toBe(true)
  const { rows } = await cluster.asOwner('killed', 'select id from bar')
  expect((rows as { id: string }[]).map(({ id }) => id).sort()).toEqual([...acknowledged, ...unanswered.map((name) => deedOfBar(name).bar)].sort())
})

test('a primary is killed under load: what it acknowledged is on the standby that takes its place', async () => {
  const url = await cluster.makeDatabase('followed')
  await (await openStore(url)).close()
  await cluster.stop()
  const standby = await startCluster({ lasting: true, copyOf: cluster.folder, standbyOf: { port: cluster.port, name: 'second' } })
  closing.push(() => standby.clear())
  await cluster.start(['synchronous_standby_names=second'])
  await expect.poll(async () => (await cluster.asOwner('postgres', 'select sync_state from pg_stat_replication')).rows, { timeout: 20_000 }).toEqual([{ sync_state: 'sync' }])

  const first = await openStore(url), kept: string[] = []
  closing.push(() => first.close())
  let running = true
  const writing = Array.from({ length: hands }, async (_none, which) => {
    for (let at = 0; running; at += 1) {
      const { deed, bar } = deedOfBar(`p${which}-${at}`)
      await keepDeed(first, deed).then(() => kept.push(bar), () => { running = false })
    }
  })
  while (kept.length < 20 * Math.min(kills, 50)) await pause(5)
  await cluster.kill()
  await Promise.all(writing)
  await standby.asOwner('postgres', 'select pg_promote()')

  const second = await openStore(standby.urlOf('followed'))
  closing.push(() => second.close())
  const there = new Set((await recordsOf(second, 'bar')).map(({ id }) => id))
  expect(kept.filter((bar) => !there.has(bar))).toEqual([])
  await keepDeed(second, deedOfBar('after').deed)
  expect((await recordsOf(second, 'bar')).some(({ id }) => id === deedOfBar('after').bar)).toBe(true)
})
