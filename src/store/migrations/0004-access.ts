import { type Kysely, type Migration, sql } from 'kysely'
import { columnTypes } from '#store/migrations/column-types.ts'

/** Who may talk to the shop from its network: enrolled devices, the one-time codes that let them in, the owner's passphrase. Secrets are kept hashed. */
export function access(kind: 'sqlite' | 'postgres'): Migration {
  return { up: async (db: Kysely<unknown>) => {
    const table = async (name: string, key: readonly string[], columns: readonly string[]) => {
      let made = db.schema.createTable(name)
      for (const column of ['shop', 'person', 'device', ...columns]) {
        made = made.addColumn(column.replace('?', ''), columnTypes(kind).text, (c) => (column.endsWith('?') ? c : c.notNull()))
      }
      made = made.addPrimaryKeyConstraint(`${name}_key`, ['shop', ...key] as never[])
      await (kind === 'sqlite' ? made.modifyEnd(sql`strict`) : made).execute()
    }
    await table('enrolled', ['id'], ['id', 'name', 'token', 'atIso', 'revokedAtIso?'])
    await db.schema.createIndex('enrolled_by_token').on('enrolled').columns(['shop', 'token'] as never[]).unique().execute()
    await table('invite', ['id'], ['id', 'atIso', 'untilIso', 'usedBy?'])
    await table('owner', [], ['salt', 'hash', 'cost', 'atIso'])
  } }
}
