import { canonical } from '#model/canonical.ts'
import type { Change, Saw } from '#model/change.ts'
import type { Fact } from '#model/refusal.ts'

/** What one field comes to when all its changes are laid together. */
export type FieldStanding = {
  readonly stands: Change
  readonly value: Fact
  /** The changes nobody has followed, the one that stands first, then by falling id. */
  readonly heads: readonly Change[]
  /** Those of the heads that wanted something else. */
  readonly aside: readonly Change[]
}

/**
 * Lays all changes of one record together, field by field.
 *
 * A change that another one saw is followed; of those left, the heads, the greatest id stands. Neither the order of
 * arrival nor any clock has a say. A field whose changes saw each other in a circle has no head and is left out.
 */
export function standingOf(changes: readonly Change[]): ReadonlyMap<string, FieldStanding> {
  const byField = new Map<string, Change[]>()
  // In the order of the ids, so that the same comes out, field by field, however a database hands them over.
  for (const change of changes.toSorted((a, b) => (a.id < b.id ? -1 : 1))) {
    for (const field of Object.keys(change.fields)) byField.set(field, [...(byField.get(field) ?? []), change])
  }
  const standing = new Map<string, FieldStanding>()
  for (const [field, touching] of byField) {
    const followed = new Set(touching.flatMap((change) => change.fields[field]!.saw))
    const heads = touching.filter((change) => !followed.has(change.id)).sort((a, b) => (a.id > b.id ? -1 : 1))
    const stands = heads[0]
    if (!stands) continue
    const value = stands.fields[field]!.value
    const aside = heads.slice(1).filter((head) => canonical(head.fields[field]!.value) !== canonical(value))
    standing.set(field, { stands, value, heads, aside })
  }
  return standing
}

/** What a change made from this record has seen: the heads of every field. */
export function sawOf(standing: ReadonlyMap<string, FieldStanding>): Saw {
  return Object.fromEntries([...standing].map(([field, { heads }]) => [field, heads.map((head) => head.id)]))
}
