import { canonical } from '#model/canonical.ts'
import { Refusal } from '#model/refusal.ts'

/**
 * The rows of `given` that are not kept yet. One sent again is left out.
 *
 * @param kept  what is on the shelf under the ids given, by id
 * @throws Refusal `id-used-twice` for an id that already stands for something else
 */
export function freshOf<Thing extends { readonly id: string }>(given: readonly Thing[], kept: ReadonlyMap<string, Thing>): Thing[] {
  const seen = new Map(kept)
  return given.filter((thing) => {
    const before = seen.get(thing.id)
    if (!before) { seen.set(thing.id, thing); return true }
    if (canonical(before) !== canonical(thing)) throw new Refusal('id-used-twice', { field: 'id', given: thing.id })
    return false
  })
}
