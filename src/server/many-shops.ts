import { Hono } from 'hono'
import { Refusal } from '#model/refusal.ts'
import { originOf } from '#server/access/origin-of.ts'
import type { Reach } from '#server/access/reach.ts'
import { createApp, type AppOptions } from '#server/app.ts'
import { isShopName } from '#server/place.ts'
import { staticFilesOf } from '#server/static-files.ts'
import { answerTrouble } from '#server/troubles.ts'
import type { Installation } from '#store/postgres/installation.ts'
import { isThere } from '#store/start-shop.ts'
import { ownerIsSet } from '#tasks/access/owner.ts'

/** What every face is made with. */
export type Face = Omit<AppOptions, 'reach' | 'backups'> & { readonly reach: Reach }

/** Shops whose faces are kept ready; the one asked for longest ago makes way. */
const mostReady = 200

/**
 * The faces of all shops of an installation: a request names its shop by the first part of its host, `north.shops.example`.
 * To browsers each is a site of its own: cookies, what is kept for work without the network and the app itself never meet.
 *
 * @param under  what stands behind the name of a shop: `shops.example`
 */
export function manyShops({ storeOf }: Pick<Installation, 'storeOf'>, under: string, options: Face): Hono {
  const { reach } = options
  const ready = new Map<string, Promise<Hono>>(), files = staticFilesOf(options.webFolder)

  async function faceOf(shop: string): Promise<Hono> {
    const store = storeOf(shop)
    if (!await isThere(store)) throw new Refusal('shop-not-there', { given: shop })
    if (reach.network && !await ownerIsSet(store)) throw new Refusal('passphrase-needed')
    const own = `${shop}.${under}`
    return createApp(store, { ...options, files, reach: { ...reach, isOurs: (host) => host === own, addresses: () => (reach.network ? [`https://${own}`] : []) } })
  }
  function readyFace(shop: string): Promise<Hono> {
    const found = ready.get(shop) ?? faceOf(shop)
    ready.delete(shop)
    ready.set(shop, found)
    found.catch(() => { if (ready.get(shop) === found) ready.delete(shop) })
    if (ready.size > mostReady) ready.delete(ready.keys().next().value!)
    return found
  }

  const front = new Hono()
  front.all('*', async (c) => {
    const host = originOf(c, reach).host.replace(/:\d+$/, ''), shop = host.endsWith(`.${under}`) ? host.slice(0, -under.length - 1) : ''
    if (c.req.path === '/api/health') return c.json({ up: true })
    if (!isShopName(shop)) throw new Refusal('shop-not-there', { given: host.slice(0, 100) })
    return await (await readyFace(shop)).fetch(c.req.raw, c.env)
  })
  front.onError((error, c) => (error instanceof Refusal && error.code === 'shop-not-there' ? c.json({ refused: error.code, facts: error.facts }, 404) : answerTrouble(error, c, options.log)))
  return front
}
