import { setMaxListeners } from 'node:events'
import { Agent, type IncomingMessage, request } from 'node:http'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { startShop, type ShopProcess } from '../shop-process.ts'
import { databaseState } from './database-state.ts'
import { deedOfBar } from './deed-of-bar.ts'

const devices = Number(process.env['TWINREST_DEVICES'] ?? 25), seconds = Number(process.env['TWINREST_LOAD_SECONDS'] ?? 6)
/** Reads that may take longer: one of twenty. On a machine that is busy with other things the small run only has to end well. */
const readMs = Number(process.env['TWINREST_READ_MS'] ?? 2000)
/** Between two things a person does at a device. */
const pauseMs = 10_000
/** Heap and database cache settle at a level; a leak of one small record for each of some ten thousand requests would show. */
const growthBytes = 64 * 1024 * 1024

let shop: ShopProcess
beforeAll(async () => { shop = await startShop({ demo: true }) })
afterAll(() => shop.clear())

const pause = (ms: number) => new Promise((done) => { setTimeout(done, ms) })
const memoryNow = async () => Number(/process_resident_memory_bytes (\d+)/.exec((await askedFor('/api/metrics')).text)![1])

/** Devices share two processors with the server here: they ask by Node's own means, which take a third of what `fetch` takes. */
const agent = new Agent({ keepAlive: true })
function opened(path: string, body?: string, signal?: AbortSignal): Promise<IncomingMessage> {
  return new Promise((done, failed) => {
    const headers = body === undefined ? {} : { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body) }
    request(shop.url + path, { agent, headers, method: body === undefined ? 'GET' : 'POST', ...(signal ? { signal } : {}) }, done).on('error', failed).end(body)
  })
}
async function askedOnce(path: string, body?: string): Promise<{ readonly status: number | undefined; readonly text: string }> {
  const answer = await opened(path, body)
  let text = ''
  for await (const piece of answer.setEncoding('utf8')) text += piece
  return { status: answer.statusCode, text }
}
/** A connection that the server lets go in the very moment it is used again is no answer: asked once more, as devices do. */
const askedFor = (path: string, body?: string) => askedOnce(path, body).catch(() => askedOnce(path, body))

type Device = { readonly sent: string[]; readonly readsMs: number[]; events: number; revision: string; readonly bars: Set<string> }

async function timed(path: string, device: Device): Promise<unknown> {
  const began = performance.now(), { status, text } = await askedFor(path)
  device.readsMs.push(performance.now() - began)
  expect(status).toBe(200)
  return JSON.parse(text)
}

async function hear(device: Device): Promise<void> {
  const news = await timed(`/api/shop/since/${device.revision}`, device) as { revision: string; whole?: { bars: { id: string }[] }; put?: { bars?: { id: string }[] } }
  device.revision = news.revision
  for (const { id } of news.whole?.bars ?? news.put?.bars ?? []) device.bars.add(id)
}

/** As the screens do: reads when the stream says so, one question at a time. */
async function follow(device: Device, signal: AbortSignal): Promise<void> {
  const stream = await opened('/api/live', undefined, signal)
  let told = '', isAsking = false, asked: Promise<void> = Promise.resolve()
  const ask = () => {
    if (isAsking) return
    isAsking = true
    asked = hear(device).then(() => { isAsking = false; if (told !== device.revision) ask() })
  }
  try {
    for await (const piece of stream.setEncoding('utf8')) {
      for (const [, revision] of String(piece).matchAll(/event: revision\ndata: (\S+)/g)) { told = revision!; device.events += 1; ask() }
    }
  } catch (error) { if (!signal.aborted) throw error }
  while (isAsking) await asked
}

async function work(device: Device, name: string, untilMs: number): Promise<void> {
  await pause(Math.random() * pauseMs)
  for (let at = 0; performance.now() < untilMs; at += 1) {
    const { bar, deed } = deedOfBar(`${name}-${at}`)
    const { status, text } = await askedFor('/api/deeds', JSON.stringify(deed))
    expect(status, text).toBe(200)
    device.sent.push(bar)
    if (at % 3 === 0) await timed(`/api/history/bar/${bar}`, device)
    await pause(Math.min(pauseMs / 2 + Math.random() * pauseMs, Math.max(0, untilMs - performance.now())))
  }
}

test(`${devices} devices write, read and listen for ${seconds} s: nothing is lost, all hear of it, reads stay quick and memory flat`, async () => {
  const all: Device[] = Array.from({ length: devices }, () => ({ sent: [], readsMs: [], events: 0, revision: 'none', bars: new Set() })), ending = new AbortController()
  setMaxListeners(2 * devices, ending.signal)
  // They are switched on one after the other; what counts is the day after that.
  for (const device of all) { await hear(device); device.readsMs.length = 0 }
  const following = all.map((device) => follow(device, ending.signal)), untilMs = performance.now() + seconds * 1000
  const working = Promise.all(all.map((device, at) => work(device, `d${at}`, untilMs)))
  await pause(seconds * 400)
  const early = await memoryNow()
  await working
  const late = await memoryNow()
  await pause(1500)
  ending.abort()
  await Promise.all(following)

  const sent = all.flatMap((device) => device.sent), readsMs = all.flatMap((device) => device.readsMs).sort((a, b) => a - b)
  expect(sent.length).toBeGreaterThan(devices / 4)
  for (const device of all) expect(sent.filter((bar) => !device.bars.has(bar))).toEqual([])
  const state = databaseState(shop.dataFolder)
  expect([state.integrity, state.halves, sent.filter((bar) => !state.bars.has(bar))]).toEqual(['ok', [], []])
  const p95Ms = readsMs[Math.floor(readsMs.length * 0.95)]!
  expect({ p95Ms: Math.round(p95Ms), reads: readsMs.length, isQuick: p95Ms < readMs }).toMatchObject({ isQuick: true })
  expect({ early, late, isFlat: late - early < growthBytes }).toMatchObject({ isFlat: true })
})
