import { narrowestMm, widestMm, type Footings } from '#engine/setup/footings.ts'

/** Bars of one length in a list: one footing of them, and between which sizes across they all lie. */
export type Extent = { readonly footing: number; readonly narrowestMm: number; readonly widestMm: number }

/** Footings in the order of their seats, and those seats. */
export type SeatList = {
  readonly footings: Int32Array
  readonly seatsMm: Float64Array
  readonly extents: readonly Extent[]
  /** The worst trust in it, as an index into `trusts`. */
  readonly trust: number
}

/** Of equal seats the one that comes first in the order of ids. */
export function seatListOf(footings: Footings, chosen: Iterable<number>): SeatList {
  const { seatMm } = footings
  return listInOrder(footings, Int32Array.from(chosen).sort((a, b) => seatMm[a]! - seatMm[b]! || a - b))
}

/** The part of a list that passes, still in order. */
export const keptOf = (footings: Footings, list: Int32Array, passes: (footing: number) => boolean): SeatList => listInOrder(footings, list.filter(passes))

function listInOrder(footings: Footings, sorted: Int32Array): SeatList {
  return {
    footings: sorted, seatsMm: Float64Array.from(sorted, (k) => footings.seatMm[k]!), extents: extentsOf(footings, sorted),
    trust: sorted.reduce((worst, k) => Math.max(worst, footings.trust[k]!), 0),
  }
}

function extentsOf(footings: Footings, list: Int32Array): readonly Extent[] {
  const extents = new Map<number, { footing: number; narrowestMm: number; widestMm: number }>()
  for (const k of list) {
    const lengths = footings.lengths[k]!, known = extents.get(lengths)
    if (!known) extents.set(lengths, { footing: k, narrowestMm: narrowestMm(footings, k), widestMm: widestMm(footings, k) })
    else {
      known.narrowestMm = Math.min(known.narrowestMm, narrowestMm(footings, k))
      known.widestMm = Math.max(known.widestMm, widestMm(footings, k))
    }
  }
  return [...extents.values()]
}
