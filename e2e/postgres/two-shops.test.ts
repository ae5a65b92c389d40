import type { Hono } from 'hono'
import { request as httpRequest } from 'node:http'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { recordKinds } from '#model/change.ts'
import { thisMachineAlone } from '#server/access/reach.ts'
import { createApp } from '#server/app.ts'
import { manyShops } from '#server/many-shops.ts'
import { sumOf } from '#store/move.ts'
import { type Installation, openInstallation } from '#store/postgres/installation.ts'
import { startShop } from '#store/start-shop.ts'
import type { Store } from '#store/store.ts'
import { moveShop } from '#store/move.ts'
import { loadDemo } from '#tasks/shop/load-demo.ts'
import { deedOfBar } from '../endure/deed-of-bar.ts'
import { startShop as startProcess } from '../shop-process.ts'
import { type Cluster, startCluster } from './cluster.ts'

// Two shops that are the same row for row, ids, codes and all, but that each writes its own name into whatever is written freely.
let cluster: Cluster, installation: Installation, north: Store, south: Store, url: string
beforeAll(async () => {
  cluster = await startCluster()
  url = await cluster.makeDatabase('two')
  installation = await openInstallation(url)
  ;[north, south] = [installation.storeOf('north'), installation.storeOf('south')]
  await startShop(north)
  await loadDemo(north)
  await startShop(south)
  await moveShop(north, south, () => undefined)
  for (const shop of ['north', 'south']) {
    const { rows } = await cluster.asOwner('two', `select table_name as name, column_name as free from information_schema.columns where table_schema = 'public' and column_name in ('name', 'note', 'title') and table_name <> 'kysely_migration'`)
    for (const { name, free } of rows as { name: string; free: string }[]) await cluster.asOwner('two', `update "${name}" set ${free} = $1 || ${free} where shop = $2`, [`of-${shop} `, shop])
    await cluster.asOwner('two', `update change set fields = regexp_replace(fields, '("(name|note|title)":{"saw":\\[[^]]*\\],"value":")', '\\1of-${shop} ', 'g') where shop = $1`, [shop])
  }
}, 120_000)
afterAll(async () => { await installation.close(); await cluster.clear() })

const options = { webFolder: '/nowhere', log: () => undefined }
const json = (body: unknown) => ({ method: 'POST', headers: { 'content-type': 'application/json', host: '127.0.0.1' }, body: JSON.stringify(body) })

type Described = { readonly paths: { readonly [path: string]: { readonly [method: string]: unknown } } }

/** Every address a record of the shop could be asked by, for each route that the router knows. */
async function addressesOf(app: Hono, store: Store): Promise<{ readonly method: string; readonly path: string; readonly route: string }[]> {
  const { paths } = await (await app.request('/api/openapi.json', { headers: { host: '127.0.0.1' } })).json() as Described
  const ids: { readonly kind: string; readonly id: string }[] = []
  for (const kind of recordKinds) for (const { id } of (await store.db.selectFrom(kind as 'bar').select('id').where('shop', '=', store.shop).execute()).slice(0, 3)) ids.push({ kind, id })
  return Object.entries(paths).flatMap(([route, methods]) => Object.keys(methods).flatMap((method) => {
    const filled = route.includes('{') ? ids.map(({ kind, id }) => route.replace('{kind}', kind).replace('{revision}', 'none').replaceAll(/\{\w+\}/g, id)) : [route]
    return [...new Set(filled)].map((path) => ({ method: method.toUpperCase(), path, route }))
  }))
}

test('no route, event or export of one shows a row of the other, and none writes into it', async () => {
  const app = createApp(south, options), before = await sumOf(north), addresses = await addressesOf(app, south), told = new Set<string>(), asked = new Set<string>()
  const bodies = [{}, [], { changes: [], checks: [], events: [] }, deedOfBar('new').deed, { bars: (await south.db.selectFrom('bar').select('id').where('shop', '=', 'south').execute()).slice(0, 2).map(({ id }) => id) }]
  for (const { method, path, route } of addresses) {
    if (route === '/api/live' || route === '/api/owner/passphrase') continue
    asked.add(route)
    for (const body of method === 'GET' ? [null] : bodies) {
      const text = await (await app.request(path, body === null ? { headers: { host: '127.0.0.1' } } : json(body))).text()
      expect(text, `${method} ${path}`).not.toContain('of-north')
      if (text.includes('of-south')) told.add(route)
    }
  }
  expect(asked.size).toBeGreaterThan(25)
  // The mark is seen where rows are shown at all: the check is not blind.
  for (const route of ['/api/shop', '/api/shop/since/{revision}', '/api/history/{kind}/{id}', '/api/export']) expect(told, route).toContain(route)
  expect(await sumOf(north)).toBe(before)
}, 120_000)

test('what is written in one wakes nobody in the other', async () => {
  const heard: string[] = [], left = [north, south].map((store) => store.hear!(() => heard.push(store.shop)))
  await new Promise((done) => { setTimeout(done, 500) })
  heard.length = 0
  const answer = await createApp(north, options).request('/api/deeds', json(deedOfBar('heard').deed))
  expect(answer.status).toBe(200)
  await expect.poll(() => heard).toEqual(['north'])
  for (const leave of left) leave()
})

test('a request names its shop by its host; of a host that names none it is told nothing', async () => {
  const front = manyShops(installation, 'shops.example', { ...options, reach: thisMachineAlone })
  const ask = async (host: string, path = '/api/shop') => { const answer = await front.request(path, { headers: { host } }); return { status: answer.status, text: await answer.text() } }
  for (const [shop, other] of [['north', 'south'], ['south', 'north']] as const) {
    const { status, text } = await ask(`${shop}.shops.example`)
    expect([status, text.includes(`of-${shop}`), text.includes(`of-${other}`)]).toEqual([200, true, false])
  }
  for (const host of ['shops.example', 'west.shops.example', 'north.other.example', 'a.north.shops.example', '127.0.0.1', "north'--.shops.example"]) expect((await ask(host)).status, host).toBe(404)
  expect((await ask('127.0.0.1', '/api/health')).status).toBe(200)
})

test('one process serves them all', async () => {
  const shop = await startProcess({ demo: false, env: { TWINREST_DATABASE_URL: url, TWINREST_SHOPS_UNDER: 'shops.example' } })
  try {
    const ask = (host: string) => new Promise<string>((done, failed) => {
      httpRequest(`${shop.url}/api/shop`, { headers: { host } }, (answer) => {
        let text = ''
        answer.setEncoding('utf8').on('data', (piece: string) => { text += piece }).on('end', () => done(`${answer.statusCode} ${text.includes('of-north')} ${text.includes('of-south')}`))
      }).on('error', failed).end()
    })
    expect(await Promise.all([ask('north.shops.example'), ask('south.shops.example'), ask('east.shops.example')])).toEqual(['200 true false', '200 false true', '404 false false'])
  } finally {
    await shop.clear()
  }
})
