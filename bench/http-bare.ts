import Database from 'better-sqlite3'
import { getRequestListener } from '@hono/node-server'
import { Hono } from 'hono'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'

/** The framework by itself: one route that answers a text out of one prepared statement. Started as a process of its own by `http.ts`. */
if (process.env['TWINREST_BARE'] !== undefined) {
  const db = new Database(process.env['TWINREST_BARE'], { readonly: true }), row = db.prepare<[string], { text: string }>('select text from answer where id = ?')
  const app = new Hono().get('/answer/:id', (c) => c.body(row.get(c.req.param('id'))!.text, 200, { 'content-type': 'application/json' }))
  const listener = getRequestListener(app.fetch)
  const server = createServer((request, response) => { void listener(request, response) }).listen(0, '127.0.0.1', () => { process.stdout.write(`http://127.0.0.1:${(server.address() as AddressInfo).port}\n`) })
}
