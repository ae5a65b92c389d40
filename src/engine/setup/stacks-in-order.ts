import { whereabouts } from '#model/bar.ts'
import { firstAtLeast } from '#engine/numeric/sorted.ts'
import { smallestFirst } from '#engine/numeric/smallest-first.ts'
import { leastSumFrom, mostSumTo } from '#engine/numeric/sums-of-two.ts'
import { widestMm } from '#engine/setup/footings.ts'
import type { StackIndex, StackShelf } from '#engine/setup/index-rack.ts'
import { lengthClassOf, fitnessOf, matchClassOf, notServing } from '#engine/setup/order.ts'
import { isPlaceUsable, mayBeTaken, restsOnBars, type Search } from '#engine/setup/search.ts'
import { seatClassesInOrder, type Range, type Seats } from '#engine/setup/seat-classes.ts'
import { compareStackIds, mayBeStacked, onTopOf, stackOf, stackSeatMm, type Stack } from '#engine/setup/stacking.ts'

/**
 * The stacks of one fitness that serve with a seat in the range, in the order of the choices, found as they are asked for.
 *
 * There are far too many to be listed. So the order is walked from what decides first: rank of the place, class of seats,
 * whereabouts, match; within these from the narrowest lower pair on. For each lower pair the upper ones that bring the
 * seat into the class stand side by side on their shelf.
 */
export function* stacksInOrder(search: Search, range: Range, fitness: number): Generator<Stack, void> {
  if (!restsOnBars(search, 'on edge')) return
  const index = search.rack.stacksFor(search.question.wishes.stackRatio), seats = stackSeats(search, index, fitness)
  for (let rank = 0; rank < notServing; rank += 1) {
    const lowers = new Map(index.shelves.map((shelf) => [shelf, sieve(shelf.byWidth, (k) => mayBeTaken(search, k) && search.rankAt(k) === rank)]))
    if ([...lowers.values()].every((lower) => lower(0) === undefined)) continue
    for (const seatClass of seatClassesInOrder(range, search.classOf, seats)) {
      for (const [where] of whereabouts.entries()) {
        for (const measured of [true, false]) {
          const rows = index.shelves.flatMap((shelf) => {
            const uppers = index.shelves.filter((upper) => isCell(search, shelf, upper, { fitness, where, measured }))
            return uppers.length === 0 ? [] : [{ lowers: lowers.get(shelf)!, uppers }]
          })
          if (rows.length > 0) yield* measured && search.tolerance ? byMatch(search, rows, seatClass) : byWidth(search, rows, seatClass)
        }
      }
    }
  }
}

/** Pairs that may be the lower ones, from the narrowest, and the shelves their upper ones stand on. */
type Row = { readonly lowers: Sieve; readonly uppers: readonly StackShelf[] }

/** Whether a stack of these two shelves has this fitness, is where the worst of it is, and is measured or not. */
function isCell({ question }: Search, lower: StackShelf, upper: StackShelf, cell: { fitness: number; where: number; measured: boolean }): boolean {
  const { use } = question.wishes
  return Math.max(fitnessOf(lower.trust, use), fitnessOf(upper.trust, use)) === cell.fitness
    && Math.max(lower.where, upper.where) === cell.where && (lower.measured && upper.measured) === cell.measured
}

/** Stacks alike in all but width, from the narrowest lower pair on, then by ids. */
function* byWidth(search: Search, rows: readonly Row[], seatClass: Range, isWanted: (stack: Stack) => boolean = () => true): Generator<Stack, void> {
  for (const [lower, uppers] of narrowestFirst(search, rows)) {
    const found = stacksOn(search, lower, uppers, seatClass).filter(isWanted)
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
export function stacksOn(search: Search, lower: number, uppers: readonly Pick<StackShelf, 'bySeat'>[], { fromMm, toMm }: Range): Stack[] {
  const { footings } = search, lowerMm = footings.seatMm[lower]!, found: Stack[] = []
  for (const { bySeat } of uppers) {
    for (let at = firstAtLeast(bySeat.seatsMm, fromMm - lowerMm - roundingMm); at < bySeat.seatsMm.length; at += 1) {
      const upper = bySeat.footings[at]!, seatMm = stackSeatMm(footings, lower, upper)
      if (seatMm > toMm) break
      if (seatMm >= fromMm && mayBeStacked(footings, lower, upper) && mayBeTaken(search, upper)) found.push(stackOf(footings, lower, upper))
    }
  }
  return found
}

/** mm. More than a difference and a sum of two heights can lose in rounding. */
const roundingMm = 1e-9

const isUsable = (search: Search, stack: Stack): boolean => isPlaceUsable(search, stack.lower, onTopOf(search.footings, stack))

/** The lower pairs of all rows, the narrowest first and of equals by ids. */
function* narrowestFirst({ footings }: Search, rows: readonly Row[]): Generator<readonly [lower: number, uppers: readonly StackShelf[]], void> {
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

/** The entries of a list that pass, in its order, looked for only as far as they are asked for. */
type Sieve = (at: number) => number | undefined

function sieve(list: Int32Array, passes: (entry: number) => boolean): Sieve {
  const kept: number[] = []
  let next = 0
  return (at) => {
    for (; kept.length <= at && next < list.length; next += 1) if (passes(list[next]!)) kept.push(list[next]!)
    return kept[at]
  }
}
