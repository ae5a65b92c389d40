import { Hono } from 'hono'
import { Refusal } from '#model/refusal.ts'
import { guard } from '#server/guard.ts'
import type { Doors } from '#server/open-route.ts'
import { addCalcRoutes } from '#server/routes/calc.ts'
import { addDescription } from '#server/routes/openapi.ts'
import { addRackRoutes } from '#server/routes/rack.ts'
import { addSetupRoutes } from '#server/routes/setup.ts'
import { addShopRoutes } from '#server/routes/shop.ts'
import { addWriteRoutes } from '#server/routes/writes.ts'
import { staticFilesOf } from '#server/static-files.ts'
import { answerTrouble, type Log } from '#server/troubles.ts'
import type { Store } from '#store/store.ts'

/** The whole HTTP face as one value: `app.request()` in tests, `serveShop()` in the shop. */
export function createApp(store: Store, { webFolder, log }: { readonly webFolder: string; readonly log: Log }): Hono {
  const app = new Hono(), doors: Doors = { app, opened: [] }
  app.use('/api/*', guard)
  app.use('/api/*', async (c, next) => { await next(); c.header('cache-control', 'no-store') })
  addShopRoutes(doors, store)
  addWriteRoutes(doors, store)
  addRackRoutes(doors, store)
  addSetupRoutes(doors, store)
  addCalcRoutes(doors)
  addDescription(doors)
  answerTheRest(app, webFolder)
  app.onError((error, c) => answerTrouble(error, c, log))
  return app
}

/** The built web app where it has an answer; else not there, in the shape of every refusal. */
function answerTheRest(app: Hono, webFolder: string): void {
  const files = staticFilesOf(webFolder)
  const known = app.routes.filter(({ method }) => method !== 'ALL').map(({ method, path }) => ({ method, matches: new RegExp(`^${path.replaceAll(/:\w+/g, '[^/]+')}$`) }))
  app.all('*', (c) => {
    const path = c.req.path, reads = c.req.method === 'GET' || c.req.method === 'HEAD'
    const refused = (status: 404 | 405, error: Refusal) => c.json({ refused: error.code, facts: error.facts }, status)
    const allowed = known.filter(({ matches }) => matches.test(path)).map(({ method }) => method)
    if (allowed.length > 0) {
      c.header('allow', allowed.join(', '))
      return refused(405, new Refusal('method-not-allowed', { given: c.req.method, needed: allowed }))
    }
    if (path === '/api' || path.startsWith('/api/')) return refused(404, new Refusal('unknown-path', { given: path.slice(0, 200) }))
    return (reads ? files(c) : null) ?? refused(reads ? 404 : 405, new Refusal(reads ? 'unknown-path' : 'method-not-allowed', { given: reads ? path.slice(0, 200) : c.req.method }))
  })
}
