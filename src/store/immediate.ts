import { CompiledQuery, type DatabaseConnection, SqliteAdapter, SqliteDialect, type SqliteDialectConfig, SqliteDriver, type TransactionSettings } from 'kysely'

/**
 * SQLite whose writing transactions take the write lock at their start.
 *
 * One that reads first and writes later is refused at once when another process wrote in between, whatever the busy
 * timeout; one that begins as a writer waits its turn. Transactions set to `read only` take no lock.
 */
export class ImmediateDialect extends SqliteDialect {
  readonly #config: SqliteDialectConfig

  constructor(config: SqliteDialectConfig) {
    super(config)
    this.#config = config
  }

  override createDriver(): SqliteDriver {
    return new ImmediateDriver(this.#config)
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
  override async beginTransaction(connection: DatabaseConnection, settings?: TransactionSettings): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw(settings?.accessMode === 'read only' ? 'begin' : 'begin immediate'))
  }
}
