import { type Kysely, sql } from 'kysely'
import { Refusal } from '#model/refusal.ts'
import { migrationsFor } from '#store/migrations/all.ts'

/** Which of the locks of a database is ours: those who bring it up to date take turns. */
const lockNumber = 8_394_672
const migrations = migrationsFor('postgres')

/**
 * Brings the tables up to date, whole or not at all, and lays under each that a connection sees the rows of the shop it was
 * told and no others. Processes that start at once take turns; where nothing is to be done, nothing is locked.
 *
 * @throws Refusal `database-role-too-strong`, `database-not-ours`, `database-newer-than-program`
 */
export async function bringUp(db: Kysely<unknown>): Promise<void> {
  await mindRole(db)
  if (await isUpToDate(db)) return
  await db.transaction().execute(async (tx) => {
    await sql`select pg_advisory_xact_lock(${lockNumber})`.execute(tx)
    if (await isUpToDate(tx)) return
    await sql`create table if not exists kysely_migration (name varchar(255) primary key, timestamp varchar(255) not null)`.execute(tx)
    // A migration moves the rows of all shops: the table's owner sees them until the wall is put back, which nobody else ever sees down.
    for (const table of await tablesOfShops(tx)) await sql`alter table ${sql.table(table)} no force row level security`.execute(tx)
    const run = await namesRun(tx)
    for (const [name, migration] of Object.entries(migrations)) {
      if (run.includes(name)) continue
      await migration.up(tx)
      await sql`insert into kysely_migration (name, timestamp) values (${name}, ${new Date().toISOString()})`.execute(tx)
    }
    // Counts the writing acts of each shop; whoever writes holds the row of the shop until the act is kept.
    await sql`create table if not exists revision (shop text collate "C" primary key, number bigint not null)`.execute(tx)
    for (const table of await tablesOfShops(tx)) await wallIn(tx, table)
  })
}

/** The one rule there is no way around: the policy holds for the owner of the tables, too. */
async function wallIn(db: Kysely<unknown>, table: string): Promise<void> {
  await sql`alter table ${sql.table(table)} enable row level security`.execute(db)
  await sql`alter table ${sql.table(table)} force row level security`.execute(db)
  await sql`drop policy if exists own_shop on ${sql.table(table)}`.execute(db)
  await sql`create policy own_shop on ${sql.table(table)} using (shop = current_setting('twinrest.shop', true))`.execute(db)
}

/** Nothing holds a superuser back: neither the wall nor a mistake. */
async function mindRole(db: Kysely<unknown>): Promise<void> {
  const { rows: [role] } = await sql<{ name: string; strong: boolean }>`select rolname as name, rolsuper or rolbypassrls as strong from pg_roles where rolname = current_user`.execute(db)
  if (role?.strong !== false) throw new Refusal('database-role-too-strong', { given: role?.name ?? '' })
}

async function isUpToDate(db: Kysely<unknown>): Promise<boolean> {
  const { rows: tables } = await sql<{ name: string }>`select tablename as name from pg_tables where schemaname = current_schema() order by tablename`.execute(db)
  if (tables.length === 0) return false
  if (!tables.some(({ name }) => name === 'kysely_migration')) throw new Refusal('database-not-ours', { file: 'TWINREST_DATABASE_URL', given: tables.slice(0, 5).map(({ name }) => name) })
  const run = await namesRun(db), newer = run.findLast((name) => !Object.hasOwn(migrations, name))
  if (newer !== undefined) throw new Refusal('database-newer-than-program', { file: 'TWINREST_DATABASE_URL', given: newer, needed: Object.keys(migrations).at(-1)! })
  return run.length === Object.keys(migrations).length
}

async function namesRun(db: Kysely<unknown>): Promise<string[]> {
  const { rows } = await sql<{ name: string }>`select name from kysely_migration order by name`.execute(db)
  return rows.map(({ name }) => name)
}

async function tablesOfShops(db: Kysely<unknown>): Promise<string[]> {
  const { rows } = await sql<{ name: string }>`select table_name as name from information_schema.columns where table_schema = current_schema() and column_name = 'shop' order by table_name`.execute(db)
  return rows.map(({ name }) => name)
}
