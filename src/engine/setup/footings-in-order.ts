import { firstAbove, firstAtLeast } from '#engine/numeric/sorted.ts'
import { smallestFirst } from '#engine/numeric/smallest-first.ts'
import { widestMm, type Stand } from '#engine/setup/footings.ts'
import { lengthClassOf, matchClassOf, notServing } from '#engine/setup/order.ts'
import { isPlaceUsable, leastRankIn, restsOnBars, type Search } from '#engine/setup/search.ts'
import { seatClassesInOrder, type Range, type Seats } from '#engine/setup/seat-classes.ts'
import type { SeatList } from '#engine/setup/seat-list.ts'

/** The footings of one stand that serve with a seat in the range, in the order of the choices, found as they are asked for. */
export function* footingsInOrder(search: Search, stand: Stand, list: SeatList, range: Range): Generator<number, void> {
  if (!restsOnBars(search, stand)) return
  const least = leastRankIn(search, stand, list), met: boolean[] = [], compare = compareInClass(search, stand)
  for (let rank = least; rank < notServing; rank += 1) {
    if (rank > least && !met[rank]) continue
    for (const { fromMm, toMm } of seatClassesInOrder(range, search.classOf, seatsOf(list))) {
      const found: number[] = []
      for (let at = firstAtLeast(list.seatsMm, fromMm); at < list.seatsMm.length && list.seatsMm[at]! <= toMm; at += 1) {
        const footing = list.footings[at]!, placed = search.servingRankAt(footing)
        met[placed] = true
        if (placed === rank) found.push(footing)
      }
      for (const footing of smallestFirst(found, compare)) if (isPlaceUsable(search, footing)) yield footing
    }
  }
}

export const seatsOf = ({ seatsMm }: SeatList): Seats => ({
  atLeast: (fromMm) => seatsMm[firstAtLeast(seatsMm, fromMm)] ?? Infinity,
  atMost: (toMm) => seatsMm[firstAbove(seatsMm, toMm) - 1] ?? -Infinity,
})

/** What of the order is left to decide within one class of seats and one rank of places; then the ids. */
function compareInClass({ footings, tolerance }: Search, stand: Stand): (a: number, b: number) => number {
  const widerFirst = stand === 'single' ? -1 : 1
  return (a, b) => {
    const oneMatch = matchClassOf(footings.differUm[a]!, tolerance), otherMatch = matchClassOf(footings.differUm[b]!, tolerance)
    return footings.where[a]! - footings.where[b]!
      || (oneMatch === otherMatch ? 0 : oneMatch - otherMatch)
      || widerFirst * (lengthClassOf(widestMm(footings, a)) - lengthClassOf(widestMm(footings, b)))
      || a - b
  }
}
