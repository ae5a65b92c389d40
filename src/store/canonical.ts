import { type Fact, Refusal } from '#model/refusal.ts'

/** JSON in which equal values are equal texts: keys in the order of their code units. */
export function canonical(value: Fact): string {
  if (Array.isArray(value)) return `[${value.map((one) => canonical(one)).join(',')}]`
  if (value === null || typeof value !== 'object') return JSON.stringify(value)
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))
  return `{${entries.map(([key, one]) => `${JSON.stringify(key)}:${canonical(one)}`).join(',')}}`
}

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
    if (canonical(before as Fact) !== canonical(thing as Fact)) throw new Refusal('id-used-twice', { field: 'id', given: thing.id })
    return false
  })
}
