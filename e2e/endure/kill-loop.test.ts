import { afterAll, beforeAll, expect, test } from 'vitest'
import { startShop, type ShopProcess } from '../shop-process.ts'
import { databaseState } from './database-state.ts'
import { deedOfBar } from './deed-of-bar.ts'

const kills = Number(process.env['TWINREST_KILLS'] ?? 10)
/** Requests that are under way at any time, as from several tablets. */
const hands = 4

let shop: ShopProcess
beforeAll(async () => { shop = await startShop({ demo: false }) })
afterAll(() => shop.clear())

async function send(name: string): Promise<boolean> {
  const answer = await fetch(`${shop.url}/api/deeds`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(deedOfBar(name).deed) })
    .then(async (response) => ({ ok: response.ok, text: await response.text() }), () => null)
  if (answer !== null && !answer.ok) throw new Error(`the server refused ${name}: ${answer.text}`)
  return answer !== null
}

const pause = (ms: number) => new Promise((done) => { setTimeout(done, ms) })

test(`killed ${kills} times in a loop of writes, nothing that was acknowledged is lost and nothing is half there`, async () => {
  const acknowledged = new Set<string>(), unanswered: string[] = []
  for (let round = 0; round < kills; round += 1) {
    let running = true, answered = 0
    const hand = async (which: number) => {
      for (let at = 0; running; at += 1) {
        const name = `${round}-${which}-${at}`
        if (await send(name)) { acknowledged.add(deedOfBar(name).bar); answered += 1 }
        else { unanswered.push(name); break }
      }
    }
    const all = Array.from({ length: hands }, (_none, which) => hand(which))
    // At another point of the stream each time, once it flows.
    while (answered < 5 + ((round * 17) % 60)) await pause(2)
    await pause(round % 7)
    await shop.kill()
    running = false
    await Promise.all(all)
    const state = databaseState(shop.dataFolder)
    expect(state.integrity).toBe('ok')
    expect(state.strays).toEqual([])
    expect(state.halves).toEqual([])
    expect([...acknowledged].filter((bar) => !state.bars.has(bar))).toEqual([])
    await shop.start()
  }
  expect(acknowledged.size).toBeGreaterThan(5 * kills)

  // What nobody answered is sent again, as a tablet does: it is there once, whether it had been written or not.
  for (const name of unanswered) expect(await send(name)).toBe(true)
  const { bars } = await (await fetch(`${shop.url}/api/shop`)).json() as { bars: { id: string }[] }
  expect(bars.map((bar) => bar.id).sort((a, b) => (a < b ? -1 : 1)))
    .toEqual([...acknowledged, ...unanswered.map((name) => deedOfBar(name).bar)].sort((a, b) => (a < b ? -1 : 1)))
})
