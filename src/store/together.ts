import { setImmediate } from 'node:timers/promises'
import { CompiledQuery, type Kysely } from 'kysely'
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
 * leaves the others be; nobody is answered before all of it lies on the disk. For SQLite, which has one writer.
 *
 * @param work  may run twice: what of it was written the first time was taken back
 */
export function writeTogether<Result>(store: Store, work: (tx: Store) => Promise<Result>): Promise<Result> {
  return new Promise((done, failed) => {
    const queue = queues.get(store.db) ?? { acts: [], isServed: false }
    queues.set(store.db, queue)
    queue.acts.push({ run: async (db) => { const result = await work({ ...store, db }); return () => done(result) }, failed })
    if (!queue.isServed) void serve(store.db, queue)
  })
}

async function serve(db: Kysely<Tables>, queue: Queue): Promise<void> {
  queue.isServed = true
  while (queue.acts.length > 0) {
    // Whatever has come in by now comes along.
    await setImmediate()
    await write(db, queue.acts.splice(0, mostAtOnce))
  }
  queue.isServed = false
}

async function write(db: Kysely<Tables>, acts: readonly Act[]): Promise<void> {
  const answers: (() => void)[] = []
  try {
    await db.transaction().execute(async (tx) => {
      for (const act of acts) answers.push(await inSavepoint(tx, act))
    })
    for (const answer of answers) answer()
  } catch (error) {
    // References are looked at when a transaction ends, which does not say whose were wrong.
    if (acts.length > 1 && isOfReferences(error)) for (const act of acts) await write(db, [act])
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

const isOfReferences = (error: unknown): boolean => error instanceof Error && 'code' in error && error.code === 'SQLITE_CONSTRAINT_FOREIGNKEY'
