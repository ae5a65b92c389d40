import { sql } from 'kysely'
import { channel } from '#store/postgres/hearken.ts'
import type { Store } from '#store/store.ts'

/**
 * Waits until nobody else writes into this shop, counts the act and has it told once it is kept. One writer of a shop at a
 * time, as SQLite has it: what a writer reads, nobody changes before it has ended. Other shops go on meanwhile.
 */
export async function takeTurn({ db, shop }: Pick<Store, 'db' | 'shop'>): Promise<void> {
  await sql`with turn as (insert into revision (shop, number) values (${shop}, 1) on conflict (shop) do update set number = revision.number + 1 returning shop)
    select pg_notify(${channel}, shop) from turn`.execute(db)
}

/** How many acts were written into the shop. */
export async function turnsOf({ db, shop }: Pick<Store, 'db' | 'shop'>): Promise<number> {
  const { rows: [row] } = await sql<{ number: number }>`select number from revision where shop = ${shop}`.execute(db)
  return row?.number ?? 0
}
