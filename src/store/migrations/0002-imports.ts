import { type Kysely, type Migration, sql } from 'kysely'
import { columnTypes } from '#store/migrations/column-types.ts'

/** Files taken in, under the ids of whoever sent them: what was in them, and what was answered. */
export function imports(kind: 'sqlite' | 'postgres'): Migration {
  return { up: async (db: Kysely<unknown>) => {
    let made = db.schema.createTable('import')
    for (const column of ['shop', 'person', 'device', 'id', 'digest', 'answer', 'atIso']) made = made.addColumn(column, columnTypes(kind).text, (c) => c.notNull())
    made = made.addPrimaryKeyConstraint('import_key', ['shop', 'id'] as never[])
    await (kind === 'sqlite' ? made.modifyEnd(sql`strict`) : made).execute()
  } }
}
