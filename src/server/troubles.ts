import { randomUUID } from 'node:crypto'
import type { Context } from 'hono'
import { Refusal } from '#model/refusal.ts'

/** Takes a line for the operator; never what a person typed. */
export type Log = (line: string) => void

/** Every error in one of two shapes: `{refused, facts}` is the caller's to put right, `{fault}` is ours and in the log under its id. */
export function answerTrouble(error: unknown, c: Context, log: Log): Response {
  if (error instanceof Refusal) {
    if (typeof error.facts.waitS === 'number') c.header('retry-after', String(error.facts.waitS))
    return c.json({ refused: error.code, facts: error.facts }, statusOf(error.code))
  }
  const id = randomUUID().slice(0, 8)
  log(`fault ${id} ${c.req.method} ${c.req.routePath}\n${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`)
  return c.json({ fault: id }, 500)
}

/** A refusal is 422, but for what HTTP itself has a number for. */
const statusOf = (code: string): 400 | 403 | 413 | 422 | 429 | 503 => statuses[code] ?? 422

const statuses: { readonly [code: string]: 400 | 403 | 413 | 429 | 503 } = {
  'not-json': 400, 'body-broken-off': 400, 'body-too-large': 413, 'database-busy': 503, 'owner-needed': 403, 'machine-only': 403, 'too-many-tries': 429,
}
