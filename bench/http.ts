import Database from 'better-sqlite3'
import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { Agent, request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { fileURLToPath } from 'node:url'
import { deedOfBar } from '../e2e/endure/deed-of-bar.ts'
import { type ShopProcess, startShop } from '../e2e/shop-process.ts'
import type { BenchRow } from './bench-row.ts'

/** So many writes that a server is past its first minute: the loop beside it has nothing to warm up. */
const hands = 16, writes = Number(process.env['TWINREST_BENCH_WRITES'] ?? 2000), reads = 3000, rounds = 3
const leastOfBareWrites = 0.45, leastOfBareReads = 0.4

/** The doors of the built server as a device meets them, beside what they stand on, which takes turns with them. */
export async function run(): Promise<BenchRow[]> {
  const folder = mkdtempSync(join(tmpdir(), 'twinrest-bench-')), shop = await startShop({ demo: true, main: join(process.cwd(), 'dist', 'node', 'main.js'), args: ['--backup-hours', '0'] })
  try {
    return [await durableWrites(shop, folder), ...await quickReads(shop, folder)]
  } finally {
    await shop.clear()
    rmSync(folder, { recursive: true, force: true })
  }
}

/** A deed that adds one bar: the rows that it leaves, its history among them, written by a bare loop too, a transaction for each. */
async function durableWrites(shop: ShopProcess, folder: string): Promise<BenchRow> {
  await ask(shop.url, '/api/deeds', JSON.stringify(deedOfBar('first').deed))
  const bare = bareLoop(join(shop.dataFolder, 'shop.sqlite'), join(folder, 'bare.sqlite'), deedOfBar('first'))
  let ours = 0, theirs = 0
  for (let round = 0; round < rounds; round += 1) {
    // Made beforehand: what a tablet does to make a deed is no work of the server's.
    const bodies = Array.from({ length: writes }, (_, at) => JSON.stringify(deedOfBar(`${round}-${at}`).deed))
    ours = Math.max(ours, await perSecond(writes, (at) => ask(shop.url, '/api/deeds', bodies[at]!)))
    theirs = Math.max(theirs, bare(writes))
  }
  return row('durable writes over HTTP', ours, theirs, leastOfBareWrites, 'a bare loop of the same inserts')
}

async function quickReads(shop: ShopProcess, folder: string): Promise<BenchRow[]> {
  const { revision } = JSON.parse(await ask(shop.url, '/api/shop/since/none')) as { revision: string }
  await ask(shop.url, '/api/deeds', JSON.stringify(deedOfBar('last').deed))
  const paths = [['what changed in one bar', `/api/shop/since/${revision}`], ['history of a bar', `/api/history/bar/${deedOfBar('last').bar}`], ['the whole shop', '/api/shop/since/none']] as const
  const file = join(folder, 'answers.sqlite'), db = new Database(file)
  db.exec('create table answer (id text primary key, text text not null) strict')
  for (const [at, [, path]] of paths.entries()) db.prepare('insert into answer values (?, ?)').run(String(at), await ask(shop.url, path))
  db.close()
  const { url, end } = await bareServer(file), rows: BenchRow[] = []
  for (const [at, [name, path]] of paths.entries()) {
    let ours = 0, theirs = 0
    const count = name === 'the whole shop' ? reads / 20 : reads
    for (let round = 0; round < rounds; round += 1) {
      ours = Math.max(ours, await perSecond(count, () => ask(shop.url, path)))
      theirs = Math.max(theirs, await perSecond(count, () => ask(url, `/answer/${at}`)))
    }
    rows.push(row(`reads over HTTP: ${name}`, ours, theirs, leastOfBareReads, 'the bare framework with a bare prepared statement'))
  }
  end()
  return rows
}

function row(name: string, ours: number, theirs: number, least: number, peer: string): BenchRow {
  const ratio = ours / theirs
  return { name, figure: `${Math.round(ours)} a second beside ${Math.round(theirs)}`, target: `at least ${least} × ${peer}`, ratio, met: ratio >= least }
}

/** Inserts the rows of one deed again and again under other keys, into tables made as those of the shop. @returns how many deeds a second */
function bareLoop(from: string, to: string, { bar, deed }: ReturnType<typeof deedOfBar>): (count: number) => number {
  const shop = new Database(from, { readonly: true }), db = new Database(to)
  for (const pragma of ['journal_mode = WAL', 'synchronous = FULL', 'foreign_keys = ON']) db.pragma(pragma)
  for (const { sql } of shop.prepare<[], { sql: string }>("select sql from sqlite_master where sql is not null and name not like 'kysely%' and name not like 'sqlite%' order by type desc").all()) db.exec(sql)
  const ids = [...deed.changes, ...deed.checks, ...deed.events].map(({ id }) => id), keyed = new Set([bar, ...ids])
  const rows = ['change', 'bar', 'check', 'reading', 'event'].flatMap((table) => {
    const kept = shop.prepare(`select * from "${table}"`).all() as { [column: string]: unknown }[]
    return kept.filter((one) => keyed.has(String(one['id'])) || keyed.has(String(one['check']))).map((one) => ({ table, one }))
  })
  shop.close()
  const statements = rows.map(({ table, one }) => ({ one, insert: db.prepare(`insert into "${table}" (${Object.keys(one).map((column) => `"${column}"`).join(', ')}) values (${Object.keys(one).map(() => '?').join(', ')})`) }))
  let made = 0
  const write = db.transaction(() => {
    made += 1
    for (const { one, insert } of statements) insert.run(...Object.values(one).map((value) => (typeof value === 'string' && keyed.has(value) ? `${value}-${made}` : value)))
  })
  return (count) => {
    const began = performance.now()
    for (let at = 0; at < count; at += 1) write.immediate()
    return count / (performance.now() - began) * 1000
  }
}

async function perSecond(count: number, one: (at: number) => Promise<unknown>): Promise<number> {
  let next = 0
  // Connections that lay idle while the peer had its turn are given up by the server.
  agent.destroy()
  agent = new Agent({ keepAlive: true, maxSockets: hands })
  const hand = async () => { while (next < count) { const at = next; next += 1; await one(at) } }
  const began = performance.now()
  await Promise.all(Array.from({ length: hands }, hand))
  return count / (performance.now() - began) * 1000
}

let agent = new Agent({ keepAlive: true, maxSockets: hands })

function ask(url: string, path: string, body?: string): Promise<string> {
  return new Promise((done, failed) => {
    const sent = request(url + path, { agent, method: body === undefined ? 'GET' : 'POST', headers: body === undefined ? {} : { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body) } }, (answer) => {
      const pieces: Buffer[] = []
      answer.on('data', (piece: Buffer) => pieces.push(piece)).on('end', () => { const text = Buffer.concat(pieces).toString(); if (answer.statusCode === 200) done(text); else failed(new Error(`${path} answered ${answer.statusCode}: ${text.slice(0, 300)}`)) })
    })
    sent.on('error', failed).end(body)
  })
}

function bareServer(file: string): Promise<{ readonly url: string; readonly end: () => void }> {
  const child = spawn(process.execPath, [fileURLToPath(new URL('http-bare.js', import.meta.url))], { env: { ...process.env, TWINREST_BARE: file }, stdio: ['ignore', 'pipe', 'inherit'] })
  return new Promise((done) => { child.stdout.once('data', (text: Buffer) => done({ url: text.toString().trim(), end: () => { child.kill() } })) })
}
