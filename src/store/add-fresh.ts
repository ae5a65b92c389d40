import { freshOf } from '#store/fresh-of.ts'

/**
 * Adds what is not kept yet, all or none; one sent again is left out. Nothing is read where everything is new, as it mostly is.
 *
 * @param insert  adds those whose ids are new, and answers with these ids
 * @param keptUnder  what is on the shelf under ids
 * @returns those that were added
 * @throws Refusal `id-used-twice` for an id that already stands for something else
 */
export async function addFresh<Thing extends { readonly id: string }>(given: readonly Thing[], insert: (things: readonly Thing[]) => Promise<readonly string[]>, keptUnder: (ids: readonly string[]) => Promise<ReadonlyMap<string, Thing>>): Promise<Thing[]> {
  const once = freshOf(given, new Map()), added = new Set(await insert(once))
  const before = once.filter(({ id }) => !added.has(id))
  freshOf(before, await keptUnder(before.map(({ id }) => id)))
  return once.filter(({ id }) => added.has(id))
}
