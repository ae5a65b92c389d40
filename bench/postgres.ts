import { Agent, request } from 'node:http'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { keepDeed } from '#store/deeds.ts'
import { openInstallation } from '#store/postgres/installation.ts'
import { startShop } from '#store/start-shop.ts'
import { deedOfBar } from '../e2e/endure/deed-of-bar.ts'
import { type Cluster, startCluster } from '../e2e/postgres/cluster.ts'
import { type ShopProcess, startShop as startProcess } from '../e2e/shop-process.ts'
import type { BenchRow } from './bench-row.ts'

const shops = Number(process.env['TWINREST_BENCH_SHOPS'] ?? 1000), barsInEach = 100
const hands = 16, writes = 160, reads = 480, rounds = 3, under = 'shops.example'
/**
 * Of what one shop alone in the database gets, and of what one process gets. An act costs the same whoever carries it out, so
 * on cores that are full already more processes or more shops come to as much; the rest is for a disk that has its moods.
 */
const least = 0.7

type Speed = { readonly written: number; readonly read: number }

/** Shops on PostgreSQL: by one, two and four processes beside SQLite, and whether a shop notices a thousand neighbours. */
export async function run(): Promise<BenchRow[]> {
  const cluster = await startCluster({ lasting: true, settings: ['max_connections=100'] }), main = join(process.cwd(), 'dist', 'node', 'main.js'), args = ['--backup-hours', '0']
  const open: ShopProcess[] = [], start = async (env: { readonly [name: string]: string }) => { const one = await startProcess({ demo: false, main, args, env }); open.push(one); return one }
  try {
    const [lonely, url] = [await seeded(cluster, 'lonely'), await seeded(cluster, 'bench')]
    await seedRest(cluster)
    const [alone, ...processes] = await Promise.all([lonely, url, url, url, url].map((database) => start({ TWINREST_DATABASE_URL: database, TWINREST_SHOPS_UNDER: under })))
    const sqlite = await start({}), many = Array.from({ length: hands }, (_none, at) => `s${1 + at * Math.floor((shops - 1) / hands)}`)
    for (let bar = 0; bar < barsInEach; bar += 1) await ask(sqlite, '', '/api/deeds', deedOfBar(`b${bar}`).deed)
    // What a shop meets is a program that has served for a while: each does as much before anything counts.
    for (const [at, one] of [alone!, ...processes, sqlite].entries()) {
      const shop = one === alone ? 's0' : one === sqlite ? '' : 's1'
      await perSecond(writes, (act) => ask(one, shop, '/api/deeds', deedOfBar(`before-${at}-${act}`).deed))
      await perSecond(reads, (act) => ask(one, shop, `/api/history/bar/bar-b${act % barsInEach}`))
    }
    const speeds = await inTurns({
      alone: [[alone!], ['s0']], among: [[processes[0]!], ['s0']], plain: [[sqlite], ['']],
      by1: [processes.slice(0, 1), many], by2: [processes.slice(0, 2), many], by4: [processes, many],
    })
    const said = (what: keyof Speed) => `SQLite ${speeds.plain[what].toFixed(0)}; PostgreSQL by 1, 2, 4 processes ${[speeds.by1, speeds.by2, speeds.by4].map((speed) => speed[what].toFixed(0)).join(', ')} a second`
    const kept = (name: string, now: number, before: number): BenchRow => ({ name: `postgres: ${name}`, figure: `${now.toFixed(0)} against ${before.toFixed(0)} a second`, target: `at least ${least}`, ratio: now / before, met: now >= least * before })
    return [
      kept(`writes of a shop among ${shops} of ${barsInEach} bars, beside alone`, speeds.among.written, speeds.alone.written),
      kept(`reads of a shop among ${shops} of ${barsInEach} bars, beside alone`, speeds.among.read, speeds.alone.read),
      { ...kept('writes by 4 processes beside 1', speeds.by4.written, speeds.by1.written), figure: said('written') },
      { ...kept('reads by 4 processes beside 1', speeds.by4.read, speeds.by1.read), figure: said('read') },
    ]
  } finally {
    for (const one of open) await one.clear()
    await cluster.clear()
  }
}

/** A database with one shop in it. */
async function seeded(cluster: Cluster, name: string): Promise<string> {
  const url = await cluster.makeDatabase(name), { storeOf, close } = await openInstallation(url), store = storeOf('s0')
  await startShop(store)
  for (let bar = 0; bar < barsInEach; bar += 1) await keepDeed(store, deedOfBar(`b${bar}`).deed)
  await close()
  return url
}

/** The one shop again and again, under other names, as the database itself copies rows. */
async function seedRest(cluster: Cluster): Promise<void> {
  const { rows } = await cluster.asOwner('bench', `select table_name as name, string_agg(quote_ident(column_name), ', ') as columns from information_schema.columns
    where table_schema = 'public' and table_name in (select table_name from information_schema.columns where table_schema = 'public' and column_name = 'shop') and column_name <> 'shop' group by table_name`)
  const all = (rows as { name: string; columns: string }[]).map(({ name, columns }) => `insert into "${name}" (shop, ${columns}) select 's' || n, ${columns} from "${name}", generate_series(1, ${shops - 1}) as n where shop = 's0'`)
  await cluster.asOwner('bench', `begin; set constraints all deferred; set local session_replication_role = replica; ${all.join('; ')}; commit; analyze`)
}

/** Acts and questions a second, hands spread over processes and shops; each has its turn in every round, its best one counts. */
async function inTurns<Name extends string>(ways: { readonly [name in Name]: readonly [readonly ShopProcess[], readonly string[]] }): Promise<{ readonly [name in Name]: Speed }> {
  const best = Object.fromEntries(Object.keys(ways).map((name) => [name, { written: 0, read: 0 }])) as { [name in Name]: Speed }
  for (let round = 0; round < rounds; round += 1) {
    for (const [name, [processes, names]] of Object.entries(ways) as [Name, (typeof ways)[Name]][]) {
      const of = (at: number) => [processes[at % processes.length]!, names[at % names.length]!] as const
      const written = await perSecond(writes, (at) => ask(...of(at), '/api/deeds', deedOfBar(`${name}-${round}-${at}`).deed))
      const read = await perSecond(reads, (at) => ask(...of(at), `/api/history/bar/bar-b${at % barsInEach}`))
      best[name] = { written: Math.max(best[name].written, written), read: Math.max(best[name].read, read) }
    }
  }
  return best
}

async function perSecond(count: number, act: (at: number) => Promise<void>): Promise<number> {
  const began = performance.now()
  await Promise.all(Array.from({ length: hands }, async (_none, hand) => { for (let at = hand; at < count; at += hands) await act(at) }))
  return count / ((performance.now() - began) / 1000)
}

const agent = new Agent({ keepAlive: true, maxSockets: hands })

function ask(process: ShopProcess, shop: string, path: string, body?: unknown): Promise<void> {
  const text = body === undefined ? undefined : JSON.stringify(body)
  return new Promise((done, failed) => {
    const headers = { ...(shop === '' ? {} : { host: `${shop}.${under}` }), ...(text === undefined ? {} : { 'content-type': 'application/json', 'content-length': Buffer.byteLength(text) }) }
    request(`${process.url}${path}`, { method: text === undefined ? 'GET' : 'POST', agent, headers }, (answer) => {
      answer.resume().on('end', () => (answer.statusCode === 200 ? done() : failed(new Error(`${path} answered ${answer.statusCode}`))))
    }).on('error', failed).end(text)
  })
}
