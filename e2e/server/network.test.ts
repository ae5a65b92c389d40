import { spawn } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { type IncomingMessage, request } from 'node:http'
import { request as secureRequest } from 'node:https'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { atTheMachine, ownerIsSet, passphrase } from '../owner.ts'
import { type ShopProcess, startShop } from '../shop-process.ts'

const main = resolve(import.meta.dirname, '../../dist/node/main.js')
let scratch: string, shop: ShopProcess | null = null
beforeAll(() => { scratch = mkdtempSync(join(tmpdir(), 'twinrest-network-')) })
afterAll(() => rmSync(scratch, { recursive: true }))
afterEach(async () => { await shop?.clear(); shop = null })

async function opened(args: readonly string[], before: (folder: string) => Promise<unknown> = async () => {}): Promise<ShopProcess> {
  shop = await startShop({ demo: false, args, before: async (folder) => { await ownerIsSet(folder); await before(folder) } })
  return shop
}

type Asked = { readonly from?: string; readonly cookie?: string; readonly body?: unknown; readonly ca?: string | undefined; readonly https?: boolean; readonly headers?: { readonly [name: string]: string } }
type Said = { readonly status: number; readonly text: string; readonly answer: IncomingMessage }

/** Asks from 127.0.0.2, which is this machine's but not what it calls itself: for the shop it comes from the network. */
function ask({ url }: ShopProcess, path: string, { from = '127.0.0.2', cookie, body, ca, https = ca !== undefined, headers = {} }: Asked = {}): Promise<Said> {
  const text = body === undefined ? null : JSON.stringify(body)
  const wanted = {
    port: new URL(url).port, host: '127.0.0.1', localAddress: from, path, agent: false as const, method: text === null ? 'GET' : 'POST', ...(ca === undefined ? {} : { ca }),
    headers: { ...(cookie === undefined ? {} : { cookie }), ...(text === null ? {} : { 'content-type': 'application/json', 'content-length': String(Buffer.byteLength(text)) }), ...headers },
  }
  return new Promise((done, failed) => {
    (https ? secureRequest : request)(wanted, (answer) => {
      let said = ''
      answer.setEncoding('utf8').on('data', (piece: string) => { said += piece }).on('end', () => done({ status: answer.statusCode!, text: said, answer }))
    }).on('error', failed).end(text ?? undefined)
  })
}

const cookieOf = ({ answer }: Said): string => answer.headers['set-cookie']![0]!.split(';')[0]!
const codeFor = async ({ dataFolder }: ShopProcess) => (await atTheMachine(dataFolder, ['device', 'code'])).trim()
const authorityOf = ({ dataFolder }: ShopProcess) => readFileSync(join(dataFolder, 'certificate', 'authority.pem'), 'utf8')

/** A server that ends by itself: what it said on standard error, and its exit code. */
function ended(args: readonly string[]): Promise<{ readonly code: number | null; readonly err: string }> {
  return new Promise((done) => {
    const child = spawn(process.execPath, [main, '--port', '0', ...args])
    let err = ''
    child.stderr.on('data', (text: Buffer) => { err += text.toString() })
    child.on('close', (code) => done({ code, err }))
  })
}

describe('who may come', () => {
  it('nobody but this machine, until the shop is opened', async () => {
    shop = await startShop({ demo: false })
    const port = Number(new URL(shop.url).port)
    const other = await new Promise((done) => { connect(port, '127.0.0.2', () => done('open')).on('error', (error: NodeJS.ErrnoException) => done(error.code)) })
    expect(other).toBe('ECONNREFUSED')
  })

  it('opening needs an owner: without a passphrase the server does not start', async () => {
    for (const word of ['--lan', '--behind-proxy']) {
      expect(await ended([word, '--data', join(scratch, 'bare')])).toEqual({ code: 2, err: 'Opening the shop to the network needs an owner: set a passphrase first, with twinrest owner passphrase, or under Shop on this machine.\n' })
    }
  })

  it('devices with a code, until they are revoked by a command on the machine', async () => {
    const here = await opened(['--lan'])
    expect((await ask(here, '/api/shop', { from: '127.0.0.1' })).status).toBe(200)
    expect(await ask(here, '/api/shop')).toMatchObject({ status: 401, text: '{"refused":"device-not-enrolled","facts":{}}' })
    const answer = await ask(here, '/api/enrol', { body: { code: await codeFor(here), name: 'Tablet' } }), cookie = cookieOf(answer)
    expect((await ask(here, '/api/shop', { cookie })).status).toBe(200)
    expect(await atTheMachine(here.dataFolder, ['device', 'list'])).toContain('Tablet')
    await atTheMachine(here.dataFolder, ['device', 'revoke', 'Tablet'])
    expect((await ask(here, '/api/shop', { cookie })).status).toBe(401)
  })
})

describe('https', () => {
  it('by an authority of the shop: heard by whoever trusts it, refused by the rest, and the way to trust it on plain http', async () => {
    const here = await opened(['--lan'], (folder) => atTheMachine(folder, ['certificate'])), ca = authorityOf(here)
    expect((await ask(here, '/api/health', { ca })).text).toBe('{"up":true}')
    await expect(ask(here, '/api/health', { https: true })).rejects.toThrow(/certificate/)
    expect((await ask(here, '/api/shop', { ca })).status).toBe(401)
    const answer = await ask(here, '/api/enrol', { ca, body: { code: await codeFor(here), name: 'Tablet' }, headers: { origin: here.url.replace('http:', 'https:') } })
    expect(answer.answer.headers['set-cookie']![0]).toMatch(/^__Host-twinrest-device=[\w-]{43}; .*HttpOnly; Secure; SameSite=Lax$/)
    expect((await ask(here, '/api/shop', { ca, cookie: cookieOf(answer) })).status).toBe(200)
    expect(await ask(here, '/api/shop', { cookie: cookieOf(answer) })).toMatchObject({ status: 403, text: expect.stringContaining('https-needed') as string })
    const page = await ask(here, '/trust')
    expect(page).toMatchObject({ status: 200, text: expect.stringContaining('Make this device trust the shop') as string })
    expect((await ask(here, '/setup')).answer.headers.location).toBe('/trust')
    expect((await ask(here, '/api/shop', { from: '127.0.0.1' })).status).toBe(200)
    for (const { answer: { headers } } of [page, answer]) expect(headers).toMatchObject({ 'content-security-policy': expect.stringContaining("default-src 'self'") as string, 'x-content-type-options': 'nosniff' })
  })

  it('by given files; a key that is not theirs is refused at the start', async () => {
    const own = join(scratch, 'own'), pem = (name: string) => join(own, 'certificate', `${name}.pem`)
    await ownerIsSet(own)
    await atTheMachine(own, ['certificate'])
    const here = await opened(['--lan', '--cert', pem('server'), '--key', pem('server-key')])
    expect((await ask(here, '/api/health', { ca: readFileSync(pem('authority'), 'utf8') })).text).toBe('{"up":true}')
    expect(await ended(['--lan', '--data', own, '--cert', pem('server'), '--key', pem('authority-key')])).toMatchObject({ code: 2, err: expect.stringContaining('the key belongs to another certificate') as string })
    expect(await ended(['--lan', '--data', own, '--cert', join(own, 'none.pem'), '--key', pem('server-key')])).toMatchObject({ code: 2, err: expect.stringContaining('cannot be read') as string })
  })

  it('stops soon with silent and idle connections open, and starts again with the devices it had', async () => {
    const here = await opened(['--lan'], (folder) => atTheMachine(folder, ['certificate'])), ca = authorityOf(here)
    const cookie = cookieOf(await ask(here, '/api/enrol', { ca, body: { code: await codeFor(here), name: 'Tablet' } }))
    const silent = connect(Number(new URL(here.url).port), '127.0.0.1').on('error', () => { /* hung up on */ })
    await new Promise((done) => { silent.once('connect', done) })
    const began = performance.now()
    expect(await here.stop()).toBe(0)
    expect(performance.now() - began).toBeLessThan(3000)
    await here.start()
    expect((await ask(here, '/api/shop', { ca, cookie })).status).toBe(200)
  })
})

it('behind a proxy nobody is this machine, and the proxy says by which name and how the caller came', async () => {
  const here = await opened(['--behind-proxy', '--host-name', 'shop.test'])
  const headers = { 'x-forwarded-for': '192.168.1.50', 'x-forwarded-host': 'shop.test', 'x-forwarded-proto': 'https' }
  expect((await ask(here, '/api/shop', { from: '127.0.0.1' })).status).toBe(401)
  const answer = await ask(here, '/api/enrol', { from: '127.0.0.1', body: { code: await codeFor(here), name: 'Tablet' }, headers: { ...headers, origin: 'https://shop.test' } })
  expect(answer.answer.headers['set-cookie']![0]).toContain('Secure')
  expect((await ask(here, '/api/shop', { from: '127.0.0.1', cookie: cookieOf(answer), headers })).status).toBe(200)
  expect((await ask(here, '/api/shop', { from: '127.0.0.1', cookie: cookieOf(answer), headers: { ...headers, 'x-forwarded-host': 'shop.example' } })).status).toBe(403)
})

it('a proxy the server was not told about opens nothing', async () => {
  const here = await opened(['--lan'])
  expect(await ask(here, '/api/shop', { from: '127.0.0.1', headers: { 'x-forwarded-for': '192.168.1.50' } })).toMatchObject({ status: 403, text: expect.stringContaining('forwarded-unexpected') as string })
})

it('the passphrase is kept only where both are alike and long enough, and is never echoed', async () => {
  const folder = join(scratch, 'words')
  await expect(atTheMachine(folder, ['owner', 'passphrase'], 'short\n')).rejects.toThrow(/15 letters or more/)
  await expect(atTheMachine(folder, ['owner', 'passphrase'], '')).rejects.toThrow(/needs a value/)
  expect(await atTheMachine(folder, ['owner', 'passphrase'], `${passphrase}\n`)).toBe('')
  await expect(atTheMachine(folder, ['device', 'revoke', 'nobody'])).rejects.toThrow(/There is no device 'nobody'/)
})
