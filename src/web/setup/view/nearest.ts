import { barsOf } from '#engine/setup/footings.ts'
import type { RackIndex } from '#engine/setup/index-rack.ts'
import type { SeatList } from '#engine/setup/seat-list.ts'
import type { Window } from '#model/setup.ts'

/** The bars of one pair (or of one bar alone), to be asked about by themselves. */
export type Neighbour = { readonly bars: readonly string[]; readonly seatMm: number }

/** mm. Two seats nearer than this are one height of the rack. */
const sameSeatMm = 0.05

/**
 * The pairs of the rack that stand just outside the heights that work, next to the window first on either side; one for
 * each height, at most `each` above and as many below.
 */
export function neighboursOf(rack: RackIndex, stand: 'on edge' | 'single', window: Pick<Window, 'lowMm' | 'highMm'>, each = 2): readonly Neighbour[] {
  const list = rack.bySeat[stand].all
  const above = outwards(rack, list, firstAbove(list, window.highMm), 1, each), below = outwards(rack, list, firstAbove(list, window.lowMm, false) - 1, -1, each)
  return [...above, ...below.filter(({ seatMm }) => above.every((one) => Math.abs(one.seatMm - seatMm) > sameSeatMm))]
}

/** The pairs of the rack as high as one asked about, to half a mm; where there are none the next one up and down. */
export function pairsNear(rack: RackIndex, stand: 'on edge' | 'single', heightMm: number, most = 6): readonly Neighbour[] {
  const { footings, seatsMm } = rack.bySeat[stand].all, at = firstAbove(rack.bySeat[stand].all, heightMm - asHighMm, false)
  const alike: Neighbour[] = []
  for (let k = at; k < seatsMm.length && seatsMm[k]! <= heightMm + asHighMm && alike.length < most; k += 1) alike.push(neighbour(rack, footings[k]!, seatsMm[k]!))
  return alike.length > 0 ? alike : [at, at - 1].flatMap((k) => (footings[k] === undefined ? [] : [neighbour(rack, footings[k], seatsMm[k]!)]))
}

const asHighMm = 0.5

const neighbour = ({ footings }: RackIndex, footing: number, seatMm: number): Neighbour => ({ bars: barsOf(footings, footing).map(({ id }) => id), seatMm })

function outwards(rack: RackIndex, { footings, seatsMm }: SeatList, start: number, step: 1 | -1, most: number): readonly Neighbour[] {
  const found: Neighbour[] = []
  for (let at = start; at >= 0 && at < seatsMm.length && found.length < most; at += step) {
    const seatMm = seatsMm[at]!
    if (found.every((one) => Math.abs(one.seatMm - seatMm) > sameSeatMm)) found.push(neighbour(rack, footings[at]!, seatMm))
  }
  return found
}

/** Index of the first seat above a height (or from it up). */
function firstAbove({ seatsMm }: SeatList, heightMm: number, strictly = true): number {
  let low = 0, high = seatsMm.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (strictly ? seatsMm[middle]! > heightMm + 1e-6 : seatsMm[middle]! >= heightMm - 1e-6) high = middle
    else low = middle + 1
  }
  return low
}
