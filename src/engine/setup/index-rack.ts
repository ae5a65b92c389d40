import { whereabouts, type Bar } from '#model/bar.ts'
import { footingsOf, isAvailable, standOf, widestMm, worstAvailable, type Footings, type Stand } from '#engine/setup/footings.ts'
import { lengthClassOf } from '#engine/setup/order.ts'
import { commonWishes } from '#engine/setup/read-wishes.ts'
import { mayBeInStack } from '#engine/setup/stacking.ts'

/** Footings in the order of their seats, and those seats. */
export type SeatList = { readonly footings: Int32Array; readonly seatsMm: Float64Array }

/** Footings that may go into a stack, of equal seats the narrowest first. */
export type StackList = SeatList & {
  /** For each place in the list where the next seat begins. */
  readonly next: Int32Array
  /** All widths, ascending, and for each the highest seat of those that are not wider. */
  readonly widthsMm: Float64Array
  readonly highestMm: Float64Array
}

/** Footings that may go into a stack and are alike in trust, whereabouts and in being measured. */
export type StackShelf = {
  readonly trust: number
  readonly where: number
  readonly measured: boolean
  readonly list: StackList
  /** From the narrowest, of equals in the order of ids. */
  readonly byWidth: Int32Array
}

/** What may go into a stack when a bar on edge may be so many times as high as thick. */
export type StackIndex = {
  readonly stackRatio: number
  readonly shelves: readonly StackShelf[]
  /** All of them in one list, likewise, and by footing whether it is one of them. */
  readonly all: StackList
  readonly has: Uint8Array
  /** The different seats, ascending: one list for each trust that is available. */
  readonly seatsMm: readonly Float64Array[]
}

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
    const all = seatList(footings, available.filter((k) => standOf(footings, k) === stand))
    return { all, byTrust: availableTrusts.map((trust) => kept(all, (k) => footings.trust[k] === trust)) }
  }
  const bySeat = { 'on edge': listsOf('on edge'), 'lying flat': listsOf('lying flat'), 'single': listsOf('single') }
  let last = stackIndexOf(footings, bySeat, commonWishes.stackRatio)
  const stacksFor = (stackRatio: number) => {
    if (last.stackRatio !== stackRatio) last = stackIndexOf(footings, bySeat, stackRatio)
    return last
  }
  return { footings, bySeat, stacksFor }
}

const availableTrusts = Array.from({ length: worstAvailable + 1 }, (_, trust) => trust)

function seatList(footings: Footings, chosen: readonly number[]): SeatList {
  const sorted = Int32Array.from(chosen).sort((a, b) => footings.seatMm[a]! - footings.seatMm[b]! || a - b)
  return withSeats(footings, sorted)
}

const withSeats = ({ seatMm }: Footings, sorted: Int32Array): SeatList => ({ footings: sorted, seatsMm: Float64Array.from(sorted, (k) => seatMm[k]!) })

/** The part of a list that passes, still in order. */
function kept({ footings, seatsMm }: SeatList, passes: (footing: number) => boolean): SeatList {
  const places = Array.from(footings.keys()).filter((place) => passes(footings[place]!))
  return { footings: Int32Array.from(places, (place) => footings[place]!), seatsMm: Float64Array.from(places, (place) => seatsMm[place]!) }
}

function stackIndexOf(footings: Footings, bySeat: RackIndex['bySeat'], stackRatio: number): StackIndex {
  const onEdge = kept(bySeat['on edge'].all, (k) => mayBeInStack(footings, k, stackRatio)), { seatMm, first, second } = footings
  const width = Float64Array.from(seatMm.keys(), (k) => lengthClassOf(widestMm(footings, k)))
  const all = withSeats(footings, merged(onEdge, bySeat['lying flat'].all).sort((a, b) => seatMm[a]! - seatMm[b]! || width[a]! - width[b]!))
  const allByWidth = all.footings.toSorted((a, b) => width[a]! - width[b]! || first[a]! - first[b]! || second[a]! - second[b]! || a - b)
  const shelves = availableTrusts.flatMap((trust) => whereabouts.flatMap((_, where) => [true, false].flatMap((measured) => {
    const belongs = (k: number) => footings.trust[k] === trust && footings.where[k] === where && Number.isNaN(footings.differUm[k]) !== measured
    const byWidth = allByWidth.filter(belongs)
    return byWidth.length === 0 ? [] : [{ trust, where, measured, list: stackListOf(footings, kept(all, belongs), byWidth), byWidth }]
  })))
  const seatsMm = availableTrusts.map((trust) => different(kept(all, (k) => footings.trust[k] === trust).seatsMm))
  const has = new Uint8Array(footings.count)
  for (const k of all.footings) has[k] = 1
  return { stackRatio, shelves, all: stackListOf(footings, all, allByWidth), has, seatsMm }
}

function merged(a: SeatList, b: SeatList): Int32Array {
  const both = new Int32Array(a.footings.length + b.footings.length)
  both.set(a.footings)
  both.set(b.footings, a.footings.length)
  return both
}

function stackListOf(footings: Footings, list: SeatList, byWidth: Int32Array): StackList {
  const count = byWidth.length, next = new Int32Array(count), highestMm = new Float64Array(count)
  for (let at = count - 1; at >= 0; at -= 1) next[at] = list.seatsMm[at] === list.seatsMm[at + 1] ? next[at + 1]! : at + 1
  for (let at = 0; at < count; at += 1) highestMm[at] = Math.max(footings.seatMm[byWidth[at]!]!, highestMm[at - 1] ?? 0)
  return { ...list, next, widthsMm: Float64Array.from(byWidth, (k) => widestMm(footings, k)), highestMm }
}

const different = (sorted: Float64Array): Float64Array => sorted.filter((value, k) => k === 0 || value !== sorted[k - 1])
