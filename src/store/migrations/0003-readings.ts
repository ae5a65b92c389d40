import { type Kysely, type Migration, sql } from 'kysely'
import { columnTypes } from '#store/migrations/column-types.ts'

/**
 * Readings from the surface plate: what a check was taken with, lines and faces of a reading, half-done checks, instruments,
 * what was measured of a vise, what parts came out as; and sheets told about a check as well as about a setup.
 */
export function readings(kind: 'sqlite' | 'postgres'): Migration {
  const { integer, text } = columnTypes(kind)
  return { up: async (db: Kysely<unknown>) => {
    for (const column of ['zero', 'closing', 'temperature', 'took']) await db.schema.alterTable('check').addColumn(column, text).execute()
    await db.schema.alterTable('check').addColumn('looks', text, (c) => c.notNull().defaultTo('[]')).execute()
    await db.schema.alterTable('check').addColumn('asFound', integer, (c) => c.notNull().defaultTo(0)).execute()
    await db.schema.alterTable('reading').addColumn('line', integer, (c) => c.notNull().defaultTo(0)).execute()
    await db.schema.alterTable('reading').addColumn('face', text, (c) => c.notNull().defaultTo('A')).execute()
    await db.schema.alterTable('vise').addColumn('measured', text).execute()
    await db.schema.alterTable('shop').addColumn('due', text).execute()

    const table = async (name: string, columns: { readonly [name: string]: 'text' | 'text?' | 'integer' }, points: { readonly [column: string]: string } = {}) => {
      let made = db.schema.createTable(name)
      for (const [column, type] of Object.entries({ shop: 'text', person: 'text', device: 'text', id: 'text', ...columns })) {
        made = made.addColumn(column, type === 'integer' ? integer : text, (c) => (type.endsWith('?') ? c : c.notNull()))
      }
      made = made.addPrimaryKeyConstraint(`${name}_key`, ['shop', 'id'] as never[])
      for (const [column, other] of Object.entries(points)) {
        made = made.addForeignKeyConstraint(`${name}_${column}`, ['shop', column] as never[], other, ['shop', 'id'], (late) => late.deferrable().initiallyDeferred())
      }
      await (kind === 'sqlite' ? made.modifyEnd(sql`strict`) : made).execute()
    }
    const standing = { change: 'text', saw: 'text', clashes: 'integer' } as const
    await table('instrument', { ...standing, name: 'text', figures: 'text', dueOn: 'text?', retired: 'integer', note: 'text' })
    await table('draft', { ...standing, form: 'text', typed: 'text', looks: 'text', state: 'text', checkId: 'text?' })
    await db.schema.createIndex('draft_by_state').on('draft').columns(['shop', 'state'] as never[]).execute()
    await table('outcome', { ...standing, setupId: 'text', foretold: 'text?', text: 'text', measuredUm: 'text', retired: 'integer', note: 'text' }, { setupId: 'setup' })
    await db.schema.createIndex('outcome_by_setupId').on('outcome').columns(['shop', 'setupId'] as never[]).execute()

    await db.schema.alterTable('told').renameTo('told_before').execute()
    // There, names of keys are taken as names of tables are.
    if (kind === 'postgres') await sql`alter table told_before rename constraint told_key to told_before_key`.execute(db)
    await table('told', { setupId: 'text?', checkId: 'text?', what: 'text', data: 'text', atIso: 'text' }, { setupId: 'setup', checkId: 'check' })
    await sql`insert into told (shop, person, device, id, "setupId", "checkId", what, data, "atIso")
      select shop, person, device, id, "setupId", null, what, data, "atIso" from told_before`.execute(db)
    await db.schema.dropTable('told_before').execute()
    for (const column of ['setupId', 'checkId']) await db.schema.createIndex(`told_by_${column}`).on('told').columns(['shop', column] as never[]).execute()
  } }
}
