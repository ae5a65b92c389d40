import { smallestFirst } from '#engine/numeric/smallest-first.ts'
import { firstAbove, firstAtLeast } from '#engine/numeric/sorted.ts'
import { concededRange, concessionAt, lossMm, type Side } from '#engine/setup/concession.ts'
import { widestMm } from '#engine/setup/footings.ts'
import { NearestStacks } from '#engine/setup/nearest-stacks.ts'
import { lengthClassOf, notServing } from '#engine/setup/order.ts'
import { isPlaceUsable, mayBeTaken, type Search } from '#engine/setup/search.ts'
import type { Range } from '#engine/setup/seat-classes.ts'
import { highestUpTo, type StackIndex, type UpperList } from '#engine/setup/stack-index.ts'
import { areApart, carriedMm, compareStackIds, onTopOf, stackOf, stackSeatMm, type Stack } from '#engine/setup/stacking.ts'
import { stacksOn } from '#engine/setup/stacks-in-order.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/**
 * The stacks that would serve if one wish were given up, on one side of the window: the smallest losses, at most `most`,
 * of equals those first by ids; none whose loss is above `mostMm`.
 *
 * A sweep over the lower pairs by seat finds them: the upper pairs that just reach the window are gone through in step
 * with it. Only what is not farther than what was found so far is looked at. How far that is, a few pairs tried
 * beforehand tell, and a sweep over every 16th; the last sweep goes over all, so nothing nearer is missed.
 */
export function stacksOffered(search: Search, side: Side, most: number, mostMm: number): readonly Stack[] {
  const { question, rack, footings } = search, index = rack.stacksFor(question.wishes.stackRatio), serves = (stack: Stack) => wouldServe(search, stack)
  const beyond: Beyond = { search, side, all: index.all, range: concededRange(search, side) }
  let nearest = new NearestStacks(most, lengthClassOf(mostMm), serves)
  for (const lower of someLowers(search, index)) tryOn(beyond, lower, nearest)
  // where those tried were all too far, the bound is as good as it gets
  for (const step of nearest.isEmpty() ? [1] : steps) {
    nearest = new NearestStacks(most, nearest.farthest, serves)
    sweep(beyond, nearest, step)
  }
  const byIds = (a: Stack, b: Stack) => compareStackIds(footings, a, b), nearer = nearest.nearer.toSorted((a, b) => lossOf(search, side, a) - lossOf(search, side, b) || byIds(a, b))
  const equal = nearest.crowded ? manyByIds(search, index, side, nearest.farthest) : smallestFirst(nearest.equal, byIds)
  for (const stack of nearer.length < most ? equal : []) if (serves(stack) && nearer.push(stack) === most) break
  return nearer
}

/** Whether a stack would serve but for its seat, and giving up one wish lets the seat serve. */
function wouldServe(search: Search, stack: Stack): boolean {
  const { lower, upper } = stack
  return search.servingRankAt(lower) < notServing && mayBeTaken(search, upper) && concessionAt(search, stackSeatMm(search.footings, lower, upper)) !== null
    && isPlaceUsable(search, lower, onTopOf(search.footings, stack))
}

const steps = [16, 1]

/** One side of the window, and the upper pairs that are looked through there. */
type Beyond = { readonly search: Search; readonly side: Side; readonly all: UpperList; readonly range: Range }

const lossOf = ({ window, footings }: Search, side: Side, { lower, upper }: Stack): number => lengthClassOf(lossMm(window, side, stackSeatMm(footings, lower, upper)))

/** Lower pairs of all widths, to be tried beforehand: the best placed first, of these the widest, since they carry the most. */
function someLowers({ footings, servingRankAt }: Search, { shelves }: StackIndex): readonly number[] {
  const lists = shelves.flatMap((shelf) => shelf.lowers.map((list) => list.footings)), count = lists.reduce((sum, { length }) => sum + length, 0)
  const step = Math.max(1, Math.ceil(count / trials)), some = lists.flatMap((list) => Array.from({ length: Math.ceil(list.length / step) }, (_, k) => list[k * step]!))
  return some.filter((k) => servingRankAt(k) < notServing).sort((a, b) => servingRankAt(a) - servingRankAt(b) || widestMm(footings, b) - widestMm(footings, a))
}

const trials = 256

/** What may stand on one lower pair, outwards from the edge of the window as far as it is near. */
function tryOn(beyond: Beyond, lower: number, nearest: NearestStacks): void {
  const { search: { footings }, side, all, range: { fromMm, toMm } } = beyond, { differentMm } = all, lowerMm = footings.seatMm[lower]!, mostMm = carriedMm(footings, lower)
  if (lowerMm + highestUpTo(all, mostMm) < fromMm) return
  const above = side === 'above', first = above ? firstAtLeast(differentMm, fromMm - lowerMm) : firstAbove(differentMm, toMm - lowerMm) - 1
  for (let seat = first; seat >= 0 && seat < differentMm.length; seat += above ? 1 : -1) {
    const seatMm = lowerMm + differentMm[seat]!
    if (!isNear(beyond, seatMm, nearest)) break
    visitOn(beyond, lower, mostMm, seat, seatMm, nearest)
  }
}

/**
 * Over every so many lower pairs. The different seats are taken two by two, the lower of the two rising, and each of the
 * two once as that of the lower pairs.
 */
function sweep(beyond: Beyond, nearest: NearestStacks, step: number): void {
  const { side, all: { differentMm }, range: { fromMm, toMm } } = beyond, above = side === 'above', borderMm = above ? fromMm : toMm, count = differentMm.length
  // `at`: from here on up all bring the seat to the border of the range, or over it
  for (let one = 0, at = count; one < count && (above || one < at); one += 1) {
    const oneMm = differentMm[one]!
    while (at > 0 && oneMm + differentMm[at - 1]! >= borderMm) at -= 1
    let other = above ? Math.max(at, one) : at - 1
    if (above && at <= one && !isNear(beyond, oneMm + oneMm, nearest)) break
    for (; other >= one && other < count && isNear(beyond, oneMm + differentMm[other]!, nearest); other += above ? 1 : -1) {
      const seatMm = oneMm + differentMm[other]!
      visitSeats(beyond, one, other, seatMm, nearest, step)
      if (one !== other) visitSeats(beyond, other, one, seatMm, nearest, step)
    }
  }
}

const isNear = ({ search: { window }, side, range: { fromMm, toMm } }: Beyond, seatMm: number, { reachMm }: NearestStacks): boolean =>
  seatMm >= fromMm && seatMm <= toMm && lossMm(window, side, seatMm) <= reachMm

/** The pairs of one seat as lower ones, those of another on them. */
function visitSeats(beyond: Beyond, lowerSeat: number, upperSeat: number, seatMm: number, nearest: NearestStacks, step: number): void {
  const { footings: list, start, narrowestMm } = beyond.all
  for (let k = Math.ceil(start[lowerSeat]! / step) * step; k < start[lowerSeat + 1]!; k += step) visitOn(beyond, list[k]!, narrowestMm[k]! + touchMm, upperSeat, seatMm, nearest)
}

/** The pairs of one seat on one lower pair that carries bars up to a width, from the narrowest. */
function visitOn(beyond: Beyond, lower: number, mostMm: number, upperSeat: number, seatMm: number, nearest: NearestStacks): void {
  const { search: { footings, window }, side, all: { footings: list, start, widestMm: wideMm } } = beyond, loss = lengthClassOf(lossMm(window, side, seatMm))
  for (let k = start[upperSeat]!; k < start[upperSeat + 1]! && wideMm[k]! <= mostMm && isNear(beyond, seatMm, nearest); k += 1) {
    if (areApart(footings, lower, list[k]!)) nearest.take(stackOf(footings, lower, list[k]!), loss)
  }
}

/** The stacks of one loss, one after the other by ids; for very many, of which the first few will do. */
function* manyByIds(search: Search, { all, has }: StackIndex, side: Side, loss: number): Generator<Stack, void> {
  const { footings, window } = search, { pairs } = footings
  const edgeMm = side === 'above' ? window.highMm + loss * touchMm : window.lowMm - loss * touchMm, near = { fromMm: edgeMm - 2 * touchMm, toMm: edgeMm + 2 * touchMm }
  for (let pair = 0; pair < pairs; pair += 1) {
    const found = [pair, pairs + pair].filter((lower) => has[lower] && search.servingRankAt(lower) < notServing).flatMap((lower) => stacksOn(search, lower, [all], near))
    yield* found.filter((stack) => lossOf(search, side, stack) === loss).sort((a, b) => compareStackIds(footings, a, b))
  }
}
