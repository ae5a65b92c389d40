import type { Say } from '#words/wording.ts'

/** What a PostgreSQL database does not allow. */
export const postgresRefusals: { readonly [code: string]: Say } = {
  'database-away': (facts, w) => `The database does not answer (${w.text(facts.given)}). Nothing was changed: try again; if it stays away, see that it runs and that TWINREST_DATABASE_URL is its address.`,
  'database-refuses': (facts, w) => `The database does not let Twinrest in: ${w.text(facts.given)}. See role, password and database in TWINREST_DATABASE_URL; the role has to own the database.`,
  'backup-by-database': () => 'This shop is kept in PostgreSQL, whose own tools make its backups: pg_dump, or a base backup with its log. docs/postgresql.md says how. "twinrest export FILE" writes the whole shop as data.',
  'shop-not-there': (facts, w) => `There is no shop ${w.text(facts.given)}. "twinrest shop add NAME" begins one in the database of TWINREST_DATABASE_URL.`,
  'move-not-empty': (facts, w) => `A shop moves only into an empty one, and ${w.text(facts.shop)} holds something already (${w.text(facts.given)}). Nothing was moved.`,
  'move-differs': () => 'The two shops were not the same in the end: somebody wrote into the one that was moved. Nothing was moved. Stop its servers, then move it again.',
  'database-role-too-strong': (facts, w) => `The role ${w.text(facts.given)} sees past the walls between shops. Make one that is neither a superuser nor bypasses row-level security, and let it own the database.`,
}
