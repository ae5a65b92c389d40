import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { atTheMachine, ownerIsSet } from '../owner.ts'
import { listening } from '../listening.ts'
import { relayTo, type Relay } from '../relay.ts'
import { type ShopProcess, startShop } from '../shop-process.ts'
import { deedOfBar } from '../endure/deed-of-bar.ts'

let shop: ShopProcess, relay: Relay
beforeEach(async () => {
  shop = await startShop({ demo: false, args: ['--lan'], before: ownerIsSet })
  relay = await relayTo(shop.url)
})
afterEach(async () => { await shop.clear(); await relay.close() })

const write = async (name: string) => {
  const answer = await fetch(`${shop.url}/api/deeds`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(deedOfBar(name).deed) })
  expect(answer.status).toBe(200)
}

async function enrolled(): Promise<string> {
  const code = (await atTheMachine(shop.dataFolder, ['device', 'code'])).replaceAll(/\s/g, '')
  const answer = await fetch(`${relay.url}/api/enrol`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ code, name: 'Tablet' }) })
  expect(answer.status).toBe(200)
  return answer.headers.getSetCookie()[0]!.split(';')[0]!
}

describe('what others do', () => {
  it('is told within a second to all who listen, of whatever program it comes', async () => {
    const streams = await Promise.all(Array.from({ length: 20 }, () => listening(shop.url)))
    expect(streams[0]!.type).toMatch(/^text\/event-stream/)
    await Promise.all(streams.map(({ until }) => until('revision', 1)))
    const began = performance.now()
    await write('one')
    for (const { until } of streams) expect(await until('revision', 2) - began).toBeLessThan(1000)
    await atTheMachine(shop.dataFolder, ['rack', 'add', '--height', '20', '--thickness', '8', '--length', '150'])
    for (const { until } of streams) await until('revision', 3)
  })

  it('does not keep the server from stopping', async () => {
    const { ended, until } = await listening(shop.url)
    await until('revision', 1)
    const began = performance.now()
    expect(await shop.stop()).toBe(0)
    expect(performance.now() - began).toBeLessThan(3000)
    await ended
  })

  it('is told to enrolled devices alone, and no more once one is revoked', async () => {
    expect((await listening(relay.url)).status).toBe(401)
    const cookie = await enrolled(), { until, ended } = await listening(relay.url, { cookie })
    await until('revision', 1)
    const began = performance.now()
    await atTheMachine(shop.dataFolder, ['device', 'revoke', 'Tablet'])
    expect(await ended - began).toBeLessThan(5000)
  })

  it('goes to a device by as many streams as it has windows, not by any number', async () => {
    const cookie = await enrolled(), statuses: number[] = []
    for (let at = 0; at < 21; at += 1) statuses.push((await listening(relay.url, { cookie })).status)
    expect(statuses).toEqual([...Array<number>(20).fill(200), 429])
  })
})
