import { type RawBuilder, sql } from 'kysely'

/** What a database calls the types of columns. Texts are compared by their bytes, whatever language the machine speaks: ids decide by it who stands. */
export function columnTypes(kind: 'sqlite' | 'postgres'): { readonly [type in 'text' | 'real' | 'integer']: RawBuilder<unknown> } {
  return kind === 'sqlite'
    ? { text: sql`text`, real: sql`real`, integer: sql`integer` }
    : { text: sql`text collate "C"`, real: sql`double precision`, integer: sql`bigint` }
}
