import { firstAbove, firstAtLeast } from '#engine/numeric/sorted.ts'
import { smallestFirst } from '#engine/numeric/smallest-first.ts'
import { concededRange, concessionAt, lossMm, type Side } from '#engine/setup/concession.ts'
import type { Stand } from '#engine/setup/footings.ts'
import { lengthClassOf, notServing } from '#engine/setup/order.ts'
import { isPlaceUsable, leastRankIn, type Search } from '#engine/setup/search.ts'
import type { SeatList } from '#engine/setup/seat-list.ts'

/** The footings of a list that would serve if one wish were given up, on one side of the window: smallest loss first, of equals by ids. */
export function* footingsOffered(search: Search, stand: Stand, list: SeatList, side: Side): Generator<number, void> {
  if (leastRankIn(search, stand, list) >= notServing) return
  const { window } = search, { footings, seatsMm } = list, { fromMm, toMm } = concededRange(search, side)
  const first = firstAtLeast(seatsMm, fromMm), last = firstAbove(seatsMm, toMm) - 1, step = side === 'above' ? 1 : -1
  const lossAt = (at: number) => lengthClassOf(lossMm(window, side, seatsMm[at]!)), isInside = (at: number) => at >= first && at <= last
  for (let at = side === 'above' ? first : last; isInside(at); ) {
    const loss = lossAt(at), alike: number[] = [], seatMm = seatsMm[at]!
    for (; isInside(at) && lossAt(at) === loss; at += step) alike.push(footings[at]!)
    if (concessionAt(search, seatMm) === null) continue
    const taken = alike.filter((k) => search.servingRankAt(k) < notServing)
    for (const k of smallestFirst(taken, (a, b) => a - b)) if (isPlaceUsable(search, k)) yield k
  }
}
