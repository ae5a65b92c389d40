import { Hono } from 'hono'
import { describe, expect, it } from 'vitest'
import { thisMachineAlone } from '#server/access/reach.ts'
import { guard, mostBytesFor } from '#server/guard.ts'

const app = new Hono().use('/api/*', guard(thisMachineAlone)).all('/api/*', (c) => c.json({ reached: true }))
const json = { 'content-type': 'application/json' }

async function sent(path: string, method: string, headers: { readonly [name: string]: string }, body?: string): Promise<readonly [number, string]> {
  const answer = await app.request(`http://127.0.0.1:4173${path}`, { method, headers, ...(body === undefined ? {} : { body }) })
  const said = await answer.json() as { reached?: true; refused?: string; facts?: object }
  if (!said.reached) expect(said).toEqual({ refused: expect.any(String) as string, facts: expect.any(Object) as object })
  return [answer.status, said.refused ?? 'reached']
}

describe('what is turned away before anything is read', () => {
  it.each([
    ['GET', { host: '127.0.0.1:4173' }, [200, 'reached']],
    ['GET', { host: 'localhost:5173' }, [200, 'reached']],
    ['GET', { host: '[::1]:4173' }, [200, 'reached']],
    ['GET', { host: 'LocalHost:4173' }, [200, 'reached']],
    ['GET', { host: 'shop.example' }, [403, 'unknown-host']],
    ['GET', { host: '127.0.0.1.shop.example:4173' }, [403, 'unknown-host']],
    ['POST', { ...json, host: '127.0.0.1:4173', origin: 'http://127.0.0.1:4173' }, [200, 'reached']],
    ['POST', { ...json, host: '127.0.0.1:4173', origin: 'http://shop.example' }, [403, 'foreign-origin']],
    ['POST', { ...json, host: '127.0.0.1:4173', origin: 'http://127.0.0.1:8080' }, [403, 'foreign-origin']],
    ['POST', { ...json, host: '127.0.0.1:4173', origin: 'https://127.0.0.1:4173' }, [403, 'foreign-origin']],
    ['POST', { ...json, host: '127.0.0.1:4173', origin: 'null' }, [403, 'foreign-origin']],
    ['PUT', { ...json, host: '127.0.0.1:4173', origin: 'http://shop.example' }, [403, 'foreign-origin']],
    ['POST', { ...json, host: '127.0.0.1:4173', 'sec-fetch-site': 'cross-site' }, [403, 'foreign-origin']],
    ['POST', { ...json, host: '127.0.0.1:4173', 'sec-fetch-site': 'same-origin' }, [200, 'reached']],
    ['POST', { ...json, host: '127.0.0.1:4173', 'transfer-encoding': 'chunked' }, [411, 'length-needed']],
    ['POST', { ...json, host: '127.0.0.1:4173', 'content-length': String(10 * 1024 * 1024) }, [413, 'body-too-large']],
    ['POST', { host: '127.0.0.1:4173', 'content-type': 'text/plain' }, [415, 'json-needed']],
    ['POST', { host: '127.0.0.1:4173', 'content-type': 'application/jsonp' }, [415, 'json-needed']],
    ['POST', { host: '127.0.0.1:4173', 'content-type': 'application/json; charset=utf-8' }, [200, 'reached']],
  ] as const)('%s with %j answers %j', async (method, headers, expected) => {
    expect(await sent('/api/changes', method, headers, method === 'GET' ? undefined : '{}')).toEqual(expected)
  })

  it('lets larger bodies in to the calculations alone', async () => {
    const length = String(2 * 1024 * 1024)
    expect(await sent('/api/calc/window', 'POST', { ...json, 'content-length': length })).toEqual([200, 'reached'])
    expect(await sent('/api/changes', 'POST', { ...json, 'content-length': length })).toEqual([413, 'body-too-large'])
    expect(await sent('/api/calc/window', 'POST', { ...json, 'content-length': String(mostBytesFor('/api/calc/window') + 1) })).toEqual([413, 'body-too-large'])
  })
})
