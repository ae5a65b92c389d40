import { spawn } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { databaseState } from '../endure/database-state.ts'
import { deedOfBar } from '../endure/deed-of-bar.ts'
import { atTheMachine, ownerIsSet, passphrase } from '../owner.ts'
import { relayTo, type Relay } from '../relay.ts'
import { type ShopProcess, startShop } from '../shop-process.ts'

const main = resolve(import.meta.dirname, '../../dist/node/main.js'), json = { 'content-type': 'application/json' }
let shop: ShopProcess, relay: Relay, scratch: string
beforeAll(async () => {
  shop = await startShop({ demo: true, args: ['--lan'], before: ownerIsSet })
  relay = await relayTo(shop.url)
  scratch = mkdtempSync(join(tmpdir(), 'twinrest-operation-'))
})
afterAll(async () => { await shop.clear(); await relay.close(); rmSync(scratch, { recursive: true, force: true }) })

const barsOf = async (url: string) => ((await (await fetch(`${url}/api/shop`)).json()) as { bars: { id: string }[] }).bars.length
const refusedBy = (folder: string, ...words: string[]) => atTheMachine(folder, words).then(() => 'done', (error: Error) => error.message)

describe('the server says how it is', () => {
  it('answers health, readiness and metrics on this machine', async () => {
    expect(await (await fetch(`${shop.url}/api/health`)).json()).toEqual({ up: true })
    expect(await (await fetch(`${shop.url}/api/ready`)).json()).toEqual({ ready: true })
    await fetch(`${shop.url}/api/history/bar/a-secret-name`)
    await fetch(`${shop.url}/api/another-secret`)
    const answer = await fetch(`${shop.url}/api/metrics`), text = await answer.text()
    expect(answer.headers.get('content-type')).toBe('text/plain; version=0.0.4; charset=utf-8')
    // Every line is a comment or a sample: METRICS-TEXT.
    for (const line of text.trimEnd().split('\n')) expect(line).toMatch(/^(# (HELP|TYPE) [a-z_]+ .+|[a-z_]+(\{([a-z]+="[^"\\\n]*",?)+\})? [0-9.e+-]+)$/)
    expect(text).toMatch(/twinrest_requests_total\{method="GET",route="\/api\/ready",status="200"\} 1\n/)
    expect(text).toMatch(/route="\/api\/history\/:kind\/:id"/)
    expect(text).not.toContain('secret')
    const buckets = [...text.matchAll(/bucket\{kind="read",le="[^"]+"\} (\d+)/g)].map(([, count]) => Number(count))
    expect(buckets).toEqual([...buckets].sort((a, b) => a - b))
    expect(Number(/twinrest_request_seconds_count\{kind="read"\} (\d+)/.exec(text)![1])).toBe(buckets.at(-1))
    expect(Number(/\ntwinrest_database_bytes (\d+)/.exec(text)![1])).toBeGreaterThan(4096)
  })

  it('tells its numbers, backups and the whole shop on the network to the owner alone', async () => {
    const code = (await atTheMachine(shop.dataFolder, ['device', 'code'])).replaceAll(/\s/g, '')
    const device = (await fetch(`${relay.url}/api/enrol`, { method: 'POST', headers: json, body: JSON.stringify({ code, name: 'Tablet' }) })).headers.getSetCookie()[0]!.split(';')[0]!
    const owned = ['/api/metrics', '/api/backups', '/api/export']
    for (const path of owned) expect(await (await fetch(`${relay.url}${path}`, { headers: { cookie: device } })).json(), path).toMatchObject({ refused: 'owner-needed' })
    expect((await fetch(`${relay.url}/api/import`, { method: 'POST', headers: { ...json, cookie: device }, body: '{}' })).status).toBe(403)
    const unlocked = await fetch(`${relay.url}/api/owner/unlock`, { method: 'POST', headers: { ...json, cookie: device }, body: JSON.stringify({ passphrase }) })
    const owner = `${device}; ${unlocked.headers.getSetCookie()[0]!.split(';')[0]!}`
    for (const path of owned) expect((await fetch(`${relay.url}${path}`, { headers: { cookie: owner } })).status, path).toBe(200)
  })

  it('logs requests as lines of JSON that name the shape of the address', async () => {
    const child = spawn(process.execPath, [main, '--data', join(scratch, 'logged'), '--port', '0', '--log-requests'])
    let out = '', err = ''
    child.stderr.on('data', (text: Buffer) => { err += text.toString() })
    const url = await new Promise<string>((done) => { child.stdout.on('data', (text: Buffer) => { out += text.toString(); const at = /http:\S+/.exec(out); if (at) done(at[0]) }) })
    await fetch(`${url}/api/history/bar/KARLM`)
    const ended = new Promise((done) => { child.on('close', done) })
    child.kill('SIGTERM')
    expect(await ended).toBe(0)
    expect(err.trim().split('\n').map((line) => JSON.parse(line) as unknown)).toEqual([{ at: expect.stringMatching(/^\d{4}-.*Z$/) as string, level: 'info', what: 'request', method: 'GET', route: '/api/history/:kind/:id', status: 422, ms: expect.any(Number) as number }])
  })
})

describe('the shop is kept and brought back', () => {
  it('by backups of a running server, put in place by one command once it is stopped', async () => {
    const before = await barsOf(shop.url), byDoor = await (await fetch(`${shop.url}/api/backups`, { method: 'POST', headers: json, body: '{}' })).json() as { refused?: string }
    expect(byDoor).toMatchObject({ refused: 'owner-needed' })
    const name = (await atTheMachine(shop.dataFolder, ['backup'])).trim()
    expect(await atTheMachine(shop.dataFolder, ['backup', '--list'])).toContain(name)
    await fetch(`${shop.url}/api/deeds`, { method: 'POST', headers: json, body: JSON.stringify(deedOfBar('after').deed) })
    expect(await barsOf(shop.url)).toBe(before + 1)
    expect(await refusedBy(shop.dataFolder, 'restore', name)).toMatch(/ended with 2: .*stop the server first/s)
    await shop.stop()
    await atTheMachine(shop.dataFolder, ['restore', name])
    await shop.start()
    expect(await barsOf(shop.url)).toBe(before)
  })

  it('by one file of data, taken in by an empty shop, and by no other', async () => {
    const file = join(scratch, 'shop.json'), other = join(scratch, 'other')
    await atTheMachine(shop.dataFolder, ['export', file])
    await atTheMachine(other, ['import', file])
    expect(await atTheMachine(other, ['export'])).toBe(readFileSync(file, 'utf8'))
    expect(await refusedBy(other, 'import', file)).toMatch(/only into an empty one/)
  })

  it('where the database is damaged it says so at the start, and what to do', async () => {
    const folder = join(scratch, 'damaged')
    mkdirSync(folder)
    await atTheMachine(folder, ['rack', 'add', '--height', '35', '--thickness', '8', '--length', '150'])
    const name = (await atTheMachine(folder, ['backup'])).trim(), file = join(folder, 'shop.sqlite')
    writeFileSync(file, readFileSync(file).fill(0x5a, 4096, 5 * 4096))
    const child = spawn(process.execPath, [main, '--data', folder, '--port', '0'])
    let err = ''
    child.stderr.on('data', (text: Buffer) => { err += text.toString() })
    expect(await new Promise((done) => { child.on('close', done) })).toBe(2)
    expect(err).toMatch(/is damaged .*twinrest restore BACKUP/)
    await atTheMachine(folder, ['restore', name])
    expect(await atTheMachine(folder, ['rack', 'list'])).toContain('35')
  })
})

describe('a disk that takes no more', () => {
  it('is said to whoever writes, loses nothing acknowledged, and is found sound again', async () => {
    const folder = join(scratch, 'full'), acknowledged: string[] = []
    // A limit on the size of files (ulimit -f, blocks of 512 bytes) ends writing as a full disk does.
    const child = spawn('sh', ['-c', 'ulimit -f 1400; exec "$0" "$@"', process.execPath, main, '--data', folder, '--port', '0', '--log-requests'])
    let out = '', err = ''
    child.stderr.on('data', (text: Buffer) => { err += text.toString() })
    const url = await new Promise<string>((done) => { child.stdout.on('data', (text: Buffer) => { out += text.toString(); const at = /http:\S+/.exec(out); if (at) done(at[0]) }) })
    let said: { readonly status: number; readonly body: unknown } | null = null
    for (let at = 0; at < 3000 && said === null; at += 1) {
      const { bar, deed } = deedOfBar(`full-${at}`), answer = await fetch(`${url}/api/deeds`, { method: 'POST', headers: json, body: JSON.stringify(deed) })
      if (answer.ok) acknowledged.push(bar)
      else said = { status: answer.status, body: await answer.json() }
    }
    expect(said).toEqual({ status: 503, body: { refused: expect.stringMatching(/^(disk-full|data-folder-not-writable)$/) as string, facts: expect.any(Object) as object } })
    expect(JSON.stringify(said)).not.toContain(scratch)
    expect(await barsOf(url)).toBe(acknowledged.length)
    expect(err).toMatch(/"level":"error","what":"(disk-full|data-folder-not-writable)","method":"POST","route":"\/api\/deeds"/)
    const ended = new Promise((done) => { child.on('close', done) })
    child.kill('SIGKILL')
    await ended
    const state = databaseState(folder)
    expect({ ...state, bars: [...state.bars].sort() }).toEqual({ integrity: 'ok', strays: [], halves: [], bars: [...acknowledged].sort() })
  })
})
