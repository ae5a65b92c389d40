import { createServer, type Server } from 'node:http'
import { join } from 'node:path'
import { getRequestListener } from '@hono/node-server'
import { Refusal } from '#model/refusal.ts'
import { createApp } from '#server/app.ts'
import { checkoutTop, type Config } from '#server/config.ts'
import { headers } from '#server/headers.ts'
import type { Store } from '#store/store.ts'

const address = '127.0.0.1'
/** How long a request in flight may take to end when the server stops. */
const patienceMs = 5000

export type Serving = { readonly url: string; readonly stop: () => Promise<void> }

/**
 * Listens on this machine alone, until stopped; a request in flight is answered first.
 *
 * @throws Refusal `port-in-use`, `port-not-allowed`
 */
export async function serveShop(store: Store, { port }: Pick<Config, 'port'>): Promise<Serving> {
  const app = createApp(store, { webFolder: join(checkoutTop(), 'dist', 'web'), log: (line) => { process.stderr.write(line) } })
  const answer = getRequestListener(app.fetch)
  const server = createServer((request, response) => {
    for (const [name, value] of headers) response.setHeader(name, value)
    void answer(request, response)
  })
  const opened = await listening(server, port)
  return { url: `http://${address}:${opened}`, stop: () => stopped(server) }
}

function listening(server: Server, port: number): Promise<number> {
  return new Promise((done, failed) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      failed(error.code === 'EADDRINUSE' ? new Refusal('port-in-use', { given: port }) : error.code === 'EACCES' ? new Refusal('port-not-allowed', { given: port }) : error)
    })
    server.listen(port, address, () => {
      const at = server.address()
      done(typeof at === 'object' && at !== null ? at.port : port)
    })
  })
}

function stopped(server: Server): Promise<void> {
  return new Promise((done) => {
    const patience = setTimeout(() => server.closeAllConnections(), patienceMs)
    server.close(() => { clearTimeout(patience); done() })
    server.closeIdleConnections()
  })
}
