import { X509Certificate } from 'node:crypto'
import { type Context, Hono } from 'hono'
import type { Reach } from '#server/access/reach.ts'
import { trustPage } from '#server/access/trust-page.ts'

/** The page that walks a device through trusting the shop, and the authority as a file; null for any other address. */
export function trustFilesOf(reach: Reach): (c: Context) => Response | null {
  return (c) => {
    const authority = reach.authority()
    if (c.req.path === '/trust') return c.html(trustPage({ addresses: reach.addresses(), fingerprint: authority?.fingerprint ?? null }), 200, { 'cache-control': 'no-store' })
    if (c.req.path !== '/trust/authority.crt' || authority === null) return null
    return c.body(new Uint8Array(new X509Certificate(authority.pem).raw), 200, {
      'content-type': 'application/x-x509-ca-cert', 'content-disposition': 'attachment; filename="twinrest-authority.crt"', 'cache-control': 'no-store',
    })
  }
}

/** What stands on plain http beside https: the way to trust the shop, and nothing of the shop itself. */
export function createPlainApp(reach: Reach): Hono {
  const files = trustFilesOf(reach)
  return new Hono().all('*', (c) => {
    const reads = c.req.method === 'GET' || c.req.method === 'HEAD'
    if (!reads || c.req.path.startsWith('/api/')) return c.json({ refused: 'https-needed', facts: {} }, 403)
    return files(c) ?? c.redirect('/trust')
  })
}
