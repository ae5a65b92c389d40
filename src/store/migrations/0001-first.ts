import { type Kysely, type Migration, sql } from 'kysely'
import { columnTypes } from '#store/migrations/column-types.ts'

/** A column by its type; `?` may be empty. */
type Column = 'text' | 'text?' | 'real' | 'real?' | 'integer'
type Columns = { readonly [name: string]: Column }
/** Which columns name a row of which table. */
type Points = { readonly [column: string]: string }

const brought: Columns = { shop: 'text', person: 'text', device: 'text' }
const standing: Columns = { change: 'text', saw: 'text', clashes: 'integer' }

/**
 * The first tables. Columns carry the names of the fields; heights come from readings, trust from events.
 *
 * References are looked at when a transaction ends, so that a pair and its bars may come in any order.
 */
export function first(kind: 'sqlite' | 'postgres'): Migration {
  const types = columnTypes(kind)

  return { up: async (db: Kysely<unknown>) => {
    const table = async (name: string, key: readonly string[], columns: Columns, points: Points = {}) => {
      let made = db.schema.createTable(name)
      for (const [column, type] of Object.entries({ ...brought, ...columns })) {
        made = made.addColumn(column, types[type.replace('?', '') as keyof typeof types], (c) => (type.endsWith('?') ? c : c.notNull()))
      }
      made = made.addPrimaryKeyConstraint(`${name}_key`, ['shop', ...key] as never[])
      for (const [column, other] of Object.entries(points)) {
        made = made.addForeignKeyConstraint(`${name}_${column}`, ['shop', column] as never[], other, ['shop', 'id'],
          (late) => late.deferrable().initiallyDeferred())
      }
      await (kind === 'sqlite' ? made.modifyEnd(sql`strict`) : made).execute()
    }
    const added = (name: string, columns: Columns, points?: Points) => table(name, ['id'], { id: 'text', ...columns }, points)
    const record = (name: string, columns: Columns, points?: Points) => added(name, { ...standing, ...columns }, points)
    const index = (on: string, ...columns: string[]) =>
      db.schema.createIndex(`${on}_by_${columns.join('_')}`).on(on).columns(['shop', ...columns]).execute()

    await added('change', { kind: 'text', record: 'text', atIso: 'text', fields: 'text' })
    await index('change', 'kind', 'record')

    await record('mates', { name: 'text', note: 'text' })
    await record('slot', { code: 'text', name: 'text' })
    await index('slot', 'code')
    await record('bar', {
      code: 'text', name: 'text', thicknessMm: 'real', thicknessStanding: 'text', lengthMm: 'real',
      matesId: 'text?', slotId: 'text?', where: 'text', note: 'text',
    }, { matesId: 'mates', slotId: 'slot' })
    for (const column of ['code', 'matesId', 'slotId', 'thicknessMm']) await index('bar', column)
    await record('vise', {
      name: 'text', jawWidthMm: 'real', openingMm: 'real', jawSets: 'text', fittedJawSetId: 'text', retired: 'integer', note: 'text',
    })
    await record('part', { name: 'text', note: 'text', form: 'text', retired: 'integer' })
    await record('setup', {
      title: 'text', operation: 'text', viseId: 'text', partId: 'text?', form: 'text', bars: 'text', stand: 'text',
      usedAtIso: 'text', retired: 'integer',
    }, { viseId: 'vise', partId: 'part' })
    await index('setup', 'viseId', 'usedAtIso')
    await record('shop', { name: 'text', units: 'text', paper: 'text', limitsUm: 'text', demo: 'integer' })
    await record('person', { initials: 'text', units: 'text?' })

    await added('check', { method: 'text', replaces: 'text?', note: 'text', atIso: 'text' }, { replaces: 'check' })
    await table('reading', ['check', 'number'], {
      check: 'text', number: 'integer', bar: 'text', station: 'integer', xMm: 'real?', text: 'text', heightMm: 'real',
    }, { check: 'check', bar: 'bar' })
    await index('reading', 'bar')
    await added('event', { bar: 'text', kind: 'text', undoes: 'text?', note: 'text', atIso: 'text' }, { bar: 'bar', undoes: 'event' })
    await index('event', 'bar')

    await added('unserved', {
      question: 'text', day: 'text', viseId: 'text', form: 'text', lowMm: 'real', highMm: 'real', atIso: 'text',
    }, { viseId: 'vise' })
    await db.schema.createIndex('unserved_once_a_day').unique().on('unserved').columns(['shop', 'question', 'day']).execute()
    await added('told', { setupId: 'text', what: 'text', data: 'text', atIso: 'text' }, { setupId: 'setup' })
    await index('told', 'setupId')
  } }
}
