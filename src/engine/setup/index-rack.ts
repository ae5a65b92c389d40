import type { Bar } from '#model/bar.ts'
import { availableTrusts, footingsOf, isAvailable, standOf, type Footings, type Stand } from '#engine/setup/footings.ts'
import { commonWishes } from '#engine/setup/read-wishes.ts'
import { keptOf, seatListOf, type SeatList } from '#engine/setup/seat-list.ts'
import { stackIndexOf, type StackIndex } from '#engine/setup/stack-index.ts'

/** A rack made ready to be searched, once for as many questions as one likes. */
export type RackIndex = {
  readonly footings: Footings
  /** For each stand a list for each trust that is available, and one of all together. */
  readonly bySeat: { readonly [stand in Stand]: { readonly byTrust: readonly SeatList[]; readonly all: SeatList } }
  /** Made anew when the ratio is another than last time. */
  readonly stacksFor: (stackRatio: number) => StackIndex
}

/** @throws Refusal `too-many` as `footingsOf` */
export function indexRack(bars: readonly Bar[]): RackIndex {
  const footings = footingsOf(bars)
  const available = Array.from(footings.seatMm.keys()).filter((k) => isAvailable(footings, k))
  const listsOf = (stand: Stand) => {
    const all = seatListOf(footings, available.filter((k) => standOf(footings, k) === stand))
    return { all, byTrust: availableTrusts.map((trust) => keptOf(footings, all.footings, (k) => footings.trust[k] === trust)) }
  }
  const bySeat = { 'on edge': listsOf('on edge'), 'lying flat': listsOf('lying flat'), 'single': listsOf('single') }
  const stacksOf = (stackRatio: number) => stackIndexOf(footings, bySeat['on edge'].all, bySeat['lying flat'].all, stackRatio)
  let last = stacksOf(commonWishes.stackRatio)
  const stacksFor = (stackRatio: number) => {
    if (last.stackRatio !== stackRatio) last = stacksOf(stackRatio)
    return last
  }
  return { footings, bySeat, stacksFor }
}
