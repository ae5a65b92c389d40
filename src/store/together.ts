import { setImmediate } from 'node:timers/promises'
import { CompiledQuery, type Kysely } from 'kysely'
import { takeTurn } from '#store/postgres/turn.ts'
import type { Tables } from '#store/schema.ts'
import type { Store } from '#store/store.ts'

/** Something to be written, whole or not at all, and whoever waits for it. */
type Act = { readonly run: (db: Kysely<Tables>) => Promise<() => void>; readonly failed: (error: unknown) => void }
type Queue = { readonly acts: Act[]; isServed: boolean }

const queues = new WeakMap<Kysely<Tables>, Queue>()
/** Acts in one transaction at most: whoever only reads waits no longer than for these. */
const mostAtOnce = 50
const savepoint = CompiledQuery.raw('savepoint act'), rollbackTo = CompiledQuery.raw('rollback to act'), release = CompiledQuery.raw('release act')

/**
 * Writes what waits at the same moment in one transaction, so that the disk is waited for once. One act that is refused
 * leaves the others be; nobody is answered before all of it lies on the disk. Both kinds of store have one writer to a shop: who
 * waited elsewhere would hold a connection that other shops need.
 *
 * @param work  may run twice: what of it was written the first time was taken back
 */
export function writeTogether<Result>(store: Store, work: (tx: Store) => Promise<Result>): Promise<Result> {
  return new Promise((done, failed) => {
    const queue = queues.get(store.db) ?? { acts: [], isServed: false }
    queues.set(store.db, queue)
    queue.acts.push({ run: async (db) => { const result = await work({ ...store, db }); return () => done(result) }, failed })
    if (!queue.isServed) void serve(store, queue)
  })
}

async function serve(store: Store, queue: Queue): Promise<void> {
  queue.isServed = true
  while (queue.acts.length > 0) {
    // Whatever has come in by now comes along.
    await setImmediate()
    await write(store, queue.acts.splice(0, mostAtOnce))
  }
  queue.isServed = false
}

async function write(store: Store, acts: readonly Act[]): Promise<void> {
  const answers: (() => void)[] = [], [first, ...others] = acts
  try {
    await store.db.transaction().execute(async (tx) => {
      if (store.kind === 'postgres') await takeTurn({ db: tx, shop: store.shop })
      if (others.length === 0) answers.push(await first!.run(tx))
      else for (const act of acts) answers.push(await inSavepoint(tx, act))
    })
    store.tell?.()
    for (const answer of answers) answer()
  } catch (error) {
    // References are looked at when a transaction ends, which does not say whose were wrong.
    if (acts.length > 1 && isOfReferences(error)) for (const act of acts) await write(store, [act])
    else for (const { failed } of acts) failed(error)
  }
}

/** @returns tells whoever waits how it went, once everything is kept */
async function inSavepoint(tx: Kysely<Tables>, { run, failed }: Act): Promise<() => void> {
  await tx.executeQuery(savepoint)
  try {
    const answer = await run(tx)
    await tx.executeQuery(release)
    return answer
  } catch (error) {
    // Where the whole transaction was taken back, as on a full disk, there is no way back to the savepoint, and the reason goes for all.
    await tx.executeQuery(rollbackTo).catch(() => { throw error })
    await tx.executeQuery(release)
    return () => failed(error)
  }
}

const isOfReferences = (error: unknown): boolean => error instanceof Error && 'code' in error && (error.code === 'SQLITE_CONSTRAINT_FOREIGNKEY' || error.code === '23503')
