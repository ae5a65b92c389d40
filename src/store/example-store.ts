import { randomBytes } from 'node:crypto'
import { openStore } from '#store/open.ts'
import { type Installation, openInstallation } from '#store/postgres/installation.ts'
import { startShop } from '#store/start-shop.ts'
import type { Store } from '#store/store.ts'

/** Where the tests run on PostgreSQL: one database for all of them, opened once. */
let installation: Promise<Installation> | null = null

/** A new shop for a test: in memory, or on PostgreSQL beside all those that other tests left there. */
export function openExample(): Promise<Store> {
  return openNamed(`example-${randomBytes(6).toString('hex')}`) ?? openStore(':memory:')
}

/** How often a property that opens shops is tried: a database on a disk takes its time. */
export const exampleRuns = (inMemory: number): number => (process.env['TWINREST_TEST_POSTGRES'] ? Math.ceil(inMemory / 5) : inMemory)

/** Another shop in the same database as one of those. */
export function nextDoorTo(store: Store): Promise<Store> {
  const shop = `next-to-${store.shop}`
  return openNamed(shop) ?? Promise.resolve({ ...store, shop, close: () => Promise.resolve() })
}

function openNamed(shop: string): Promise<Store> | null {
  const postgres = process.env['TWINREST_TEST_POSTGRES']
  if (!postgres) return null
  return (installation ??= openInstallation(postgres)).then(async ({ storeOf }) => {
    const store = storeOf(shop)
    await startShop(store)
    return store
  })
}
