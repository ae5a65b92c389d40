import fc from 'fast-check'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Deed } from '#model/deed.ts'
import { outboxOf, type Box } from '#web/keep/outbox.ts'
import type { Entry } from '#web/keep/entry.ts'
import { startShop, type ShopProcess } from '../shop-process.ts'
import { deedOfBar } from './deed-of-bar.ts'

const count = Number(process.env['TWINREST_ENTRIES'] ?? 150), bars = 20
/** Clocks of the tablets: right, a year behind, a year ahead. */
const years = [2026, 2025, 2027]

let inOrder: ShopProcess, shuffled: ShopProcess
beforeAll(async () => { [inOrder, shuffled] = [await startShop({ demo: false }), await startShop({ demo: false })] })
afterAll(async () => { await inOrder.clear(); await shuffled.clear() })

async function send(shop: ShopProcess, body: Deed): Promise<number> {
  const answer = await fetch(`${shop.url}/api/deeds`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) })
  await answer.arrayBuffer()
  return answer.status
}

/** What three tablets do in a day away, each change having seen the tablet's own one before. */
function dayOf(count: number): readonly Deed[] {
  const seen = new Map<string, string>(), nothing: Deed = { changes: [], checks: [], events: [] }
  return Array.from({ length: count }, (_none, at) => {
    const tablet = at % 3, bar = deedOfBar(`known-${(at * 7) % bars}`).bar, id = `d${tablet}-${String(at).padStart(5, '0')}`
    const by = { person: ['KM', 'JO', 'TB'][tablet]!, device: `tablet-${tablet}`, atIso: `${years[tablet]}-03-04T05:06:07.${String(at % 1000).padStart(3, '0')}Z` }
    if (at % 5 === 1) return { ...nothing, events: [{ id, bar, kind: 'knocked', undoes: null, note: '', ...by }] }
    if (at % 5 === 2) return { ...nothing, checks: [{ id, method: 'micrometer', replaces: null, readings: [{ bar, station: 0, xMm: null, line: 0, face: 'A', text: '35', heightMm: 35 + (at % 9) / 1000 }], zero: null, closing: null, temperature: null, took: null, looks: [], asFound: false, note: '', ...by }] }
    if (at % 5 === 3) return deedOfBar(`new-${at}`).deed
    const key = `${tablet} ${bar}`, before = seen.get(key)
    seen.set(key, id)
    return { ...nothing, changes: [{ id, kind: 'bar', record: bar, fields: { note: { value: `note ${at}`, saw: before === undefined ? [] : [before] } }, ...by }] }
  })
}

function memoryBox(): Box {
  const entries = new Map<number, Entry>()
  let last = 0
  return {
    add: async (entry) => { last += 1; entries.set(last, entry); return last }, replace: async ({ seq, entry }) => { entries.set(seq, entry) },
    all: async () => ({ waiting: [...entries].map(([seq, entry]) => ({ seq, entry })), aside: [] }), remove: async (seq) => { entries.delete(seq) }, putAside: async ({ seq, refusal }) => { throw new Error(`${seq} refused: ${refusal.code}`) }, forgetAside: async () => {},
  }
}

test(`${count} entries of a day away, from tablets whose clocks are a year off: through the outbox, and twice in any order, come to the same shop`, async () => {
  for (const shop of [inOrder, shuffled]) for (let at = 0; at < bars; at += 1) expect(await send(shop, deedOfBar(`known-${at}`).deed)).toBe(200)
  const day = dayOf(count)

  // The day away: nothing goes, all of it is written down. Then the program ends, another reads the box, and the shop is there.
  const box = memoryBox(), away = outboxOf({ box, send: async () => ({ came: 'away' }), taken: () => {}, after: () => {} })
  for (const body of day) away.put({ door: 'deeds', body })
  while ((await box.all()).waiting.length < count) await new Promise((done) => { setTimeout(done, 1) })
  let taken = 0
  await new Promise<void>((done, failed) => {
    const back = outboxOf({
      box, after: (ms, run) => { setTimeout(run, ms) }, taken: () => { taken += 1; if (taken === count) done() },
      send: async (entry) => { const status = await send(inOrder, entry.body as Deed); if (status !== 200) failed(new Error(`answered ${status}`)); return { came: 'taken' } },
    })
    void back.open()
  })

  const [order] = fc.sample(fc.shuffledSubarray([...day, ...day], { minLength: 2 * count, maxLength: 2 * count }), { numRuns: 1, seed: 7 })
  for (let at = 0; at < order!.length; at += 8) expect(await Promise.all(order!.slice(at, at + 8).map((deed) => send(shuffled, deed)))).toEqual(order!.slice(at, at + 8).map(() => 200))

  const [one, other] = await Promise.all([inOrder, shuffled].map(async ({ url }) => (await fetch(`${url}/api/shop`)).json() as Promise<object>))
  expect(other).toEqual(one)
  expect((await box.all()).waiting).toEqual([])
})
