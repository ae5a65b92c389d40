import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type ShopProcess, startShop } from '../shop-process.ts'

let shop: ShopProcess
beforeAll(async () => { shop = await startShop({ demo: false }) })
afterAll(async () => { await shop.clear() })

const ask = (raw: unknown, signal?: AbortSignal) => fetch(`${shop.url}/api/calc/cut-bars`, {
  method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(raw), ...(signal ? { signal } : {}),
})
const quick = { kerf: 20, stock: [{ length: 6000, available: null }], pieces: [[1485, 8]] }
const { capacity, items } = JSON.parse(readFileSync('fixtures/published/cutting1d/HARD0.json', 'utf8')) as { capacity: number; items: number[][] }

describe('cut lists over HTTP', () => {
  it('are answered, alone and in an array, and refused with a code', async () => {
    // four pieces fit flush with three cuts: two lengths, as fixtures/shop/cutting1d/shop.json has it
    expect(await (await ask(quick)).json()).toMatchObject({ status: 'optimal', leastStockLength: 12_000 })
    expect(await (await ask([quick, { ...quick, pieces: [[7000, 1]] }])).json()).toMatchObject([{ status: 'optimal' }, { refused: 'piece-longer-than-stock' }])
    const refused = await ask({ ...quick, kerf: -1 })
    expect([refused.status, await refused.json()]).toMatchObject([422, { refused: 'wish-negative', facts: { field: 'kerf' } }])
  })

  it('leave the server free while they take their time, and end when their caller hangs up', async () => {
    const hangUp = new AbortController(), long = ask({ capacity, items, secondsMost: 600 }, hangUp.signal).then(() => 'answered', () => 'hung up')
    await new Promise((done) => { setTimeout(done, 1000) })
    expect((await fetch(`${shop.url}/api/health`)).status).toBe(200)
    const next = ask(quick)
    hangUp.abort()
    expect(await long).toBe('hung up')
    expect(await (await next).json()).toMatchObject({ status: 'optimal', leastStockLength: 12_000 })
  })
})
