import { whereabouts } from '#model/bar.ts'
import { firstAtLeast } from '#engine/numeric/sorted.ts'
import { smallestFirst } from '#engine/numeric/smallest-first.ts'
import { leastSumFrom, mostSumTo } from '#engine/numeric/sums-of-two.ts'
import { widestMm } from '#engine/setup/footings.ts'
import { lengthClassOf, fitnessOf, matchClassOf, notServing } from '#engine/setup/order.ts'
import { isPlaceUsable, mayBeTaken, restsOnBars, usableRank, type Search } from '#engine/setup/search.ts'
import { seatClassesInOrder, type Range, type Seats } from '#engine/setup/seat-classes.ts'
import { highestUpTo, type LowerList, type StackIndex, type StackShelf, type UpperList } from '#engine/setup/stack-index.ts'
import { areApart, carriedMm, compareStackIds, onTopOf, stackOf, type Stack } from '#engine/setup/stacking.ts'

/**
 * The stacks of one fitness that serve with a seat in the range, in the order of the choices, found as they are asked for.
 *
 * There are far too many to be listed. So the order is walked from what decides first: rank of the place, class of seats,
 * whereabouts, match; within these from the narrowest lower pair on. For each lower pair the upper ones that bring the
 * seat into the class stand side by side on their shelf.
 */
export function* stacksInOrder(search: Search, range: Range, fitness: number, lowersOf: LowersOf): Generator<Stack, void> {
  if (!restsOnBars(search, 'on edge')) return
  const index = search.rack.stacksFor(search.question.wishes.stackRatio), seats = stackSeats(search, index, fitness), cells = cellsOf(search, index, fitness)
  for (let rank = 0; rank < notServing; rank += 1) {
    const filled = cells.map(({ measured, pairings }) => ({ measured, rows: pairings.flatMap(([lower, uppers]) => lowersOf(lower, rank).map((lowers) => ({ lowers, uppers }))) }))
      .filter(({ rows }) => rows.length > 0)
    if (filled.length === 0) continue
    for (const seatClass of seatClassesInOrder(range, search.classOf, seats)) {
      for (const { measured, rows } of filled) yield* measured && search.tolerance ? byMatch(search, rows, seatClass) : byWidth(search, rows, seatClass)
    }
  }
}

/** Pairs that may be the lower ones, from the narrowest, and where their upper ones are looked for. */
type Row = { readonly lowers: Sieve; readonly uppers: readonly UpperList[] }

/** The pairs of a shelf that may be the lower ones at a place of this rank, list by list; looked for once in a search. */
export type LowersOf = (shelf: StackShelf, rank: number) => readonly Sieve[]

export function lowersFor(search: Search): LowersOf {
  const known = new Map<StackShelf, (readonly Sieve[])[]>()
  return (shelf, rank) => {
    const sieves = known.get(shelf) ?? []
    known.set(shelf, sieves)
    return (sieves[rank] ??= shelf.lowers.map((list) => sieveByRank(search, list, shelf.trust, rank)).filter((lowers) => lowers(0) !== undefined))
  }
}

/** Which shelves make stacks of one fitness, cell by cell in order: by whereabouts of the worst bar, then measured or not. */
function cellsOf({ question: { wishes: { use } } }: Search, { shelves }: StackIndex, fitness: number) {
  const fits = (lower: StackShelf, upper: StackShelf) => Math.max(fitnessOf(lower.trust, use), fitnessOf(upper.trust, use)) === fitness
  return whereabouts.flatMap((_, where) => [true, false].map((measured) => ({
    measured,
    pairings: shelves.flatMap((lower) => {
      const uppers = shelves.filter((upper) => fits(lower, upper) && Math.max(lower.where, upper.where) === where && (lower.measured && upper.measured) === measured)
      return uppers.length === 0 ? [] : [[lower, uppers.map((shelf) => shelf.uppers)] as const]
    }),
  })))
}

/** Stacks alike in all but width, from the narrowest lower pair on, then by ids. */
function* byWidth(search: Search, rows: readonly Row[], seatClass: Range, isWanted?: (stack: Stack) => boolean): Generator<Stack, void> {
  for (const [lower, uppers] of narrowestFirst(search, rows)) {
    const all = stacksOn(search, lower, uppers, seatClass), found = isWanted ? all.filter(isWanted) : all
    for (const stack of smallestFirst(found, (a, b) => compareStackIds(search.footings, a, b))) if (isUsable(search, stack)) yield stack
  }
}

/** Measured stacks alike in all but match and width: sorted where they are few, else one class of match after the other. */
function* byMatch(search: Search, rows: readonly Row[], seatClass: Range): Generator<Stack, void> {
  const few = allOf(search, rows, seatClass, worthSorting)
  if (few !== null) {
    for (const stack of smallestFirst(few, compareByMatch(search))) if (isUsable(search, stack)) yield stack
    return
  }
  for (let wanted = 0, next = Infinity; wanted < Infinity; wanted = next, next = Infinity) {
    yield* byWidth(search, rows, seatClass, ({ differUm }) => {
      const match = matchClassOf(differUm, true)
      if (match > wanted && match < next) next = match
      return match === wanted
    })
  }
}

const worthSorting = 2000

/** Every stack of a class of seats; null where there are more than `most`. */
function allOf(search: Search, rows: readonly Row[], seatClass: Range, most: number): Stack[] | null {
  const all: Stack[] = []
  for (const { lowers, uppers } of rows) {
    for (let at = 0, lower = lowers(at); lower !== undefined; at += 1, lower = lowers(at)) {
      all.push(...stacksOn(search, lower, uppers, seatClass))
      if (all.length > most) return null
    }
  }
  return all
}

function compareByMatch({ footings }: Search): (a: Stack, b: Stack) => number {
  const widthOf = ({ lower }: Stack) => lengthClassOf(widestMm(footings, lower))
  return (a, b) => matchClassOf(a.differUm, true) - matchClassOf(b.differUm, true) || widthOf(a) - widthOf(b) || compareStackIds(footings, a, b)
}

/** What may stand on one lower pair so that the seat lies in the range. */
export function stacksOn(search: Search, lower: number, uppers: readonly UpperList[], { fromMm, toMm }: Range): Stack[] {
  const { footings } = search, lowerMm = footings.seatMm[lower]!, widthMm = carriedMm(footings, lower), found: Stack[] = []
  for (const upperList of uppers) {
    const { differentMm, start, footings: list, widestMm: wideMm } = upperList
    if (lowerMm + highestUpTo(upperList, widthMm) < fromMm) continue
    for (let seat = firstAtLeast(differentMm, fromMm - lowerMm - roundingMm); seat < differentMm.length; seat += 1) {
      const seatMm = lowerMm + differentMm[seat]!
      if (seatMm > toMm) break
      for (let at = start[seat]!; seatMm >= fromMm && at < start[seat + 1]! && wideMm[at]! <= widthMm; at += 1) {
        const upper = list[at]!
        if (areApart(footings, lower, upper) && mayBeTaken(search, upper)) found.push(stackOf(footings, lower, upper))
      }
    }
  }
  return found
}

/** mm. More than a difference and a sum of two heights can lose in rounding. */
const roundingMm = 1e-9

const isUsable = (search: Search, stack: Stack): boolean => isPlaceUsable(search, stack.lower, onTopOf(search.footings, stack))

/** The lower pairs of all rows, the narrowest first and of equals by ids. */
function* narrowestFirst({ footings }: Search, rows: readonly Row[]): Generator<readonly [lower: number, uppers: readonly UpperList[]], void> {
  const { first, second } = footings, widthOf = (k: number) => lengthClassOf(widestMm(footings, k))
  const isBefore = (a: number, b: number) => (widthOf(a) - widthOf(b) || first[a]! - first[b]! || second[a]! - second[b]! || a - b) < 0
  const at = rows.map(() => 0)
  for (;;) {
    let least: number | undefined, of = -1
    for (let row = 0; row < rows.length; row += 1) {
      const lower = rows[row]!.lowers(at[row]!)
      if (lower !== undefined && (least === undefined || isBefore(lower, least))) [least, of] = [lower, row]
    }
    if (least === undefined) return
    at[of]! += 1
    yield [least, rows[of]!.uppers]
  }
}

/** The seats that stacks of one fitness may have; whether widths and places agree is left open. */
function stackSeats({ question }: Search, { seatsMm }: StackIndex, fitness: number): Seats {
  const { use } = question.wishes
  const twos = seatsMm.flatMap((a, one) => seatsMm.slice(one).flatMap((b, k) => (Math.max(fitnessOf(one, use), fitnessOf(one + k, use)) === fitness ? [[a, b] as const] : [])))
  return {
    atLeast: (fromMm, enoughMm) => Math.min(Infinity, ...twos.map(([a, b]) => leastSumFrom(a, b, fromMm, enoughMm))),
    atMost: (toMm, enoughMm) => Math.max(-Infinity, ...twos.map(([a, b]) => mostSumTo(a, b, toMm, enoughMm))),
  }
}

/** Entries in order, looked for only as far as they are asked for. */
type Sieve = (at: number) => number | undefined

/** The footings of a list with a place of one rank; what follows is not looked at once it can only be placed worse. */
function sieveByRank(search: Search, { footings, narrowestMm }: LowerList, trust: number, rank: number): Sieve {
  const kept: number[] = [], isWorseFrom = (at: number) => usableRank(search.rankIfAcross(footings[at]!, narrowestMm[at]!), trust) > rank
  let next = 0
  return (at) => {
    for (; kept.length <= at && next < footings.length; next += 1) {
      const k = footings[next]!, placed = search.servingRankAt(k)
      if (placed === rank) kept.push(k)
      else if (placed > rank && isWorseFrom(next)) next = footings.length
    }
    return kept[at]
  }
}
