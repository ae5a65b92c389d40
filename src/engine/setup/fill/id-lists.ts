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
    const id = ahead.map((group) => group.ids[next.get(group)!]!).sort(byText)[0]
    if (id === undefined) return
    // a bar may be in several groups, by its height and by its thickness: what follows each of its sizes interleaves
    const bearers = ahead.filter((group) => group.ids[next.get(group)!] === id).sort((a, b) => a.sizeMm - b.sizeMm)
    yield* merged(bearers.map((group) => listsFrom({ id, sizeMm: group.sizeMm }, groups.toSpliced(groups.indexOf(group), 1))))
    for (const group of bearers) next.set(group, next.get(group)! + 1)
  }
}

function* listsFrom(first: Piece, rest: readonly Group[]): Generator<readonly Piece[], void> {
  const needed = new Map<Group, number>()
  for (const group of rest) needed.set(group, (needed.get(group) ?? 0) + 1)
  if ([...needed].some(([group, count]) => group.ids.length - firstAfter(group, first.id) < count)) return
  for (const pieces of idListsOf(rest, first.id)) yield [first, ...pieces]
}

/** Lists out of several streams, each in the order of the ids, as one such stream. */
function* merged(streams: readonly Generator<readonly Piece[], void>[]): Generator<readonly Piece[], void> {
  const heads = streams.map((stream) => ({ stream, head: stream.next().value }))
  for (;;) {
    const least = heads.reduce<(typeof heads)[number] | null>((best, one) => (one.head && (!best?.head || byIds(one.head, best.head) < 0) ? one : best), null)
    if (!least?.head) return
    yield least.head
    least.head = least.stream.next().value
  }
}

function byIds(a: readonly Piece[], b: readonly Piece[]): number {
  const differs = a.findIndex((piece, k) => piece.id !== b[k]!.id)
  return differs === -1 ? 0 : byText(a[differs]!.id, b[differs]!.id)
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
