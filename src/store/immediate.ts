import { setTimeout } from 'node:timers/promises'
import { CompiledQuery, type DatabaseConnection, SqliteAdapter, SqliteDialect, type SqliteDialectConfig, SqliteDriver, type TransactionSettings } from 'kysely'
import { Refusal } from '#model/refusal.ts'

/** How often a writer looks whether another program's writing has ended. */
const pauseMs = 20

/**
 * SQLite whose writing transactions take the write lock at their start.
 *
 * One that reads first and writes later is refused at once when another process wrote in between, whatever the busy
 * timeout; one that begins as a writer waits its turn, and everything else goes on meanwhile. Transactions set to
 * `read only` take no lock.
 *
 * @throws Refusal `database-busy` where the turn does not come in `patienceMs`
 */
export class ImmediateDialect extends SqliteDialect {
  readonly #config: SqliteDialectConfig
  readonly #patienceMs: number

  constructor(config: SqliteDialectConfig, patienceMs = 15_000) {
    super(config)
    this.#config = config
    this.#patienceMs = patienceMs
  }

  override createDriver(): SqliteDriver {
    return new ImmediateDriver(this.#config, this.#patienceMs)
  }

  override createAdapter(): SqliteAdapter {
    return new WholeMigrations()
  }
}

/** SQLite makes tables inside a transaction: migrations run whole or not at all, and two programs that start at once take turns. */
class WholeMigrations extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true
  }
}

class ImmediateDriver extends SqliteDriver {
  readonly #patienceMs: number

  constructor(config: SqliteDialectConfig, patienceMs: number) {
    super(config)
    this.#patienceMs = patienceMs
  }

  override async beginTransaction(connection: DatabaseConnection, settings?: TransactionSettings): Promise<void> {
    const begin = CompiledQuery.raw(settings?.accessMode === 'read only' ? 'begin' : 'begin immediate')
    const start = performance.now()
    for (;;) {
      try {
        await connection.executeQuery(begin)
        return
      } catch (error) {
        if (!isBusy(error)) throw error
        if (performance.now() - start > this.#patienceMs) throw new Refusal('database-busy', { waitedMs: this.#patienceMs })
      }
      await setTimeout(pauseMs)
    }
  }

  /** SQLite takes a transaction back by itself when the disk is full; then there is nothing left to take back, and the reason must not be lost over it. */
  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    try {
      await super.rollbackTransaction(connection)
    } catch (error) {
      if (!(error instanceof Error && /no transaction is active/.test(error.message))) throw error
    }
  }
}

const isBusy = (error: unknown): boolean => error instanceof Error && 'code' in error && error.code === 'SQLITE_BUSY'
