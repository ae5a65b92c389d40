import { afterEach, expect, test, vi } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { ask, Away, Fault } from '#web/api.ts'

afterEach(() => { vi.unstubAllGlobals() })
const server = (answer: () => Promise<Response>) => vi.stubGlobal('fetch', answer)

test('an answer is data', async () => {
  server(async () => Response.json({ loaded: true }))
  expect(await ask('/api/demo', {})).toEqual({ loaded: true })
})

test('a refusal keeps its code and facts', async () => {
  server(async () => Response.json({ refused: 'shop-not-empty', facts: { bars: 3 } }, { status: 422 }))
  const error = await ask('/api/demo', {}).catch((thrown: unknown) => thrown)
  expect(error).toBeInstanceOf(Refusal)
  expect(error).toMatchObject({ code: 'shop-not-empty', facts: { bars: 3 } })
})

test('a fault keeps the id that finds it', async () => {
  server(async () => Response.json({ fault: 'f17' }, { status: 500 }))
  await expect(ask('/api/shop')).rejects.toMatchObject({ id: 'f17', constructor: Fault })
})

test.each([
  ['no network', async () => { throw new TypeError('fetch failed') }],
  ['a page of something else in its place', async () => new Response('<html>')],
  ['an error page of something else', async () => new Response('<html>', { status: 502 })],
  ['a server that waits for another program', async () => Response.json({ refused: 'database-busy', facts: {} }, { status: 503 })],
  ['an answer that breaks off', async () => new Response(new ReadableStream({ start: (stream) => stream.error(new Error('gone')) }))],
])('%s is being away', async (_name, answer) => {
  server(answer)
  await expect(ask('/api/shop')).rejects.toBeInstanceOf(Away)
})
