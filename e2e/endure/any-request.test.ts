import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { createApp } from '#server/app.ts'
import { openStore } from '#store/open.ts'
import type { Store } from '#store/store.ts'
import { loadDemo } from '#tasks/shop/load-demo.ts'
import { dataOf, type Schema, spoilt } from './data-of-schema.ts'

const requests = Number(process.env['TWINREST_REQUESTS'] ?? 400)
const logged: string[] = []
let store: Store, app: ReturnType<typeof createApp>, ask: (path: string, body?: string) => Promise<{ readonly status: number; readonly text: string }>
beforeAll(async () => {
  store = await openStore(':memory:')
  await loadDemo(store)
  app = createApp(store, { webFolder: '/nowhere', log: (entry) => logged.push(JSON.stringify(entry)) })
  ask = async (path, body) => {
    const answer = await app.request(`http://127.0.0.1:4173${path}`, body === undefined ? {} : { method: 'POST', headers: { 'content-type': 'application/json' }, body })
    return { status: answer.status, text: await answer.text() }
  }
})
afterAll(() => store.close())

/** The tables that only ever grow, and under which lists of a request their ids come. */
const kept = { change: 'changes', check: 'checks', event: 'events', told: 'told', unserved: 'unserved', import: 'import' } as const

async function idsKept(): Promise<ReadonlySet<string>> {
  const ids = await Promise.all(Object.keys(kept).map(async (table) => (await store.db.selectFrom(table as 'change').select('id').execute()).map(({ id }) => `${table} ${id}`)))
  return new Set(ids.flat())
}

/** Bodies that a device might send, each with ids of its own: what is spoilt in them is then all that is amiss. */
function goodBodies({ bars, slots, vises, setups }: ShopSnapshot, own: string): { readonly [path: string]: unknown } {
  const by = { person: 'KM', device: 'tablet', atIso: '2026-03-04T05:06:07.000Z' }, slot = slots[0]!, bar = bars[0]!.id
  const change = { id: `c-${own}`, kind: 'slot', record: slot.id, fields: { name: { value: own.slice(0, 20), saw: slot.saw['name'] } }, ...by }
  const check = { id: `k-${own}`, method: 'micrometer', replaces: null, note: '', readings: [{ bar, station: 0, xMm: null, text: '35,002', heightMm: 35.002 }], ...by }
  const event = { id: `e-${own}`, bar, kind: 'knocked', undoes: null, note: '', ...by }
  const part = { part: { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 19 }, cuts: [{ kind: 'face', depthMm: 6 }, { kind: 'hole', xMm: 10, yMm: 6, diameterMm: 8.5 }] }
  return {
    '/api/changes': [change], '/api/checks': [check], '/api/events': [event], '/api/deeds': { changes: [change], checks: [check], events: [event] },
    '/api/told': [{ id: `t-${own}`, setupId: setups[0]!.id, what: 'setup sheet', data: { seatMm: 35 }, ...by }],
    '/api/unserved': [{ id: `u-${own}`, viseId: vises[0]!.id, form: setups[0]!.form, lowMm: 33, highMm: 32, ...by }],
    '/api/rack/import': { id: `i-${own}`, csv: `name,height,thickness,length\n${own},35,8,150\n`, unit: 'mm' },
    '/api/setup': { viseId: vises[0]!.id, case: part }, '/api/calc/window': { vise: { jawHeightMm: 45, openingMm: 150 }, ...part },
  }
}

/** The ids a request brings, as `idsKept` names them; an unserved question may be counted under an earlier one. */
function idsIn(path: string, body: unknown): string[] {
  const one = (table: string, { id }: { readonly id: string }) => `${table} ${id}`
  if (path === '/api/rack/import') return (body as { dryRun?: boolean }).dryRun === true ? [] : [one('import', body as { id: string })]
  const lists = path === '/api/deeds' ? body as { [list: string]: { id: string }[] } : { [path.split('/').at(-1)!]: body as { id: string }[] }
  return Object.entries(kept).flatMap(([table, list]) => (table === 'unserved' || table === 'import' ? [] : (lists[list] ?? []).map((thing) => one(table, thing))))
}

/** What answers otherwise when it is sent again: a question counts once a day, a passphrase once set is asked for, a code lets one device in. */
const once: readonly string[] = ['/api/unserved', '/api/owner/passphrase', '/api/owner/unlock', '/api/enrol']

test(`${requests} requests, right and spoilt: no fault, nothing kept of what was refused, all kept of what was taken`, async () => {
  const shop = JSON.parse((await ask('/api/shop')).text) as ShopSnapshot
  const { paths } = JSON.parse((await ask('/api/openapi.json')).text) as { paths: { [path: string]: { post?: { requestBody?: { content: { 'application/json': { schema: Schema } } } } } } }
  const described = Object.entries(paths).flatMap(([path, { post }]) => (post?.requestBody ? [{ path: path.replace('{name}', 'setup'), data: dataOf(post.requestBody.content['application/json'].schema) }] : []))
  const alike = fc.tuple(fc.stringMatching(/^[a-zA-Z0-9]{12}$/), fc.nat()).map(([own, which]) => { const all = Object.entries(goodBodies(shop, own)); return all[which % all.length]! })
  const request = fc.oneof(
    alike, alike.chain(([path, body]) => spoilt(fc.constant(body)).map((other) => [path, other] as const)),
    ...described.map(({ path, data }) => fc.oneof(data, spoilt(data)).map((body) => [path, body] as const)),
  ).map(([path, body]) => [path, JSON.stringify(body)] as const)
  const statuses = new Map<number, number>()
  await fc.assert(fc.asyncProperty(request, async ([path, text]) => {
    const before = await idsKept()
    const answer = await ask(path, text), after = await idsKept()
    statuses.set(answer.status, (statuses.get(answer.status) ?? 0) + 1)
    expect(logged).toEqual([])
    if (answer.status === 200) {
      for (const id of idsIn(path, JSON.parse(text))) expect(after).toContain(id)
      if (!once.includes(path)) expect(await ask(path, text)).toEqual(answer)
    } else {
      expect(answer.status).toBeLessThan(500)
      expect(JSON.parse(answer.text)).toEqual({ refused: expect.any(String) as string, facts: expect.any(Object) as object })
      expect(after).toEqual(before)
    }
  }), { numRuns: requests })
  expect((await ask('/api/shop')).status).toBe(200)
  // Both sides of the door were tried.
  for (const status of [200, 422]) expect(statuses.get(status) ?? 0).toBeGreaterThan(requests / 20)
})

/** What a path or header may hold that a program in between, a file system or a log takes for something else. */
const bent = fc.oneof(
  fc.constantFrom('..', '../../etc/passwd', '..%2f..%2fetc%2fpasswd', '%2e%2e/', '%00', 'a%0d%0aset-cookie:%20x=1', '%c0%ae', '%', '%zz', '.git/config', 'shop.sqlite', '__proto__', "' or 1=1 --", '\\..\\', 'x'.repeat(3000), '💥', '<script>'),
  fc.string({ unit: 'binary', maxLength: 40 }).map((text) => encodeURIComponent(text.replaceAll(/\p{Surrogate}/gu, ''))),
)

test(`${requests} questions at every address there is, with bent parameters, headers and tails: answered or refused, nothing of the machine told`, async () => {
  const { paths } = JSON.parse((await ask('/api/openapi.json')).text) as { paths: { [path: string]: { get?: unknown } } }
  // A stream goes on; it is tried in e2e/server/live.test.ts.
  const asked = Object.entries(paths).filter(([path, { get }]) => get !== undefined && path !== '/api/live').map(([path]) => path)
  expect(asked.length).toBeGreaterThan(12)
  const headers = fc.dictionary(fc.constantFrom('accept', 'accept-encoding', 'range', 'if-none-match', 'cookie', 'x-http-method-override', 'authorization', 'last-event-id'), fc.stringMatching(/^[ -~]{0,60}$/), { maxKeys: 3 })
  const before = await idsKept()
  await fc.assert(fc.asyncProperty(fc.constantFrom(...asked), fc.array(bent, { minLength: 2, maxLength: 2 }), fc.option(bent), headers, async (path, params, tail, sent) => {
    let at = 0
    const address = path.replaceAll(/\{\w+\}/g, () => params[(at += 1) - 1]!) + (tail === null ? '' : `?${tail}`)
    const answer = await app.request(`http://127.0.0.1:4173${address}`, { headers: sent }), text = await answer.text()
    expect(logged).toEqual([])
    expect(answer.status, address).toBeLessThan(500)
    expect(answer.headers.has('x')).toBe(false)
    expect(answer.headers.getSetCookie()).toEqual([])
    expect(text).not.toMatch(/root:.*:0:0|SQLite format 3|node_modules|\n\s+at /)
    if (answer.status !== 200) expect(Object.keys(JSON.parse(text) as object)).toEqual(['refused', 'facts'])
  }), { numRuns: requests })
  expect(await idsKept()).toEqual(before)
})

test('no cell of a CSV is one that a spreadsheet would run, whatever is in the shop', async () => {
  const named = ['=1+1', '+1', '-1+1', '@SUM(A1)', '\t=1+1', ' =1+1', '=HYPERLINK("http://x","y")', '"=1+1"', 'a\n=1+1', '=cmd|x!A0'], { bars: [bar] } = JSON.parse((await ask('/api/shop')).text) as ShopSnapshot
  for (const [at, name] of named.entries()) {
    const by = { person: '=1+1', device: 'tablet', atIso: '2026-03-04T05:06:07.000Z' }
    const change = { id: `csv-${at}`, kind: 'bar', record: bar!.id, fields: { name: { value: name.slice(0, 40), saw: at === 0 ? bar!.saw['name'] : [`csv-${at - 1}`] }, note: { value: name, saw: at === 0 ? bar!.saw['note'] : [`csv-${at - 1}`] } }, ...by }
    const check = { id: `csv-check-${at}`, method: 'micrometer', replaces: null, note: name, readings: [{ bar: bar!.id, station: 0, xMm: null, text: name.slice(0, 40), heightMm: 35 }], ...by }
    for (const [path, body] of [['/api/changes', [change]], ['/api/checks', [check]]] as const) { const { status, text } = await ask(path, JSON.stringify(body)); expect([status, text.slice(0, 200)]).toEqual([200, text.slice(0, 200)]) }
    for (const path of ['/api/rack/export', '/api/inspect/export.csv']) {
      const rows = parse((await ask(path)).text, { bom: true, relax_column_count: true }) as string[][]
      // A number, with or without its sign, is one; nothing else may begin as a formula does (common practice, no source).
      expect(rows.flat().filter((cell) => /^[\t\r]|^\s*[=@]|^\s*[+-](?![\d.,]+$)/.test(cell)), `${path} with ${name}`).toEqual([])
    }
  }
})
