import { edgeBetween } from '#engine/numeric/sorted.ts'
import { smallestFirst } from '#engine/numeric/smallest-first.ts'
import { leastSumFrom, mostSumTo } from '#engine/numeric/sums-of-two.ts'
import { concededRange, concessionAt, lossMm, type Side } from '#engine/setup/concession.ts'
import { lengthClassOf, notServing } from '#engine/setup/order.ts'
import { isPlaceUsable, type Search } from '#engine/setup/search.ts'
import type { StackIndex } from '#engine/setup/stack-index.ts'
import { compareStackIds, onTopOf, type Stack } from '#engine/setup/stacking.ts'
import { stacksOn } from '#engine/setup/stacks-in-order.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/**
 * The stacks that would serve if one wish were given up, on one side of the window: smallest loss first, of equals by
 * ids; none whose loss is above `mostMm`.
 *
 * Goes from one sum of two seats to the next outwards, so that nothing nearer can be missed. Where too many sums lead to
 * no stack, only lower pairs with a usable place are gone on with.
 */
export function* stacksOffered(search: Search, side: Side, mostMm: number): Generator<Stack, void> {
  const { question, window, rack } = search, index = rack.stacksFor(question.wishes.stackRatio), range = concededRange(question, window, side)
  const lossOf = (seatMm: number) => lengthClassOf(lossMm(window, side, seatMm)), out = side === 'above' ? 1 : -1
  let lowersMm = index.all.seatsMm, misses = 0
  for (let atMm = side === 'above' ? range.fromMm : range.toMm; ; ) {
    const seatMm = side === 'above' ? leastSumFrom(lowersMm, index.all.seatsMm, atMm, -Infinity) : mostSumTo(lowersMm, index.all.seatsMm, atMm, Infinity)
    if (!(seatMm >= range.fromMm && seatMm <= range.toMm) || lossMm(window, side, seatMm) > mostMm) return
    const loss = lossOf(seatMm), [lastMm, nextMm] = edgeBetween(seatMm, seatMm + 2 * out * touchMm, (mm) => lossOf(mm) === loss)
    let met = false
    if (concessionAt(question, window, seatMm) !== null) {
      for (const stack of stacksWithin(search, index, Math.min(seatMm, lastMm), Math.max(seatMm, lastMm))) {
        met = true
        yield stack
      }
    }
    atMm = nextMm
    misses = met ? 0 : misses + 1
    if (misses === patience) lowersMm = usableSeats(search, index)
  }
}

/** Sums in a row without a stack, after which it is worth looking at every lower pair once. */
const patience = 16

/** The stacks with a seat in a narrow range, by ids. */
function* stacksWithin(search: Search, index: StackIndex, fromMm: number, toMm: number): Generator<Stack, void> {
  const { footings } = search, uppers = [index.all], pairs = footings.pairs
  for (let pair = 0; pair < pairs; pair += 1) {
    const found: Stack[] = []
    for (const lower of [pair, pairs + pair]) {
      if (index.has[lower] && search.servingRankAt(lower) < notServing) found.push(...stacksOn(search, lower, uppers, { fromMm, toMm }))
    }
    for (const stack of smallestFirst(found, (a, b) => compareStackIds(footings, a, b))) if (isPlaceUsable(search, stack.lower, onTopOf(footings, stack))) yield stack
  }
}

/** Seats of the lower pairs that may stand where they would have to; fouled ones only where they are drill bars. */
function usableSeats(search: Search, { all }: StackIndex): Float64Array {
  return all.seatsMm.filter((_, at) => search.servingRankAt(all.footings[at]!) < notServing && isPlaceUsable(search, all.footings[at]!))
}
