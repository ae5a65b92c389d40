import { barsOf } from '#engine/setup/footings.ts'
import type { RackIndex, SeatList } from '#engine/setup/index-rack.ts'
import type { Window } from '#model/setup.ts'

/** The bars of one pair (or of one bar alone), to be asked about by themselves. */
export type Neighbour = { readonly bars: readonly string[]; readonly seatMm: number }

/** µm apart, two seats count as one height of the rack. */
const sameSeatMm = 0.05

/**
 * The pairs of the rack that stand just outside the heights that work, next to the window first on either side; one for
 * each height, at most `each` above and as many below.
 */
export function neighboursOf(rack: RackIndex, stand: 'on edge' | 'single', window: Pick<Window, 'lowMm' | 'highMm'>, each = 2): readonly Neighbour[] {
  const list = rack.bySeat[stand].all
  return [...outwards(rack, list, firstAbove(list, window.highMm), 1, each), ...outwards(rack, list, firstAbove(list, window.lowMm, false) - 1, -1, each)]
}

/** The pairs of the rack whose height is nearest to one asked about. */
export function pairsNear(rack: RackIndex, stand: 'on edge' | 'single', seatMm: number, most = 3): readonly Neighbour[] {
  const list = rack.bySeat[stand].all, at = firstAbove(list, seatMm)
  const around = [...outwards(rack, list, at, 1, most), ...outwards(rack, list, at - 1, -1, most)]
  return around.toSorted((a, b) => Math.abs(a.seatMm - seatMm) - Math.abs(b.seatMm - seatMm)).slice(0, most)
}

function outwards(rack: RackIndex, { footings, seatsMm }: SeatList, start: number, step: 1 | -1, most: number): readonly Neighbour[] {
  const found: Neighbour[] = []
  for (let at = start; at >= 0 && at < seatsMm.length && found.length < most; at += step) {
    const seatMm = seatsMm[at]!
    if (found.every((one) => Math.abs(one.seatMm - seatMm) > sameSeatMm)) found.push({ bars: barsOf(rack.footings, footings[at]!).map(({ id }) => id), seatMm })
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
