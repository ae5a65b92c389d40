import type { Migration } from 'kysely'
import { first } from '#store/migrations/0001-first.ts'
import { imports } from '#store/migrations/0002-imports.ts'
import { readings } from '#store/migrations/0003-readings.ts'
import { access } from '#store/migrations/0004-access.ts'
import { make } from '#store/migrations/0005-make.ts'

/** Every migration ever released, by name; the names' order is the order they run in. One that was released is never changed. */
export function migrationsFor(kind: 'sqlite' | 'postgres'): { readonly [name: string]: Migration } {
  return { '0001-first': first(kind), '0002-imports': imports(kind), '0003-readings': readings(kind), '0004-access': access(kind), '0005-make': make(kind) }
}
