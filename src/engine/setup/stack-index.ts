import { whereabouts } from '#model/bar.ts'
import { firstAbove } from '#engine/numeric/sorted.ts'
import { availableTrusts, narrowestMm, widestMm, type Footings } from '#engine/setup/footings.ts'
import { lengthClassOf } from '#engine/setup/order.ts'
import type { SeatList } from '#engine/setup/seat-list.ts'
import { mayBeInStack } from '#engine/setup/stacking.ts'

/** Footings that may go into a stack, by seat, of equal seats the narrowest first: where upper pairs are looked for. */
export type UpperList = {
  readonly footings: Int32Array
  readonly seatsMm: Float64Array
  /** The wider and the narrower bar of each. */
  readonly widestMm: Float64Array
  readonly narrowestMm: Float64Array
  /** The different seats, ascending; those of seat k stand in the list from `start[k]` to before `start[k + 1]`. */
  readonly differentMm: Float64Array
  readonly start: Int32Array
  /** All widths, ascending, and for each the highest seat of those that are not wider. */
  readonly widthsMm: Float64Array
  readonly highestMm: Float64Array
}

/** Footings of one length from the narrowest, of equals in the order of ids: where lower pairs are looked for. */
export type LowerList = {
  readonly footings: Int32Array
  /** For each place in the list the narrowest bar from there on. */
  readonly narrowestMm: Float64Array
}

/** Footings that are alike in trust, whereabouts and in being measured. */
export type StackShelf = {
  readonly trust: number
  readonly where: number
  readonly measured: boolean
  readonly uppers: UpperList
  readonly lowers: readonly LowerList[]
}

/** What may go into a stack when a bar on edge may be so many times as high as thick. */
export type StackIndex = {
  readonly stackRatio: number
  readonly shelves: readonly StackShelf[]
  /** All of them in one list, and by footing whether it is one of them. */
  readonly all: UpperList
  readonly has: Uint8Array
  /** The different seats, ascending: one list for each trust that is available. */
  readonly seatsMm: readonly Float64Array[]
}

export function stackIndexOf(footings: Footings, onEdge: SeatList, flat: SeatList, stackRatio: number): StackIndex {
  const { seatMm, first, second, lengths } = footings, has = new Uint8Array(footings.count)
  for (const k of onEdge.footings) has[k] = mayBeInStack(footings, k, stackRatio) ? 1 : 0
  for (const k of flat.footings) has[k] = 1
  const width = Float64Array.from(has, (_, k) => lengthClassOf(widestMm(footings, k)))
  const chosen = Int32Array.from(has.keys()).filter((k) => has[k] === 1)
  const bySeat = chosen.toSorted((a, b) => seatMm[a]! - seatMm[b]! || width[a]! - width[b]!)
  const byWidth = chosen.toSorted((a, b) => width[a]! - width[b]! || first[a]! - first[b]! || second[a]! - second[b]! || a - b)
  const shelves = availableTrusts.flatMap((trust) => whereabouts.flatMap((_, where) => [true, false].flatMap((measured) => {
    const belongs = (k: number) => footings.trust[k] === trust && footings.where[k] === where && Number.isNaN(footings.differUm[k]) !== measured
    const own = byWidth.filter(belongs)
    if (own.length === 0) return []
    const different = [...new Set(own.map((k) => lengths[k]!))]
    return [{
      trust, where, measured, uppers: upperListOf(footings, bySeat.filter(belongs), own),
      lowers: different.map((length) => lowerListOf(footings, own.filter((k) => lengths[k] === length))),
    }]
  })))
  return {
    stackRatio, shelves, all: upperListOf(footings, bySeat, byWidth), has,
    seatsMm: availableTrusts.map((trust) => differentOf(Float64Array.from(bySeat.filter((k) => footings.trust[k] === trust), (k) => seatMm[k]!))),
  }
}

function upperListOf(footings: Footings, bySeat: Int32Array, byWidth: Int32Array): UpperList {
  const seatsMm = Float64Array.from(bySeat, (k) => footings.seatMm[k]!), highestMm = new Float64Array(byWidth.length)
  for (let at = 0; at < byWidth.length; at += 1) highestMm[at] = Math.max(footings.seatMm[byWidth[at]!]!, highestMm[at - 1] ?? 0)
  const starts = Int32Array.from(seatsMm.keys()).filter((at) => at === 0 || seatsMm[at] !== seatsMm[at - 1])
  return {
    footings: bySeat, seatsMm, widestMm: Float64Array.from(bySeat, (k) => widestMm(footings, k)), narrowestMm: Float64Array.from(bySeat, (k) => narrowestMm(footings, k)),
    differentMm: Float64Array.from(starts, (at) => seatsMm[at]!), start: withEnd(starts, bySeat.length),
    widthsMm: Float64Array.from(byWidth, (k) => widestMm(footings, k)), highestMm,
  }
}

function withEnd(starts: Int32Array, end: number): Int32Array {
  const all = new Int32Array(starts.length + 1)
  all.set(starts)
  all[starts.length] = end
  return all
}

function lowerListOf(footings: Footings, byWidth: Int32Array): LowerList {
  const narrowest = new Float64Array(byWidth.length)
  for (let at = byWidth.length - 1; at >= 0; at -= 1) narrowest[at] = Math.min(narrowestMm(footings, byWidth[at]!), narrowest[at + 1] ?? Infinity)
  return { footings: byWidth, narrowestMm: narrowest }
}

/** The highest seat among upper pairs of which none is wider than this; −Infinity where there are none. */
export const highestUpTo = ({ widthsMm, highestMm }: UpperList, widthMm: number): number => highestMm[firstAbove(widthsMm, widthMm) - 1] ?? -Infinity

const differentOf = (sorted: Float64Array): Float64Array => sorted.filter((value, k) => k === 0 || value !== sorted[k - 1])
