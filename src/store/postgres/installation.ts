import { Kysely, PostgresDialect } from 'kysely'
import { bringUp } from '#store/postgres/bring-up.ts'
import { hearkenTo } from '#store/postgres/hearken.ts'
import { poolOfShop, poolTo } from '#store/postgres/pool.ts'
import { tellerOn } from '#store/postgres/teller.ts'
import type { Tables } from '#store/schema.ts'
import type { Store } from '#store/store.ts'

/** One PostgreSQL database with any number of shops in it, which know nothing of each other. */
export type Installation = {
  /** The store of one shop, whether there is such a shop or not; all share the connections. */
  readonly storeOf: (shop: string) => Store
  readonly close: () => Promise<void>
}

/**
 * Connects and brings the tables up to date.
 *
 * @throws Refusal `database-away`, `database-refuses`, and as `bringUp`
 */
export async function openInstallation(url: string): Promise<Installation> {
  const pool = poolTo(url), hearken = hearkenTo(url), teller = tellerOn(pool)
  const dialectOf = (shop: string) => new PostgresDialect({ pool: poolOfShop(pool, shop) })
  const close = async () => { await teller.told(); await hearken.close(); await pool.end() }
  try {
    await bringUp(new Kysely<unknown>({ dialect: dialectOf('') }))
  } catch (error) {
    await close()
    throw error
  }
  return { storeOf: (shop) => ({ db: new Kysely<Tables>({ dialect: dialectOf(shop) }), kind: 'postgres', shop, folder: 'PostgreSQL', hear: (wake) => hearken.join(shop, wake), tell: () => teller.tell(shop), close: () => Promise.resolve() }), close }
}
