import type pg from 'pg'
import { channel } from '#store/postgres/hearken.ts'

export type Teller = {
  /** Tells whoever listens, in whichever process, that a shop was written into. */
  readonly tell: (shop: string) => void
  /** Until all is told. */
  readonly told: () => Promise<void>
}

/**
 * Tells after the write is kept, and together what came while an earlier telling was on its way. A transaction that told by
 * itself would have every other that tells wait until it lies on the disk, of whichever shop: what is told stands in the
 * order of the commits of the whole server.
 *
 * @source POSTGRESQL (NOTIFY: in the order of the commits)
 */
export function tellerOn(pool: pg.Pool): Teller {
  const shops = new Set<string>()
  let telling: Promise<void> | null = null
  async function tellAll(): Promise<void> {
    while (shops.size > 0) {
      const all = [...shops]
      shops.clear()
      // What is kept is not refused because it could not be told: whoever listens looks by itself every few seconds.
      await pool.query('select pg_notify($1, shop) from unnest($2::text[]) as shop', [channel, all]).catch(() => undefined)
    }
    telling = null
  }
  return {
    tell: (shop) => { shops.add(shop); telling ??= tellAll() },
    told: async () => { await telling },
  }
}
