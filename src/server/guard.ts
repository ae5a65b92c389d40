import type { MiddlewareHandler } from 'hono'
import { type Facts } from '#model/refusal.ts'
import { originOf } from '#server/access/origin-of.ts'
import type { Reach } from '#server/access/reach.ts'

const mebibyte = 1024 * 1024

/** Largest body: calculations take arrays of cases; a whole shop is brought by its owner, who was asked for the passphrase before it is read. */
export const mostBytesFor = (path: string): number => (path === '/api/import' ? 256 * mebibyte : path.startsWith('/api/calc/') ? 4 * mebibyte : mebibyte)

/**
 * Turns away what did not come from our own screens or command: other hosts, other sites, bodies too large, of unknown
 * length or not JSON. Looks at headers alone, so that nothing is read before.
 */
export const guard = (reach: Reach): MiddlewareHandler => async (c, next) => {
  const header = (name: string) => c.req.header(name)
  const no = (status: 403 | 411 | 413 | 415, refused: string, facts: Facts = {}) => c.json({ refused, facts }, status)
  const { host, https } = originOf(c, reach)
  if (!reach.isOurs(host.replace(/:\d+$/, ''))) return no(403, 'unknown-host')
  if (c.req.method !== 'GET' && c.req.method !== 'HEAD') {
    const site = header('sec-fetch-site'), origin = header('origin'), length = header('content-length'), type = header('content-type')
    if (site !== undefined && site !== 'same-origin' && site !== 'none') return no(403, 'foreign-origin')
    if (origin !== undefined && !isSame(origin, `${https ? 'https' : 'http'}://${host}`)) return no(403, 'foreign-origin')
    if (length === undefined && header('transfer-encoding') !== undefined) return no(411, 'length-needed')
    const mostBytes = mostBytesFor(c.req.path)
    if (Number(length ?? 0) > mostBytes) return no(413, 'body-too-large', { mostBytes })
    if ((Number(length ?? 0) > 0 || type !== undefined) && !/^application\/json\s*(;|$)/i.test(type ?? '')) return no(415, 'json-needed')
  }
  return await next()
}

/** By scheme, host and port: a page that came over plain http may be anybody's. */
function isSame(origin: string, own: string): boolean {
  return URL.canParse(origin) && URL.canParse(own) && new URL(origin).origin === new URL(own).origin
}
