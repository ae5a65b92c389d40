import { sql } from 'kysely'
import type { Store } from '#store/store.ts'

/**
 * Waits until nobody else writes into this shop, and counts what is written together from here on. One writer of a shop at a
 * time, as SQLite has it: what a writer reads, nobody changes before it has ended. Other shops go on meanwhile.
 */
export async function takeTurn({ db, shop }: Pick<Store, 'db' | 'shop'>): Promise<void> {
  await sql`insert into revision (shop, number) values (${shop}, 1) on conflict (shop) do update set number = revision.number + 1`.execute(db)
}

/** How many times the shop was written into. */
export async function turnsOf({ db, shop }: Pick<Store, 'db' | 'shop'>): Promise<number> {
  const { rows: [row] } = await sql<{ number: number }>`select number from revision where shop = ${shop}`.execute(db)
  return row?.number ?? 0
}
