import { setTimeout } from 'node:timers/promises'
import type { PostgresPool, PostgresPoolClient } from 'kysely'
import pg from 'pg'
import { isLost, statementMs, troubleOf, turnMs } from '#store/postgres/trouble.ts'

/** Connections of one process: eight processes are well within the hundred that PostgreSQL allows as it comes. */
const mostConnections = 8
/** How long one that nobody needs is kept: a new one is a new process of the database that has all to learn, and in a shop minutes pass between two requests. */
const idleMs = 10 * 60_000
/** How long a database that is being started anew is waited for, and how often it is looked for. */
const patienceMs = 5000, pauseMs = 100

/** How a process of Twinrest connects, whatever for. */
export const connectionTo = (url: string): pg.ClientConfig => ({ connectionString: url, application_name: 'twinrest', keepAlive: true, connectionTimeoutMillis: patienceMs })

/** Connections to a database, shared by all shops in it. One that breaks off is dropped, and the next one made when it is needed. */
export function poolTo(url: string): pg.Pool {
  pg.types.setTypeParser(pg.types.builtins.INT8, Number)
  const pool = new pg.Pool({ ...connectionTo(url), max: mostConnections, idleTimeoutMillis: idleMs, statement_timeout: statementMs, lock_timeout: turnMs, idle_in_transaction_session_timeout: 2 * statementMs })
  // Whoever waits for an answer is told; without these a connection that breaks off while idle would end the process.
  pool.on('error', () => undefined)
  pool.on('connect', (client) => client.on('error', () => undefined))
  return pool
}

/** What each connection was last told of whose rows it is about. */
const toldShop = new WeakMap<object, string>()

/**
 * The pool as one shop sees it: each connection lent is told whose rows it is about, which the database itself holds it to.
 * What goes wrong is said as a refusal.
 *
 * @throws Refusal as `troubleOf`
 */
export function poolOfShop(pool: pg.Pool, shop: string): PostgresPool {
  return { connect: () => lent(pool, shop), end: () => Promise.resolve() }
}

async function lent(pool: pg.Pool, shop: string): Promise<PostgresPoolClient> {
  const start = performance.now()
  for (;;) {
    try {
      return await lentOnce(pool, shop)
    } catch (error) {
      if (!isLost(error) || performance.now() - start > patienceMs) throw troubleOf(error)
    }
    await setTimeout(pauseMs)
  }
}

async function lentOnce(pool: pg.Pool, shop: string): Promise<PostgresPoolClient> {
  const client = await pool.connect()
  if (toldShop.get(client) !== shop) {
    try {
      await client.query("select set_config('twinrest.shop', $1, false)", [shop])
    } catch (error) {
      client.release(true)
      throw error
    }
    toldShop.set(client, shop)
  }
  async function query(text: string, values: readonly unknown[] = []): Promise<pg.QueryResult> {
    try { return await client.query(text, [...values]) } catch (error) { throw troubleOf(error) }
  }
  // Cursors, the other way to ask, are nowhere used.
  return { query: query as unknown as PostgresPoolClient['query'], release: (broken) => client.release(broken) }
}
