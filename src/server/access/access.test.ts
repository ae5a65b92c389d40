import { scryptSync, X509Certificate } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Hono } from 'hono'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { isCode } from '#model/code.ts'
import { openDoors } from '#server/access/admit.ts'
import { aMinute, type Limits, usualLimits } from '#server/access/limits.ts'
import { meansThisMachine } from '#server/access/machine-names.ts'
import type { Reach } from '#server/access/reach.ts'
import { createPlainApp } from '#server/access/trust-files.ts'
import { unlockedOf } from '#server/access/unlocked.ts'
import { createApp } from '#server/app.ts'
import { keepPassphrase, keptPassphrase } from '#store/access.ts'
import { nextDoorTo, openExample } from '#store/example-store.ts'
import type { Store } from '#store/store.ts'
import { renewCertificate } from '#tasks/access/certificate/shop-certificate.ts'
import { inviteDevice } from '#tasks/access/devices.ts'
import { makerFor } from '#tasks/maker.ts'

const passphrase = 'three parallels on a plate', json = { 'content-type': 'application/json' }
const lan: Reach = { network: true, behindProxy: false, isOurs: (host) => meansThisMachine(host, ['shop.test'], true), addresses: () => ['https://192.168.1.20:4173'], authority: () => null }
const proxied: Reach = { ...lan, behindProxy: true }

let store: Store, app: Hono, web: string, logged: string[]
beforeEach(async () => {
  web = mkdtempSync(join(tmpdir(), 'twinrest-web-'))
  store = await openExample()
  logged = []
  app = open(lan)
})
afterEach(async () => {
  await store.close()
  rmSync(web, { recursive: true })
})

const open = (reach: Reach, limits: Partial<Limits> = {}): Hono => createApp(store, { webFolder: web, log: (entry) => logged.push(JSON.stringify(entry)), reach, limits: { ...usualLimits(), ...limits } })

type Asked = { readonly from?: string; readonly cookie?: string; readonly body?: unknown; readonly https?: boolean; readonly headers?: { readonly [name: string]: string }; readonly method?: string; readonly at?: Hono }
type Said = { readonly status: number; readonly body: { readonly [key: string]: unknown }; readonly cookies: readonly string[]; readonly headers: Headers }

/** Asks as a device of the network does, unless `from` says otherwise. */
async function ask(path: string, { from = '192.168.1.50', cookie, body, https = true, headers = {}, method, at = app }: Asked = {}): Promise<Said> {
  const init = {
    method: method ?? (body === undefined ? 'GET' : 'POST'),
    headers: { host: 'shop.test', ...(cookie === undefined ? {} : { cookie }), ...(body === undefined ? {} : json), ...headers },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  }
  const answer = await at.request(`${https ? 'https' : 'http'}://shop.test${path}`, init, { incoming: { socket: { remoteAddress: from } } })
  const text = await answer.text()
  return { status: answer.status, body: text.startsWith('{') ? JSON.parse(text) : { text }, cookies: answer.headers.getSetCookie(), headers: answer.headers }
}

/** Hashed at a cost that tests can pay; the usual one is tried in tasks/access. */
const ownerIsSet = () => keepPassphrase(store, { salt: 'AAAA', hash: scryptSync(passphrase, Buffer.from('AAAA', 'base64'), 32, { N: 16, r: 8, p: 1 }).toString('base64'), cost: '16,8,1' }, makerFor('', 'test'))

const cookieOf = ({ cookies }: Said): string => cookies[0]!.split(';')[0]!

async function enrolled(name = 'tablet'): Promise<string> {
  const { code } = await inviteDevice(store, makerFor('', 'test'))
  return cookieOf(await ask('/api/enrol', { body: { code, name } }))
}

/** Every door of the router with something at its parameters. */
const doors = () => [...new Set(app.routes.filter(({ method }) => method !== 'ALL').map(({ method, path }) => `${method} ${path.replaceAll(/:\w+/g, 'x')}`))]

describe('on the network, without a token', () => {
  it('every door of the router is refused but three', async () => {
    expect(doors().length).toBeGreaterThan(20)
    expect(doors().filter((door) => !door.split(' ')[1]!.startsWith('/api/'))).toEqual([])
    const answers = await Promise.all(doors().map(async (door) => {
      const [method, path] = door.split(' ') as [string, string]
      const { status, body } = await ask(path, method === 'GET' ? {} : { method, body: {} })
      return { door, refused: status === 401 && body.refused === 'device-not-enrolled' }
    }))
    expect(answers.filter(({ refused }) => !refused).map(({ door }) => door).sort()).toEqual([...openDoors].sort())
  })

  it.each(['', 'twinrest-device=', `__Host-twinrest-device=${'a'.repeat(43)}`, '__Host-twinrest-device=%00', "__Host-twinrest-device=' or 1=1 --", `twinrest-owner=9999999999999.${'a'.repeat(43)}`])('%j opens nothing', async (cookie) => {
    await enrolled()
    expect(await ask('/api/shop', { cookie })).toMatchObject({ status: 401, body: { refused: 'device-not-enrolled' } })
  })

  it('addresses that are not there, other methods and odd spellings tell nothing either', async () => {
    for (const path of ['/api/nowhere', '/api', '/api/', '/api/shop/', '/api//shop', '/api/health/x', '/%61pi/shop', '/api/sh%6fp', '/API/shop', '/./api/shop', '/x/../api/shop']) expect((await ask(path)).status, path).toBeGreaterThanOrEqual(401)
    expect((await ask('/api/%68ealth')).status).toBe(200)
    for (const method of ['PUT', 'DELETE', 'PATCH', 'OPTIONS', 'HEAD']) expect((await ask('/api/shop', { method })).status, method).toBe(401)
    expect((await ask('/api/health')).status).toBe(200)
  })

  it('a caller without an address is nobody, and this machine itself is let in', async () => {
    expect((await ask('/api/shop', { from: '' })).status).toBe(401)
    for (const from of ['127.0.0.1', '::1', '::ffff:127.0.0.1']) expect((await ask('/api/shop', { from })).status, from).toBe(200)
    for (const from of ['127.0.0.2', '::ffff:192.168.1.50', '127.0.0.1.evil']) expect((await ask('/api/shop', { from })).status, from).toBe(401)
    expect((await ask('/api/shop', { from: '127.0.0.1', headers: { 'x-forwarded-for': '192.168.1.50' } })).body).toMatchObject({ refused: 'forwarded-unexpected' })
  })

  it('a stranger learns nothing of the owner', async () => {
    await ownerIsSet()
    expect((await ask('/api/access')).body).toEqual({ here: false, network: true, secure: true, device: null, owner: { set: false, unlocked: false } })
  })
})

describe('a device with a code', () => {
  it('is let in, known by its cookie alone, and told its standing', async () => {
    const { code } = await inviteDevice(store, makerFor('', 'test'))
    const answer = await ask('/api/enrol', { body: { code, name: 'Tablet at the mill', device: 'OWN2ID' } })
    expect(answer).toMatchObject({ status: 200, body: { name: 'Tablet at the mill', revokedAtIso: null } })
    // Flags: RFC 6265 with SameSite; __Host- asks for Secure, Path=/ and no Domain.
    expect(answer.cookies[0]).toMatch(/^__Host-twinrest-device=[\w-]{43}; Max-Age=34560000; Path=\/; HttpOnly; Secure; SameSite=Lax$/)
    const cookie = cookieOf(answer)
    expect((await ask('/api/shop', { cookie })).status).toBe(200)
    expect((await ask('/api/access', { cookie })).body).toMatchObject({ here: false, secure: true, device: { name: 'Tablet at the mill' } })
    expect(JSON.stringify(answer.body)).not.toContain(cookie.split('=')[1])
    expect(await ask('/api/enrol', { body: { code, name: 'second' } })).toMatchObject({ status: 422, body: { refused: 'enrol-code-not-valid' } })
  })

  it('gets another cookie on plain http, which https does not take', async () => {
    const { code } = await inviteDevice(store, makerFor('', 'test'))
    const answer = await ask('/api/enrol', { body: { code, name: 'tablet' }, https: false })
    expect(answer.cookies[0]).toMatch(/^twinrest-device=[\w-]{43}; Max-Age=34560000; Path=\/; HttpOnly; SameSite=Lax$/)
    expect((await ask('/api/access', { cookie: cookieOf(answer), https: false })).body).toMatchObject({ secure: false, device: { name: 'tablet' } })
    expect((await ask('/api/shop', { cookie: cookieOf(answer), https: true })).status).toBe(401)
  })

  it('is refused at once when it is revoked, by another process too', async () => {
    const cookie = await enrolled('tablet'), owner = await enrolled('office')
    await ownerIsSet()
    const { body } = await ask('/api/devices', { cookie: owner })
    const { id } = (body.devices as { id: string; name: string }[]).find(({ name }) => name === 'tablet')!
    const unlocked = await ask('/api/owner/unlock', { cookie: owner, body: { passphrase } })
    expect(await ask(`/api/devices/${id}/revoke`, { cookie: `${owner}; ${cookieOf(unlocked)}`, body: {} })).toMatchObject({ status: 200, body: { name: 'tablet' } })
    expect((await ask('/api/shop', { cookie })).status).toBe(401)
    expect((await ask('/api/access', { cookie })).body).toMatchObject({ device: null })
    expect((await ask('/api/shop', { cookie: owner })).status).toBe(200)
  })

  it('may read the shop and write into it', async () => {
    const cookie = await enrolled(), by = { person: 'KM', device: 'tablet', atIso: '2025-03-04T05:06:07.000Z' }
    const slot = { id: 'c-1', kind: 'slot', record: 's1', ...by, fields: { code: { value: '23456789', saw: [] }, name: { value: 'B4', saw: [] } } }
    expect(await ask('/api/changes', { cookie, body: [slot] })).toMatchObject({ status: 200, body: { stood: ['c-1'] } })
  })
})

describe("the owner's passphrase", () => {
  const forOwner = ['/api/devices/code', '/api/devices/x/name', '/api/devices/x/revoke']
  beforeEach(ownerIsSet)

  it('is asked for by what is for the owner, also on this machine', async () => {
    const cookie = await enrolled()
    for (const path of forOwner) {
      expect(await ask(path, { cookie, body: { name: 'x' } }), path).toMatchObject({ status: 403, body: { refused: 'owner-needed' } })
      expect((await ask(path, { from: '127.0.0.1', body: { name: 'x' } })).status, path).toBe(403)
    }
  })

  it('opens them for one device for ten minutes, until it is locked again', async () => {
    const cookie = await enrolled(), other = await enrolled('other')
    expect(await ask('/api/owner/unlock', { cookie, body: { passphrase: 'not this one at all' } })).toMatchObject({ status: 422, body: { refused: 'passphrase-wrong' }, cookies: [] })
    const answer = await ask('/api/owner/unlock', { cookie, body: { passphrase } }), owner = cookieOf(answer)
    expect(answer.cookies[0]).toMatch(/^__Host-twinrest-owner=\d+\.[\w-]{43}; Max-Age=600; Path=\/; HttpOnly; Secure; SameSite=Strict$/)
    const made = await ask('/api/devices/code', { cookie: `${cookie}; ${owner}`, method: 'POST' })
    expect([made.status, isCode(String(made.body.code))]).toEqual([200, true])
    expect((await ask('/api/devices/code', { cookie: `${other}; ${owner}`, method: 'POST' })).status).toBe(403)
    expect((await ask('/api/access', { cookie: `${cookie}; ${owner}` })).body).toMatchObject({ owner: { set: true, unlocked: true } })
    const locked = await ask('/api/owner/lock', { cookie: `${cookie}; ${owner}`, method: 'POST' })
    expect(locked.cookies[0]).toMatch(/^__Host-twinrest-owner=; Max-Age=0;/)
    expect((await ask('/api/devices/code', { cookie: `${cookie}; ${cookieOf(locked)}`, method: 'POST' })).status).toBe(403)
  })

  it('given to one process counts in another and after a restart, until the device is revoked', async () => {
    const cookie = await enrolled(), both = `${cookie}; ${cookieOf(await ask('/api/owner/unlock', { cookie, body: { passphrase } }))}`, at = open(lan)
    expect((await ask('/api/devices/code', { at, cookie: both, method: 'POST' })).status).toBe(200)
    const { body } = await ask('/api/access', { at, cookie: both }), { id } = body.device as { id: string }
    expect((await ask(`/api/devices/${id}/revoke`, { cookie: both, body: {} })).status).toBe(200)
    expect((await ask('/api/devices/code', { at, cookie: both, method: 'POST' })).status).toBe(401)
  })

  it('is needed for new initials and for taking initials back, not for units of a person', async () => {
    const cookie = await enrolled(), by = { person: 'KM', device: 'tablet', atIso: '2025-03-04T05:06:07.000Z' }
    const person = (id: string, fields: object) => ({ changes: [{ id, kind: 'person', record: 'p1', ...by, fields }], checks: [], events: [] })
    const added = person('c-1', { initials: { value: 'QX', saw: [] }, units: { value: null, saw: [] } })
    for (const [path, body] of [['/api/deeds', added], ['/api/changes', added.changes]] as const) expect(await ask(path, { cookie, body })).toMatchObject({ status: 403, body: { refused: 'owner-needed' } })
    const owner = cookieOf(await ask('/api/owner/unlock', { cookie, body: { passphrase } }))
    expect((await ask('/api/deeds', { cookie: `${cookie}; ${owner}`, body: added })).status).toBe(200)
    expect((await ask('/api/deeds', { cookie, body: person('c-2', { units: { value: { length: 'in', decimalMark: '.', words: 'US' }, saw: ['c-1'] } }) })).status).toBe(200)
    expect((await ask('/api/deeds', { cookie, body: person('c-3', { initials: { value: 'QY', saw: ['c-1'] } }) })).status).toBe(403)
  })

  it('is changed by the owner, and whoever was unlocked by the old one is not any more', async () => {
    const cookie = await enrolled()
    expect((await ask('/api/owner/passphrase', { cookie, body: { passphrase: 'another short sentence' } })).status).toBe(403)
    const old = cookieOf(await ask('/api/owner/unlock', { cookie, body: { passphrase } }))
    const answer = await ask('/api/owner/passphrase', { cookie: `${cookie}; ${old}`, body: { passphrase: 'another short sentence' } })
    expect(answer.status).toBe(200)
    expect((await ask('/api/devices/code', { cookie: `${cookie}; ${old}`, method: 'POST' })).status).toBe(403)
    expect((await ask('/api/devices/code', { cookie: `${cookie}; ${cookieOf(answer)}`, method: 'POST' })).status).toBe(200)
  })
})

describe('an unlocking', () => {
  let now: number, token: string
  const holds = (given = token, device = 'tablet', of = store) => unlockedOf(of, () => now).isOpen(given, device)
  beforeEach(async () => {
    now = 0
    await ownerIsSet()
    token = unlockedOf(store, () => now).open('tablet', (await keptPassphrase(store))!)
  })

  it('holds for ten minutes', async () => {
    now = 10 * 60_000 - 1
    expect(await holds()).toBe(true)
    now += 1
    expect(await holds()).toBe(false)
  })

  it('holds for the device and the shop it was made for, though another has the same passphrase', async () => {
    const other = await nextDoorTo(store)
    await keepPassphrase(other, (await keptPassphrase(store))!, makerFor('', 'test'))
    expect([await holds(), await holds(token, 'phone'), await holds(token, 'here'), await holds(token, 'tablet', other)]).toEqual([true, false, false, false])
  })

  it('ends with the passphrase, also where the same words are set again', async () => {
    const { hash, cost } = (await keptPassphrase(store))!
    await keepPassphrase(store, { salt: 'BBBB', hash, cost }, makerFor('', 'test'))
    expect(await holds()).toBe(false)
  })

  it('is not made, lengthened or bent by whoever has none of the key', async () => {
    const [untilMs, seal] = token.split('.') as [string, string], turned = `${seal.startsWith('A') ? 'B' : 'A'}${seal.slice(1)}`
    for (const forged of ['', '.', untilMs, `${Number(untilMs) + 1}.${seal}`, `0${untilMs}.${seal}`, `${untilMs}.${turned}`, `${untilMs}.${seal.slice(1)}`, `${untilMs}.${seal}A`, `${untilMs}.`, `NaN.${seal}`, `-1.${seal}`, 'x'.repeat(100_000)]) expect(await holds(forged), forged.slice(0, 80)).toBe(false)
    expect(await holds()).toBe(true)
  })
})

it('the first passphrase is set on this machine alone', async () => {
  const cookie = await enrolled()
  expect(await ask('/api/owner/passphrase', { cookie, body: { passphrase } })).toMatchObject({ status: 403, body: { refused: 'machine-only' } })
  expect(await ask('/api/owner/passphrase', { from: '127.0.0.1', body: { passphrase: 'short' } })).toMatchObject({ status: 422, body: { refused: 'passphrase-too-short' } })
  expect((await ask('/api/owner/passphrase', { from: '127.0.0.1', body: { passphrase } })).status).toBe(200)
})

describe('who tries too often', () => {
  it('is made to wait: codes by address and by all together', async () => {
    const at = open(lan, { enrolling: aMinute(3), enrollingAll: aMinute(5) }), guess = (from: string) => ask('/api/enrol', { at, from, body: { code: '22222222', name: 'x' } })
    for (let n = 0; n < 3; n += 1) expect((await guess('192.168.1.51')).status).toBe(422)
    const fourth = await guess('192.168.1.51')
    expect(fourth).toMatchObject({ status: 429, body: { refused: 'too-many-tries', facts: { waitS: expect.any(Number) as number } } })
    expect(Number(fourth.headers.get('retry-after'))).toBeGreaterThan(0)
    for (const from of ['192.168.1.52', '192.168.1.53']) expect((await guess(from)).status).toBe(422)
    expect((await guess('192.168.1.54')).status).toBe(429)
    const { code } = await inviteDevice(store, makerFor('', 'test'))
    expect((await ask('/api/enrol', { at, from: '192.168.1.55', body: { code, name: 'x' } })).status).toBe(429)
  })

  it('is made to wait: passphrases', async () => {
    await ownerIsSet()
    const cookie = await enrolled(), statuses = []
    for (let n = 0; n < 6; n += 1) statuses.push((await ask('/api/owner/unlock', { cookie, body: { passphrase: `not this one ${n}` } })).status)
    expect(statuses).toEqual([422, 422, 422, 422, 422, 429])
    expect((await ask('/api/owner/unlock', { cookie, body: { passphrase } })).status).toBe(429)
  })

  it('is made to wait: writes of one device, while others and reading go on', async () => {
    const at = open(lan, { writes: aMinute(4) }), cookie = await enrolled(), other = await enrolled('other'), statuses = []
    for (let n = 0; n < 6; n += 1) statuses.push((await ask('/api/changes', { at, cookie, body: [] })).status)
    expect(statuses).toEqual([200, 200, 200, 200, 429, 429])
    expect((await ask('/api/changes', { at, cookie: other, body: [] })).status).toBe(200)
    expect((await ask('/api/shop', { at, cookie })).status).toBe(200)
  })
})

describe('other sites and other names', () => {
  it.each(['shop.example', '192.168.1.50', 'shop.test.example', 'xn--shop.test'])('a request for the host %s is refused', async (host) => {
    expect(await ask('/api/health', { headers: { host } })).toMatchObject({ status: 403, body: { refused: 'unknown-host' } })
  })

  it.each(['https://shop.example', 'http://shop.test', 'https://shop.test:8443', 'null', 'https://sub.shop.test'])('a write from a page of %s is refused, with a good cookie too', async (origin) => {
    const cookie = await enrolled()
    expect(await ask('/api/changes', { cookie, body: [], headers: { origin } })).toMatchObject({ status: 403, body: { refused: 'foreign-origin' } })
    expect((await ask('/api/changes', { cookie, body: [], headers: { origin: 'https://shop.test' } })).status).toBe(200)
  })

  it('names of this machine count on the network alone', () => {
    expect(meansThisMachine('localhost', [], false)).toBe(true)
    expect(meansThisMachine('[::1]', [], false)).toBe(true)
    expect(meansThisMachine('shop.test', ['shop.test'], false)).toBe(true)
    expect(meansThisMachine('shop.test', [], true)).toBe(false)
  })
})

describe('behind a proxy', () => {
  it('nobody is this machine, the address is the last the proxy names, https is its word', async () => {
    const at = open(proxied, { enrolling: aMinute(1) }), headers = { 'x-forwarded-proto': 'https', 'x-forwarded-host': 'shop.test', 'host': '127.0.0.1:4173' }
    expect((await ask('/api/shop', { at, from: '127.0.0.1', https: false })).status).toBe(401)
    const { code } = await inviteDevice(store, makerFor('', 'test'))
    const enrol = (body: object, forwarded: string) => ask('/api/enrol', { at, from: '127.0.0.1', https: false, body, headers: { ...headers, 'x-forwarded-for': forwarded, 'origin': 'https://shop.test' } })
    expect((await enrol({ code: '22222222', name: 'x' }, '10.9.9.9, 192.168.1.60')).status).toBe(422)
    expect((await enrol({ code: '22222222', name: 'x' }, '10.8.8.8, 192.168.1.60')).status).toBe(429)
    const answer = await enrol({ code, name: 'x' }, '192.168.1.61')
    expect(answer.cookies[0]).toMatch(/^__Host-twinrest-device=.*Secure/)
    expect((await ask('/api/shop', { at, from: '127.0.0.1', https: false, cookie: cookieOf(answer), headers })).status).toBe(200)
    expect((await ask('/api/health', { at, headers: { ...headers, 'x-forwarded-host': 'shop.example' } })).status).toBe(403)
  })
})

it('no secret stands in an error or in the log', async () => {
  await ownerIsSet()
  const cookie = await enrolled(), { code } = await inviteDevice(store, makerFor('', 'test'))
  const broken = createApp({ ...store, db: new Proxy(store.db, { get: () => { throw new TypeError('the shelf fell over') } }) }, { webFolder: web, log: (entry) => logged.push(JSON.stringify(entry)), reach: lan })
  const answers = [
    await ask('/api/shop', { at: broken, cookie }), await ask('/api/enrol', { at: broken, body: { code, name: 'x' } }), await ask('/api/owner/unlock', { at: broken, from: '127.0.0.1', body: { passphrase } }),
    await ask('/api/enrol', { body: { code: `${code}${code}`, name: 'x' } }), await ask('/api/enrol', { body: { code, name: 'x', [code]: 1 } }), await ask('/api/owner/unlock', { cookie, body: { passphrase: `${passphrase}!` } }), await ask('/api/enrol', { body: { code, name: '' } }),
  ]
  expect(answers.slice(0, 3).map(({ status }) => status)).toEqual([500, 500, 500])
  const said = JSON.stringify(answers.map(({ body }) => body)).replace(`"field":"${code}"`, '') + logged.join('')
  expect(said).toContain('the shelf fell over')
  for (const secret of [cookie.split('=')[1]!, passphrase]) expect(said).not.toContain(secret)
  expect(logged.join('')).not.toContain(code)
})

describe('the page that makes a device trust the shop', () => {
  it('gives the authority, its fingerprint and the addresses, on plain http, and nothing else', async () => {
    const { authority: pem, fingerprint } = await renewCertificate(web, ['192.168.1.20'], Date.now())
    const plain = createPlainApp({ ...lan, authority: () => ({ pem, fingerprint }) })
    const page = await ask('/trust', { at: plain, https: false }), text = String(page.body.text)
    expect(text.replaceAll(/<[^>]+>/g, '').replaceAll(/\s/g, '')).toContain(fingerprint.replaceAll(':', ''))
    for (const part of ['href="https://192.168.1.20:4173/"', 'QR code: http://192.168.1.20:4173/trust', 'href="/trust/authority.crt"']) expect(text).toContain(part)
    expect(text).not.toContain('<script')
    const file = await plain.request('http://shop.test/trust/authority.crt')
    expect(file.headers.get('content-type')).toBe('application/x-x509-ca-cert')
    expect(new X509Certificate(Buffer.from(await file.arrayBuffer())).fingerprint256).toBe(fingerprint)
    const elsewhere = await ask('/setup', { at: plain, https: false })
    expect([elsewhere.status, elsewhere.headers.get('location')]).toEqual([302, '/trust'])
    expect(await ask('/api/health', { at: plain, https: false })).toMatchObject({ status: 403, body: { refused: 'https-needed' } })
    expect((await ask('/api/enrol', { at: plain, https: false, body: {} })).status).toBe(403)
  })

  it('says how to come by an authority where there is none', async () => {
    expect((await ask('/trust')).body.text).toContain('twinrest certificate')
    expect((await ask('/trust/authority.crt')).status).toBe(404)
  })
})
