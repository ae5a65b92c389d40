import { type Context, Hono } from 'hono'
import { Refusal } from '#model/refusal.ts'
import { type Access, admit } from '#server/access/admit.ts'
import { type Limits, usualLimits } from '#server/access/limits.ts'
import { type Reach, thisMachineAlone } from '#server/access/reach.ts'
import { trustFilesOf } from '#server/access/trust-files.ts'
import { unlockedOf } from '#server/access/unlocked.ts'
import { guard } from '#server/guard.ts'
import type { Doors } from '#server/open-route.ts'
import { keptAnswers } from '#server/kept-answers.ts'
import type { Log } from '#server/log.ts'
import { type Metrics, metricsOf } from '#server/metrics.ts'
import { addAccessRoutes } from '#server/routes/access.ts'
import { addBackupRoutes } from '#server/routes/backup.ts'
import { addCalcRoutes } from '#server/routes/calc.ts'
import { addInspectRoutes } from '#server/routes/inspect.ts'
import { addLiveRoutes } from '#server/routes/live.ts'
import { addOperationRoutes } from '#server/routes/operation.ts'
import { addMakeRoutes } from '#server/routes/make.ts'
import { addDescription } from '#server/routes/openapi.ts'
import { addRackRoutes } from '#server/routes/rack.ts'
import { addRackDeedRoutes } from '#server/routes/rack-deeds.ts'
import { addSetupRoutes } from '#server/routes/setup.ts'
import { addShopRoutes } from '#server/routes/shop.ts'
import { addWriteRoutes } from '#server/routes/writes.ts'
import { staticFilesOf } from '#server/static-files.ts'
import { answerTrouble } from '#server/troubles.ts'
import type { Store } from '#store/store.ts'
import type { AskSlow } from '#tasks/make/slow-calculations.ts'
import type { BackupKeeper } from '#tasks/shop/backup/backup-keeper.ts'
import { newsOf } from '#tasks/shop/news.ts'

export type AppOptions = {
  readonly webFolder: string
  /** Those of `webFolder`, where they were read before. */
  readonly files?: ReturnType<typeof staticFilesOf>
  readonly log: Log
  readonly reach?: Reach
  readonly limits?: Limits
  /** Who answers calculations that take seconds; left out: the thread that serves. */
  readonly slowly?: AskSlow
  /** Ends what would go on for ever. */
  readonly ending?: AbortSignal
  /** Null or left out: none are kept. */
  readonly backups?: BackupKeeper | null
  readonly logRequests?: boolean
}

/** The whole HTTP face as one value: `app.request()` in tests, `serveShop()` in the shop. Every door stands under /api, behind `guard` and `admit`. */
export function createApp(store: Store, { webFolder, files = staticFilesOf(webFolder), log, reach = thisMachineAlone, limits = usualLimits(), slowly, ending = new AbortController().signal, backups = null, logRequests = false }: AppOptions): Hono {
  const app = new Hono(), doors: Doors = { app, opened: [] }, access: Access = { store, reach, limits, unlocked: unlockedOf(store, Date.now) }
  const metrics: Metrics = metricsOf()
  app.use('/api/*', metrics.measure(logRequests ? log : null))
  app.use('/api/*', (c, next) => { c.header('cache-control', 'no-store'); return next() })
  app.use('/api/*', guard(reach))
  app.use('/api/*', admit(access))
  addAccessRoutes(doors, access)
  const news = newsOf(store)
  addShopRoutes(doors, store, keptAnswers(store, news.revision))
  const live = addLiveRoutes(doors, access, news, ending)
  addOperationRoutes(doors, store, { metrics, live, backupFolder: backups?.folder ?? null })
  addBackupRoutes(doors, store, backups)
  addWriteRoutes(doors, store)
  addRackRoutes(doors, store)
  addRackDeedRoutes(doors, store)
  addSetupRoutes(doors, store)
  addInspectRoutes(doors, store)
  addMakeRoutes(doors, store, slowly)
  addCalcRoutes(doors, slowly)
  addDescription(doors)
  answerTheRest(app, [trustFilesOf(reach), files])
  app.onError((error, c) => answerTrouble(error, c, log))
  return app
}

/** The built web app where it has an answer; else not there, in the shape of every refusal. */
function answerTheRest(app: Hono, files: readonly ((c: Context) => Response | null)[]): void {
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
    return (reads ? firstOf(files, c) : null) ?? refused(reads ? 404 : 405, new Refusal(reads ? 'unknown-path' : 'method-not-allowed', { given: reads ? path.slice(0, 200) : c.req.method }))
  })
}

function firstOf(files: readonly ((c: Context) => Response | null)[], c: Context): Response | null {
  for (const answer of files) {
    const found = answer(c)
    if (found) return found
  }
  return null
}
