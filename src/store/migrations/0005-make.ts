import { type Kysely, type Migration, sql } from 'kysely'
import { columnTypes } from '#store/migrations/column-types.ts'

/** Making bars: machines, raw material, jobs, what making costs the shop; and sheets told about a job. */
export function make(kind: 'sqlite' | 'postgres'): Migration {
  const types = columnTypes(kind)
  return { up: async (db: Kysely<unknown>) => {
    const table = async (name: string, columns: readonly (readonly [type: keyof typeof types, names: readonly string[]])[]) => {
      let made = db.schema.createTable(name)
      const standing = [['text', ['shop', 'person', 'device', 'id', 'change', 'saw']], ['integer', ['clashes']]] as const
      for (const [type, names] of [...standing, ...columns]) {
        for (const column of names) made = made.addColumn(column.replace('?', ''), types[type], (c) => (column.endsWith('?') ? c : c.notNull()))
      }
      made = made.addPrimaryKeyConstraint(`${name}_key`, ['shop', 'id'] as never[])
      await (kind === 'sqlite' ? made.modifyEnd(sql`strict`) : made).execute()
    }
    await table('machine', [['text', ['name', 'kind']], ['real', ['perHour?', 'longestMm?', 'kerfMm?', 'sawnFaceMm?']], ['integer', ['hardMilling', 'retired']], ['text', ['spindle?', 'note']]])
    await table('stock', [['text', ['name', 'steel', 'condition', 'form', 'note']], ['real', ['lengthMm', 'widthMm', 'thicknessMm', 'count?', 'price?']], ['integer', ['offcut', 'retired']]])
    await table('job', [['text', ['name', 'form', 'route?', 'planned?', 'bars', 'typed', 'done', 'tools', 'state', 'draftId?', 'note']]])
    await db.schema.createIndex('job_by_state').on('job').columns(['shop', 'state'] as never[]).execute()
    await db.schema.alterTable('shop').addColumn('making', types.text).execute()
    await db.schema.alterTable('told').addColumn('jobId', types.text).execute()
    await db.schema.createIndex('told_by_jobId').on('told').columns(['shop', 'jobId'] as never[]).execute()
  } }
}
