import type { RequestListener, Server as HttpServer } from 'node:http'
import type { Server } from 'node:net'
import { join } from 'node:path'
import { getRequestListener } from '@hono/node-server'
import type { Hono } from 'hono'
import { Refusal } from '#model/refusal.ts'
import { inAddress, meansThisMachine, networkNames } from '#server/access/machine-names.ts'
import { isThisMachine } from '#server/access/origin-of.ts'
import type { Reach } from '#server/access/reach.ts'
import { type Shown, shownCertificate } from '#server/access/shown-certificate.ts'
import { createPlainApp } from '#server/access/trust-files.ts'
import { createApp } from '#server/app.ts'
import { keepBackups } from '#server/backup-clock.ts'
import { checkoutTop, type Config } from '#server/config.ts'
import { headers } from '#server/headers.ts'
import { jsonLines } from '#server/log.ts'
import { type Face, manyShops } from '#server/many-shops.ts'
import { onePort } from '#server/one-port.ts'
import type { Installation } from '#store/postgres/installation.ts'
import type { Store } from '#store/store.ts'
import { ownerIsSet } from '#tasks/access/owner.ts'
import { askWorker } from '#tasks/make/ask-worker.ts'
import { backupKeeper } from '#tasks/shop/backup/backup-keeper.ts'

const loopback = '127.0.0.1'
/** How long a request in flight may take to end when the server stops. */
const patienceMs = 5000
/** How often the certificate is looked at. */
const lookMs = 12 * 3_600_000

/** `url`: for this machine, by plain http whatever others come by. `addresses`: where they find the shop; none while it is not open to them. */
export type Serving = { readonly url: string; readonly addresses: readonly string[]; readonly stop: () => Promise<void> }

/**
 * Listens until stopped, on this machine alone or on its network; a request in flight is answered first.
 *
 * @throws Refusal `passphrase-needed`, `port-in-use`, `port-not-allowed`, and as `shownCertificate`
 */
export async function serveShop(store: Store, config: Omit<Config, 'demo'>): Promise<Serving> {
  if (config.open !== 'this machine' && !await ownerIsSet(store)) throw new Refusal('passphrase-needed')
  const backups = store.kind === 'sqlite' ? backupKeeper(store, config.backupFolder, config.backupHours) : null
  const serving = await serveApp(config, (options) => createApp(store, { ...options, backups }))
  const endBackups = backups === null ? null : keepBackups(backups, logOf())
  return { ...serving, stop: async () => { endBackups?.(); await serving.stop() } }
}

/** The same for all shops of an installation. */
export function serveShops(installation: Installation, under: string, config: Omit<Config, 'demo'>): Promise<Serving> {
  return serveApp(config, (options) => manyShops(installation, under, options))
}

const logOf = () => jsonLines((line) => { process.stderr.write(line) })

async function serveApp(config: Omit<Config, 'demo'>, appWith: (options: Face) => Hono): Promise<Serving> {
  const log = logOf()
  let shown = await shownCertificate(config, Date.now()), port = config.port
  const reach = reachOf(config, () => port, () => shown)
  const ending = new AbortController()
  const app = appWith({ ending: ending.signal, logRequests: config.logRequests, webFolder: join(checkoutTop(), 'dist', 'web'), log, reach, slowly: askWorker(join(checkoutTop(), 'dist', 'node', 'cut-worker.js')) })
  const whole = listenerOf(app.fetch), { front, show, closeIdle, closeAll } = shown === null
    ? onePort(whole, null)
    : onePort(onPlain(whole, listenerOf(createPlainApp(reach).fetch)), { listener: whole, shown })
  port = await listening(front, port, config.open === 'network' ? undefined : loopback)
  const looking = setInterval(() => void look(), lookMs).unref()
  async function look(): Promise<void> {
    try {
      shown = await shownCertificate(config, Date.now()) ?? shown
      if (shown !== null) show?.(shown)
    } catch (error) { log({ level: 'error', what: 'certificate not looked at', why: error instanceof Error ? error.message : String(error) }) }
  }
  return {
    url: `http://${loopback}:${port}`, addresses: reach.addresses(),
    stop: async () => { clearInterval(looking); ending.abort(); await stopped(front, closeIdle, closeAll) },
  }
}

function reachOf({ open, hostNames }: Pick<Config, 'open' | 'hostNames'>, port: () => number, shown: () => Shown | null): Reach {
  const network = open !== 'this machine', ownScheme = () => (shown() === null ? 'http' : 'https')
  return {
    network, behindProxy: open === 'proxy', isOurs: (host) => meansThisMachine(host, hostNames, network),
    addresses: () => open === 'proxy' ? hostNames.map((name) => `https://${inAddress(name)}`) : network ? networkNames(hostNames).map((name) => `${ownScheme()}://${inAddress(name)}:${port()}`) : [],
    authority: () => shown()?.authority ?? null,
  }
}

function listenerOf(fetch: Parameters<typeof getRequestListener>[0]): RequestListener {
  const answer = getRequestListener(fetch)
  return (request, response) => {
    for (const [name, value] of headers) response.setHeader(name, value)
    void answer(request, response)
  }
}

/** Beside https, plain http leads others to trusting it; this machine needs no https to be heard by itself alone. */
function onPlain(whole: RequestListener, others: RequestListener): RequestListener {
  return (request, response) => (isThisMachine((request.socket.remoteAddress ?? '').replace(/^::ffff:/, '')) ? whole : others)(request, response)
}

function listening(server: HttpServer | Server, port: number, address: string | undefined): Promise<number> {
  return new Promise((done, failed) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      failed(error.code === 'EADDRINUSE' ? new Refusal('port-in-use', { given: port }) : error.code === 'EACCES' ? new Refusal('port-not-allowed', { given: port }) : error)
    })
    server.listen({ port, ...(address === undefined ? {} : { host: address }) }, () => {
      const at = server.address()
      done(typeof at === 'object' && at !== null ? at.port : port)
    })
  })
}

function stopped(server: HttpServer | Server, closeIdle: () => void, closeAll: () => void): Promise<void> {
  return new Promise((done) => {
    // A connection falls idle when what is in flight on it has been answered.
    const patience = setTimeout(closeAll, patienceMs), sweeping = setInterval(closeIdle, 100)
    server.close(() => { clearTimeout(patience); clearInterval(sweeping); done() })
    closeIdle()
  })
}
