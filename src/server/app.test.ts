import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Hono } from 'hono'
import type { Change, RecordKind } from '#model/change.ts'
import { createApp } from '#server/app.ts'
import { snapshotSchema } from '#server/snapshot-schema.ts'
import { openExample } from '#store/example-store.ts'
import type { Store } from '#store/store.ts'
import { loadDemo } from '#tasks/shop/load-demo.ts'

const json = { 'content-type': 'application/json' }
const atIso = '2025-03-04T05:06:07.000Z'
const script = '<script>x</script>'

let store: Store, app: Hono, web: string, logged: string[]
beforeEach(async () => {
  web = mkdtempSync(join(tmpdir(), 'twinrest-web-'))
  mkdirSync(join(web, 'assets'))
  writeFileSync(join(web, 'index.html'), '<!doctype html><title>Twinrest</title>')
  writeFileSync(join(web, 'assets', 'app-1234.js'), `export const long = '${'x'.repeat(2000)}'`)
  writeFileSync(join(web, 'sw.js'), 'self.x = 1')
  store = await openExample()
  logged = []
  app = createApp(store, { webFolder: web, log: (entry) => logged.push(JSON.stringify(entry)) })
})
afterEach(async () => {
  await store.close()
  rmSync(web, { recursive: true })
})

type Said = { readonly status: number; readonly body: { readonly [key: string]: unknown } }

async function get(path: string, headers: { readonly [name: string]: string } = {}): Promise<Said> {
  return said(await app.request(`http://127.0.0.1:4173${path}`, { headers }))
}

async function post(path: string, body: unknown, headers: { readonly [name: string]: string } = json): Promise<Said> {
  return said(await app.request(`http://127.0.0.1:4173${path}`, { method: 'POST', headers, body: typeof body === 'string' ? body : JSON.stringify(body) }))
}

async function said(answer: Response): Promise<Said> {
  return { status: answer.status, body: await answer.json() as Said['body'] }
}

const refused = (status: number, code: string, facts: object = {}) => ({ status, body: { refused: code, facts: expect.objectContaining(facts) as object } })
const changeOf = (id: string, kind: RecordKind, record: string, fields: { readonly [field: string]: unknown }): Change =>
  ({ id, kind, record, person: 'KM', device: 'tablet', atIso, fields: Object.fromEntries(Object.entries(fields).map(([field, value]) => [field, { value: value as string, saw: [] }])) })
const slot = (id: string, name: string) => changeOf(`c-${id}`, 'slot', id, { code: '23456789', name })

describe('the shop', () => {
  it('says why it keeps no backups: the server was started so, or the database has tools of its own', async () => {
    for (const [kind, code] of [['sqlite', 'backups-not-kept'], ['postgres', 'backup-by-database']] as const) {
      app = createApp({ ...store, kind }, { webFolder: web, log: () => {} })
      expect(await get('/api/backups')).toEqual(refused(422, code))
    }
  })

  it('answers that it is up, and the whole shop in the shape it is described in', async () => {
    expect(await get('/api/health')).toEqual({ status: 200, body: { up: true } })
    await loadDemo(store)
    const { status, body } = await get('/api/shop')
    expect(status).toBe(200)
    expect(snapshotSchema.safeParse(body).error).toBeUndefined()
    expect((body as unknown as { bars: unknown[] }).bars.length).toBeGreaterThan(50)
  })

  it('is not sent again to whoever has it as it stands, and anew after any write', async () => {
    const ask = (path: string, tag: string) => app.request(`http://127.0.0.1:4173${path}`, { headers: { 'if-none-match': tag } })
    await post('/api/changes', [slot('s-1', 'Drawer 1')])
    for (const path of ['/api/shop', '/api/history/slot/s-1']) {
      const first = await ask(path, '"none"'), tag = first.headers.get('etag')!, again = await ask(path, tag)
      expect([first.status, again.status, await again.text(), await (await ask(path, '"none"')).text()]).toEqual([200, 304, '', await first.text()])
      expect((await post('/api/changes', [changeOf(`later-${path.length}`, 'slot', 's-1', { name: `Drawer ${path.length}` })])).status).toBe(200)
      const anew = await ask(path, tag)
      expect([anew.status, await anew.text()]).toEqual([200, expect.stringContaining(`Drawer ${path.length}`)])
    }
    expect(await get('/api/history/slot/s-2')).toEqual(refused(422, 'unknown-record', { given: 's-2' }))
  })

  it('loads the demo into an empty shop once', async () => {
    expect(await post('/api/demo', {})).toEqual({ status: 200, body: { loaded: true } })
    expect(await post('/api/demo', {})).toEqual(refused(422, 'shop-not-empty'))
    const bare = await app.request('http://127.0.0.1:4173/api/demo', { method: 'POST' })
    expect(bare.status).toBe(422)
  })

  it('tells the history of a record and refuses unknown ones', async () => {
    await post('/api/changes', [slot('s1', script)])
    const { status, body } = await get('/api/history/slot/s1')
    expect(status).toBe(200)
    expect(body).toMatchObject([{ id: 'c-s1', what: 'change', person: 'KM', fields: { name: { value: script, fate: 'stands' } } }])
    expect(await get('/api/history/slot/nobody')).toEqual(refused(422, 'unknown-record', { given: 'nobody' }))
    expect(await get('/api/history/vice/s1')).toEqual(refused(422, 'unknown-word', { field: 'kind', given: 'vice' }))
    expect(await get('/api/history/constructor/s1')).toEqual(refused(422, 'unknown-word', { field: 'kind' }))
    expect(await get("/api/history/slot/';drop table bar;--")).toEqual(refused(422, 'unknown-record'))
  })
})

describe('what devices bring', () => {
  it('keeps a change once, however often it is sent, and gives a name with a script in it back as data', async () => {
    for (let times = 0; times < 2; times += 1) expect(await post('/api/changes', [slot('s1', 'B4')])).toEqual({ status: 200, body: { stood: ['c-s1'], clashes: [] } })
    await post('/api/deeds', { changes: [{ ...slot('s2', '<b>B5</b>'), fields: { code: { value: '2345678A', saw: [] }, name: { value: '<b>B5</b>', saw: [] } } }], checks: [], events: [] })
    const answer = await app.request('http://127.0.0.1:4173/api/shop')
    expect(answer.headers.get('content-type')).toMatch(/^application\/json/)
    expect((await answer.json() as { slots: { name: string }[] }).slots.map(({ name }) => name)).toEqual(['B4', '<b>B5</b>'])
  })

  it('answers a clash to whoever brought the second change', async () => {
    await post('/api/changes', [slot('s1', 'B4')])
    await post('/api/changes', [{ ...changeOf('c-2', 'slot', 's1', {}), fields: { name: { value: 'B5', saw: ['c-s1'] } } }])
    const { body } = await post('/api/changes', [{ ...changeOf('c-3', 'slot', 's1', {}), fields: { name: { value: 'B6', saw: ['c-s1'] } } }])
    expect(body).toMatchObject({ clashes: [{ kind: 'slot', record: 's1', field: 'name', stands: { value: 'B6' }, aside: { value: 'B5' } }] })
  })

  it('keeps checks, events, unserved questions and told sheets', async () => {
    await loadDemo(store)
    const bar = 'demo-C-1', by = { person: 'KM', device: 'tablet', atIso }
    expect(await post('/api/events', [{ id: 'e1', bar, kind: 'knocked', undoes: null, note: 'off the table', ...by }])).toMatchObject({ status: 200 })
    expect(await post('/api/checks', [{ id: 'k1', method: 'micrometer', replaces: null, note: '', readings: [{ bar, station: 0, xMm: null, text: '35,002', heightMm: 35.002 }], ...by }])).toMatchObject({ status: 200 })
    const { body: shop } = await get('/api/shop') as unknown as { body: { setups: { id: string; form: object; viseId: string }[] } }
    const { form, viseId, id: setupId } = shop.setups[0]!
    const unserved = { id: 'u1', viseId, form, lowMm: 33, highMm: 32, ...by }
    expect(await post('/api/unserved', [unserved])).toEqual({ status: 200, body: { added: 1 } })
    expect(await post('/api/unserved', [unserved, { ...unserved, id: 'u2' }])).toEqual({ status: 200, body: { added: 0 } })
    expect(await post('/api/told', [{ id: 't1', setupId, what: 'setup sheet', data: { seat: 35 }, ...by }])).toEqual({ status: 200, body: { kept: 1 } })
    const { body: history } = await get(`/api/history/bar/${bar}`) as unknown as { body: { id: string }[] }
    expect(history.map(({ id }) => id)).toEqual(expect.arrayContaining(['e1', 'k1']))
  })

  it.each([
    ['/api/changes', [{ ...slot('s1', 'B4'), colour: 'blue' }], 'unknown-key', 'changes[0].colour'],
    ['/api/changes', [slot('s1', 'B4'), changeOf('c-2', 'slot', 's2', { code: '2345678A', name: 'B5', colour: 'blue' })], 'unknown-key', 'changes[1].fields.colour'],
    ['/api/changes', [changeOf('c-2', 'slot', 's2', { name: 'B5' })], 'field-missing', 'changes[0].fields.code'],
    ['/api/changes', [{ ...slot('s1', 'B4'), id: 'not an id' }], 'value-not-allowed', 'changes[0].id'],
    ['/api/changes', [{ ...slot('s1', 'B4'), kind: 'hammer' }], 'unknown-word', 'changes[0].kind'],
    ['/api/changes', { ...slot('s1', 'B4') }, 'value-not-allowed', 'changes'],
    ['/api/events', [{ id: 'e1', bar: 'nobody', kind: 'knocked', undoes: null, note: '', person: '', device: 'd', atIso }], 'bar-not-known', 'bar'],
    ['/api/checks', [{ id: 'k1', method: 'micrometer', replaces: null, note: '', person: '', device: 'd', atIso, readings: [{ bar: 'b', station: 0, xMm: null, text: '-3', heightMm: -3 }] }], 'size-not-positive', 'checks[0].readings[0].heightMm'],
    ['/api/deeds', { changes: [], checks: [], events: [], sheets: [] }, 'unknown-key', 'sheets'],
    ['/api/unserved', [{}], 'field-missing', 'unserved[0].id'],
    ['/api/told', [{ id: 't1', setupId: 's', what: 'a poem', data: null, person: '', device: 'd', atIso }], 'unknown-word', 'told[0].what'],
    ['/api/setup', { viseId: 'v' }, 'field-missing', 'form'],
    ['/api/setup', { viseId: null, case: { vise: {}, part: {} } }, 'field-missing', 'vise.jawHeightMm'],
    ['/api/rack/import', { csv: 'height,thickness,length\n1,2,3' }, 'field-missing', 'id'],
    ['/api/rack/import', { id: 'i1', csv: 3 }, 'value-not-allowed', 'csv'],
    ['/api/rack/import', { id: 'i1', csv: 'height,thickness,length\n1,2,3', unit: 'furlong' }, 'unknown-word', 'unit'],
  ])('%s refuses %j: %s at %s', async (path, body, code, field) => {
    const before = await get('/api/shop')
    expect(await post(path, body)).toEqual(refused(422, code, { field }))
    expect(await get('/api/shop')).toEqual(before)
  })

  it('takes a request whole or not at all', async () => {
    await post('/api/changes', [slot('s1', 'B4'), changeOf('c-9', 'slot', 's9', { name: 'without a code' })])
    expect(((await get('/api/shop')).body as { slots?: unknown[] }).slots).toEqual([])
  })

  it.each([
    ['half a JSON', '[{"id": "c-1", ', 400, 'not-json'],
    ['no JSON', 'hello', 400, 'not-json'],
    ['nothing', '', 400, 'not-json'],
    ['a prototype key', '[{"__proto__": {"id": "c-1"}, "constructor": {}}]', 422, 'field-missing'],
    ['a prototype key beside a good change', JSON.stringify([slot('s1', 'B4')]).replace('{', '{"__proto__": {"polluted": true}, '), 422, 'unknown-key'],
    ['half a character', JSON.stringify([slot('s1', 'B4\ud83d')]), 422, 'letter-cut'],
    ['half a character in a key', '[{"\\udc00": 1}]', 422, 'letter-cut'],
    ['100 000 lists in lists', `[${JSON.stringify(slot('s1', 'B4')).replace('"B4"', `${'['.repeat(100_000)}${']'.repeat(100_000)}`)}]`, 422, 'too-deep'],
    ['a body of 10 MB', `[${' '.repeat(10 * 1024 * 1024)}]`, 413, 'body-too-large'],
  ])('refuses %s', async (_what, body, status, code) => {
    expect(await post('/api/changes', body)).toEqual(refused(status, code))
    expect(({} as { polluted?: true }).polluted).toBeUndefined()
  })

  it('refuses bytes that are not UTF-8 rather than keep other letters, and tells a request that broke off from a fault', async () => {
    const bytes = Buffer.from(JSON.stringify([slot('s1', 'B4 ø')]), 'latin1')
    expect(await said(await app.request('http://127.0.0.1:4173/api/changes', { method: 'POST', headers: json, body: bytes }))).toEqual(refused(400, 'not-json'))
    const body = new ReadableStream({ pull: (stream) => stream.error(new Error('gone')) })
    expect(await said(await app.request('http://127.0.0.1:4173/api/changes', { method: 'POST', headers: json, body, duplex: 'half' } as RequestInit))).toEqual(refused(400, 'body-broken-off'))
    expect(logged).toEqual([])
  })

  it('refuses what is not JSON by its type, and what comes from elsewhere', async () => {
    expect(await post('/api/changes', [], { 'content-type': 'text/plain' })).toEqual(refused(415, 'json-needed'))
    expect(await post('/api/changes', [], { ...json, 'origin': 'http://shop.example' })).toEqual(refused(403, 'foreign-origin'))
    expect(await get('/api/shop', { host: 'shop.example' })).toEqual(refused(403, 'unknown-host'))
  })
})

describe('the rack as a file', () => {
  it('comes in and goes out again', async () => {
    const csv = 'height,thickness,length,mates,slot\n35,8,150,C,B4\n35,8,150,C,B4\n'
    expect(await post('/api/rack/import', { id: 'i1', csv, unit: 'mm', dryRun: true })).toMatchObject({ status: 200, body: { dryRun: true, bars: 2, mates: 1, newSlots: ['B4'] } })
    expect((await get('/api/shop')).body.bars).toEqual([])
    expect(await post('/api/rack/import', { id: 'i1', csv, unit: 'mm' })).toMatchObject({ status: 200, body: { dryRun: false, bars: 2 } })
    expect(await post('/api/rack/import', { id: 'i1', csv, unit: 'mm' })).toMatchObject({ status: 200, body: { dryRun: false, bars: 2, newSlots: ['B4'] } })
    expect((await get('/api/shop')).body.bars).toHaveLength(2)
    expect(await post('/api/rack/import', { id: 'i1', csv: csv.replace('B4', 'B5'), unit: 'mm' })).toEqual(refused(422, 'id-used-twice', { field: 'id', given: 'i1' }))
    const out = await app.request('http://127.0.0.1:4173/api/rack/export')
    expect(out.headers.get('content-type')).toBe('text/csv; charset=utf-8')
    expect(await out.text()).toMatch(/35,8,150/)
  })

  it('names every line that is amiss and takes nothing in', async () => {
    const { status, body } = await post('/api/rack/import', { id: 'i1', csv: 'height,thickness,length\n35,8,150\ntall,8,150\n0,8,150\n', unit: 'mm' })
    expect(status).toBe(422)
    expect(body).toMatchObject({ refused: 'csv-not-imported', facts: { count: 2, complaints: [{ line: 3, code: 'not-a-number' }, { line: 4, code: 'size-not-positive' }] } })
    expect((await get('/api/shop')).body.bars).toEqual([])
  })
})

describe('the main job', () => {
  it('answers for a vise of the shop and for sizes that come along', async () => {
    await loadDemo(store)
    const part = { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 19 }, cuts = [{ kind: 'face', depthMm: 6 }]
    const here = await post('/api/setup', { viseId: 'demo-vise-1', case: { part, cuts } })
    expect(here).toMatchObject({ status: 200, body: { answer: { window: { lowMm: 33, highMm: 35 } } } })
    const along = await post('/api/setup', { viseId: null, case: { vise: { jawHeightMm: 45, openingMm: 150 }, part, cuts } })
    expect(along.body).toMatchObject({ answer: { window: { lowMm: 33, highMm: 35 } } })
    expect(await post('/api/setup', { viseId: 'nobody', case: { part } })).toEqual(refused(422, 'unknown-record', { given: 'nobody' }))
    expect(await post('/api/setup', { viseId: 'demo-vise-1', case: { part, colour: 'blue' } })).toEqual(refused(422, 'unknown-key', { keys: ['colour'] }))
    expect(await get('/api/card/demo-vise-1')).toMatchObject({ status: 200, body: { rows: expect.any(Array) as unknown[] } })
    expect(await get('/api/card/nobody')).toEqual(refused(422, 'unknown-record', { given: 'nobody' }))
  })

  it('answers calculations as data', async () => {
    const plain = { vise: { jawHeightMm: 45, openingMm: 150 }, part: { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 19 } }
    expect(await post('/api/calc/window', plain)).toMatchObject({ status: 200, body: { lowMm: 0, highMm: 35 } })
    expect(await post('/api/calc/window', [plain, {}])).toMatchObject({ status: 200, body: [{ highMm: 35 }, { refused: 'field-missing' }] })
    expect(await post('/api/calc/window', { ...plain, part: {} })).toEqual(refused(422, 'field-missing', { field: 'part.alongJawsMm' }))
    expect(await post('/api/calc/guess', plain)).toEqual(refused(422, 'unknown-calculation', { given: 'guess' }))
    expect(await post('/api/calc/__proto__', plain)).toEqual(refused(422, 'unknown-calculation'))
    expect(await post('/api/calc/window', `[${' '.repeat(2 * 1024 * 1024)}]`)).toEqual({ status: 200, body: [] })
  })
})

describe('addresses', () => {
  it.each(['/', '/setup', '/setup/s1', '/inspect', '/rack', '/rack/bars/b1', '/make', '/shop', '/index.html'])('%s is the app', async (path) => {
    const answer = await app.request(`http://127.0.0.1:4173${path}`)
    expect([answer.status, answer.headers.get('content-type'), answer.headers.get('cache-control')]).toEqual([200, 'text/html; charset=utf-8', 'no-cache'])
    expect(await answer.text()).toContain('<title>Twinrest</title>')
  })

  it('serves what was built, named ones for ever, packed where the browser can unpack', async () => {
    const plain = await app.request('http://127.0.0.1:4173/assets/app-1234.js')
    expect([plain.headers.get('content-type'), plain.headers.get('cache-control'), plain.headers.get('content-encoding')]).toEqual(['text/javascript; charset=utf-8', 'public, max-age=31536000, immutable', null])
    const packed = await app.request('http://127.0.0.1:4173/assets/app-1234.js', { headers: { 'accept-encoding': 'gzip, br' } })
    expect(packed.headers.get('content-encoding')).toBe('gzip')
    expect((await packed.arrayBuffer()).byteLength).toBeLessThan(200)
    expect((await app.request('http://127.0.0.1:4173/sw.js')).headers.get('cache-control')).toBe('no-cache')
  })

  it.each([
    '/nowhere', '/setups', '/api', '/api/nowhere', '/api/shop/', '/assets/', '/assets/../index.js', '/..%2f..%2fpackage.json', '/assets/..%2f..%2fpackage.json', '/%2e%2e/package.json', '/assets//etc/passwd', '/constructor',
  ])('%s is not there', async (path) => {
    expect(await get(path)).toEqual(refused(404, 'unknown-path'))
  })

  it('says so in the app to a browser', async () => {
    const answer = await app.request('http://127.0.0.1:4173/nowhere', { headers: { accept: 'text/html,application/xhtml+xml,*/*;q=0.8' } })
    expect([answer.status, answer.headers.get('content-type')]).toEqual([404, 'text/html; charset=utf-8'])
    expect((await app.request('http://127.0.0.1:4173/api/nowhere', { headers: { accept: 'text/html' } })).headers.get('content-type')).toContain('json')
  })

  it('says which methods an address has', async () => {
    const answer = await app.request('http://127.0.0.1:4173/api/shop', { method: 'DELETE' })
    expect(await said(answer)).toEqual(refused(405, 'method-not-allowed', { given: 'DELETE', needed: ['GET'] }))
    expect(await get('/api/calc/window')).toEqual(refused(405, 'method-not-allowed', { given: 'GET' }))
    expect((await app.request('http://127.0.0.1:4173/setup', { method: 'POST' })).status).toBe(405)
  })

  it('keeps no answer of the interface in a cache', async () => {
    expect((await app.request('http://127.0.0.1:4173/api/health')).headers.get('cache-control')).toBe('no-store')
  })
})

describe('a fault', () => {
  it('is answered by an id that is in the log, and nothing of what was sent is', async () => {
    const broken = createApp({ ...store, db: new Proxy(store.db, { get: () => { throw new TypeError('the shelf fell over') } }) }, { webFolder: web, log: (entry) => logged.push(JSON.stringify(entry)) })
    const answer = await broken.request('http://127.0.0.1:4173/api/history/bar/KarlMustermann')
    const { fault } = await answer.json() as { fault: string }
    expect(answer.status).toBe(500)
    expect(fault).toMatch(/^[0-9a-f]{8}$/)
    expect(logged.join('')).toContain(`"what":"fault","id":"${fault}","method":"GET","route":"/api/history/:kind/:id"`)
    expect(logged.join('')).toContain('the shelf fell over')
    expect(logged.join('')).not.toContain('KarlMustermann')
  })
})

describe('the description', () => {
  type Document = { readonly openapi: string; readonly paths: { readonly [path: string]: { readonly [method: string]: { readonly requestBody?: { readonly required?: boolean } } } } }

  it('names every door there is, and none that is not', async () => {
    const { status, body } = await get('/api/openapi.json')
    const { openapi, paths } = body as unknown as Document
    expect([status, openapi]).toEqual([200, '3.1.0'])
    const described = Object.entries(paths).flatMap(([path, methods]) => Object.keys(methods).map((method) => `${method} ${path}`)).sort()
    const doors = app.routes.filter(({ method }) => method !== 'ALL').map(({ method, path }) => `${method.toLowerCase()} ${path.replaceAll(/:(\w+)/g, '{$1}')}`)
    expect(described).toEqual([...new Set(doors)].sort())
    expect(described.length).toBeGreaterThanOrEqual(15)
  })

  it('is of the same schemas the doors read with', async () => {
    const { paths } = (await get('/api/openapi.json')).body as unknown as Document
    const body = JSON.stringify(paths['/api/changes']!.post!.requestBody)
    expect(paths['/api/changes']!.post!.requestBody!.required).toBe(true)
    for (const word of ['"saw"', '"device"', '"additionalProperties":false']) expect(body).toContain(word)
    expect(JSON.stringify(paths['/api/calc/{name}'])).toContain('"name":"name"')
  })

  it('points nowhere that is not there', async () => {
    const { body } = await get('/api/openapi.json')
    const refs = [...JSON.stringify(body).matchAll(/"\$ref":"#\/([^"]+)"/g)].map(([, path]) => path!)
    expect(refs.length).toBeGreaterThan(0)
    for (const ref of new Set(refs)) expect(ref.split('/').reduce<unknown>((at, step) => (at as { [step: string]: unknown })[step], body), ref).toBeDefined()
  })
})
