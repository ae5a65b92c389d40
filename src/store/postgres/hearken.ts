import pg from 'pg'
import { connectionTo } from '#store/postgres/pool.ts'

/** The name under which it is told which shop was written into. */
export const channel = 'twinrest'
const pauseMs = 500

export type Hearken = {
  /** @returns leaves again */
  readonly join: (shop: string, wake: () => void) => () => void
  readonly close: () => Promise<void>
}

/**
 * Hears of writes into shops from whichever process, on one connection, held as long as anybody listens. After the
 * connection broke off everybody is woken, as nobody knows what was missed.
 */
export function hearkenTo(url: string): Hearken {
  const listeners = new Map<string, Set<() => void>>()
  let client: pg.Client | null = null, ended = false

  function connect(): void {
    const fresh = new pg.Client(connectionTo(url))
    client = fresh
    const lost = () => {
      if (client !== fresh) return
      client = null
      void fresh.end().catch(() => undefined)
      setTimeout(() => { if (!ended && client === null && listeners.size > 0) connect() }, pauseMs).unref()
    }
    fresh.on('error', lost).on('end', lost)
    fresh.on('notification', ({ payload = '' }) => { for (const wake of listeners.get(payload) ?? []) wake() })
    fresh.connect().then(() => fresh.query(`listen ${channel}`)).then(() => { for (const all of listeners.values()) for (const wake of all) wake() }, lost)
  }

  return {
    join(shop, wake) {
      const all = listeners.get(shop) ?? new Set()
      listeners.set(shop, all.add(wake))
      if (client === null) connect()
      return () => {
        all.delete(wake)
        if (all.size === 0) listeners.delete(shop)
      }
    },
    close: async () => {
      ended = true
      const last = client
      client = null
      await last?.end().catch(() => undefined)
    },
  }
}
