import { randomUUID } from 'node:crypto'
import { basename } from 'node:path'
import type { Context } from 'hono'
import { type Facts, Refusal } from '#model/refusal.ts'
import type { Log } from '#server/log.ts'
import { routeOf } from '#server/route-of.ts'

/** Every error in one of two shapes: `{refused, facts}` is the caller's to put right, `{fault}` is ours and in the log under its id. */
export function answerTrouble(error: unknown, c: Context, log: Log): Response {
  if (error instanceof Refusal) {
    if (typeof error.facts.waitS === 'number') c.header('retry-after', String(error.facts.waitS))
    const status = statusOf(error.code)
    if (status === unable) log({ level: 'error', what: error.code, method: c.req.method, route: routeOf(c) })
    return c.json({ refused: error.code, facts: status === unable ? withoutPlaces(error.facts) : error.facts }, status)
  }
  const id = randomUUID().slice(0, 8)
  log({ level: 'error', what: 'fault', id, method: c.req.method, route: routeOf(c), stack: error instanceof Error ? (error.stack ?? error.message) : String(error) })
  return c.json({ fault: id }, 500)
}

/** Nothing is amiss with what was asked: it can be asked again once the machine is looked after. */
const unable = 503

/** Where things lie on the machine is not told to those who ask from elsewhere. */
export function withoutPlaces(facts: Facts): Facts {
  return Object.fromEntries(Object.entries(facts).map(([name, fact]) => [name, (name === 'folder' || name === 'file') && typeof fact === 'string' ? basename(fact) : fact]))
}

/** A refusal is 422, but for what HTTP itself has a number for. */
const statusOf = (code: string): 400 | 403 | 413 | 422 | 429 | 503 => statuses[code] ?? 422

const statuses: { readonly [code: string]: 400 | 403 | 413 | 429 | 503 } = {
  'not-json': 400, 'body-broken-off': 400,
  'owner-needed': 403, 'machine-only': 403,
  'body-too-large': 413,
  'too-many-tries': 429,
  'database-busy': 503, 'database-away': 503, 'database-damaged': 503, 'disk-full': 503, 'disk-nearly-full': 503, 'data-folder-not-writable': 503, 'no-vector-instructions': 503,
}
