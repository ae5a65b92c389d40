import { byText } from '#engine/setup/by-id.ts'

/** All bars of one size, ids in order and each once. */
export type Group = { readonly sizeMm: number; readonly ids: readonly string[] }

/** One bar of a fill. */
export type Piece = { readonly id: string; readonly sizeMm: number }

/**
 * Every choice of one bar from each group, no bar twice, as lists of pieces in the order of their ids; the lists come in the
 * order of their ids, too, each only when it is asked for.
 *
 * @param groups  one entry for each piece; a group may be there more than once
 */
export function* idListsOf(groups: readonly Group[], after: string | null = null): Generator<readonly Piece[], void> {
  if (groups.length === 0) return yield []
  const each = [...new Set(groups)], next = new Map(each.map((group) => [group, firstAfter(group, after)]))
  for (;;) {
    // the rest has to come after this bar: past the last start of any group there is nothing left
    const ahead = each.filter((group) => next.get(group)! < group.ids.length)
    const [first] = ahead.toSorted((a, b) => byText(a.ids[next.get(a)!]!, b.ids[next.get(b)!]!) || a.sizeMm - b.sizeMm)
    if (first === undefined) return
    const id = first.ids[next.get(first)!]!, rest = groups.toSpliced(groups.indexOf(first), 1)
    const [needed, left] = [new Map<Group, number>(), (group: Group) => group.ids.length - firstAfter(group, id)]
    for (const group of rest) needed.set(group, (needed.get(group) ?? 0) + 1)
    if ([...needed].every(([group, count]) => left(group) >= count)) {
      for (const pieces of idListsOf(rest, id)) yield [{ id, sizeMm: first.sizeMm }, ...pieces]
    }
    next.set(first, next.get(first)! + 1)
  }
}

function firstAfter({ ids }: Group, after: string | null): number {
  if (after === null) return 0
  let low = 0, high = ids.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if (byText(ids[middle]!, after) <= 0) low = middle + 1
    else high = middle
  }
  return low
}
