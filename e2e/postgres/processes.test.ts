import { afterAll, afterEach, beforeAll, expect, test } from 'vitest'
import { deedOfBar } from '../endure/deed-of-bar.ts'
import { listening } from '../listening.ts'
import { type ShopProcess, startShop } from '../shop-process.ts'
import { type Cluster, startCluster } from './cluster.ts'

let cluster: Cluster, open: ShopProcess[] = []
beforeAll(async () => { cluster = await startCluster({ lasting: true }) })
afterEach(async () => { for (const shop of open) await shop.clear(); open = [] })
afterAll(() => cluster.clear())

async function processes(database: string, count: number): Promise<ShopProcess[]> {
  const env = { TWINREST_DATABASE_URL: await cluster.makeDatabase(database) }
  return open = await Promise.all(Array.from({ length: count }, () => startShop({ demo: false, env })))
}
const send = (shop: ShopProcess, name: string) => fetch(`${shop.url}/api/deeds`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(deedOfBar(name).deed) })
const barsIn = async (shop: ShopProcess) => ((await (await fetch(`${shop.url}/api/shop`)).json()) as { bars: { id: string }[] }).bars.map(({ id }) => id)

test('what is done through one process is told by another within a second', async () => {
  const [one, two] = await processes('live', 2) as [ShopProcess, ShopProcess]
  const stream = await listening(two.url)
  await stream.until('revision', 1)
  const began = performance.now()
  expect((await send(one, 'a')).status).toBe(200)
  expect(await stream.until('revision', 2) - began).toBeLessThan(1000)
  expect(await barsIn(two)).toEqual(await barsIn(one))
  await cluster.asOwner('postgres', "select pg_terminate_backend(pid) from pg_stat_activity where query like 'listen %'")
  await stream.until('revision', 2)
  await new Promise((done) => { setTimeout(done, 1500) })
  const again = performance.now()
  expect((await send(one, 'b')).status).toBe(200)
  expect(await stream.until('revision', 3) - again).toBeLessThan(1000)
})

test('of three processes one is killed: its devices go on with the others, and nothing acknowledged is lost', async () => {
  const shops = await processes('three', 3), kept: string[] = []
  let gone = -1
  await Promise.all(shops.map(async (_own, device) => {
    for (let at = 0; at < 40; at += 1) {
      const name = `d${device}-${at}`
      if (device === 0 && at === 15) { gone = 1; await shops[1]!.kill() }
      // As a device does behind a proxy: sent again, to whoever answers, until it is taken.
      for (let tries = 0; ; tries += 1) {
        const answer = await send(shops[(device + tries) % 3]!, name).catch(() => null)
        if (answer?.status === 200) break
        expect(tries).toBeLessThan(20)
      }
      kept.push(deedOfBar(name).bar)
    }
  }))
  expect(gone).toBe(1)
  for (const shop of [shops[0]!, shops[2]!]) expect((await barsIn(shop)).sort()).toEqual([...kept].sort())
})

test('what one process has acknowledged is in the next answer of the other, whatever that one had kept ready', async () => {
  const shops = await processes('own_writes', 2), told: string[] = []
  const read = (shop: ShopProcess, path: string, tag = '') => fetch(`${shop.url}${path}`, { headers: tag === '' ? {} : { 'if-none-match': tag } })
  await Promise.all([0, 1, 2].map(async (device) => {
    for (let at = 0; at < 8; at += 1) {
      const [writer, reader] = at % 2 === 0 ? [shops[0]!, shops[1]!] : [shops[1]!, shops[0]!], name = `r${device}-${at}`, { bar } = deedOfBar(name)
      // Each answer is made once before, so that there is an older one to be wrong with.
      const [shop, history, news] = [await read(reader, '/api/shop'), await read(reader, `/api/history/bar/${bar}`), await read(reader, '/api/shop/since/none')]
      const tag = shop.headers.get('etag')!, { revision } = await news.json() as { revision: string }
      expect(history.status).toBe(422)
      expect((await send(writer, name)).status).toBe(200)
      const after = await Promise.all([read(reader, '/api/shop', tag), read(reader, `/api/history/bar/${bar}`, tag), read(reader, `/api/shop/since/${revision}`), read(reader, '/api/shop/since/of-another-process')])
      expect(after.map(({ status }) => status)).toEqual([200, 200, 200, 200])
      for (const answer of after) expect(await answer.text()).toContain(bar)
      told.push(bar)
    }
  }))
  for (const shop of shops) expect((await barsIn(shop)).sort()).toEqual([...told].sort())
})

test('a server whose database is away answers so, and goes on by itself when it is back', async () => {
  const [shop] = await processes('comes_back', 1) as [ShopProcess]
  expect((await send(shop, 'a')).status).toBe(200)
  await cluster.kill()
  const answer = await send(shop, 'b')
  expect(answer.status).toBe(503)
  expect(await answer.json()).toMatchObject({ refused: 'database-away' })
  expect((await fetch(`${shop.url}/api/health`)).status).toBe(200)
  await cluster.start()
  expect((await send(shop, 'b')).status).toBe(200)
  expect(await barsIn(shop)).toHaveLength(2)
})
