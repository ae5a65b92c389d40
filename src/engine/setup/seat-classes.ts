import { edgeBetween } from '#engine/numeric/sorted.ts'

/** Seats from one height to another, both included, in mm up from the bed. */
export type Range = { readonly fromMm: number; readonly toMm: number }

/** The seats there are. Both may answer with any seat up to (down to) the one that is near enough. */
export type Seats = {
  /** The least seat from `fromMm` up; Infinity where there is none. */
  readonly atLeast: (fromMm: number, enoughMm: number) => number
  /** The highest seat from `toMm` down; −Infinity where there is none. */
  readonly atMost: (toMm: number, enoughMm: number) => number
}

/** How sunk and how well gripped the part is at a seat, in the classes of the order. */
export type SeatClassOf = (seatMm: number) => { readonly sunk: number; readonly grip: number }

/**
 * The classes of seats that the order tells apart, best first, each as the range it fills; only those that hold seats.
 *
 * The higher the part sits, the less it is sunk and the less it is gripped: so class by class of sunk from the top down,
 * and each of them, class by class of grip, from below.
 */
export function* seatClassesInOrder({ fromMm, toMm }: Range, classOf: SeatClassOf, seats: Seats): Generator<Range, void> {
  for (let topMm = toMm; topMm >= fromMm; ) {
    const { sunk } = classOf(topMm), isAlike = (seatMm: number) => classOf(seatMm).sunk === sunk
    const [bottomMm, nextMm] = isAlike(fromMm) ? [fromMm, -Infinity] : edgeBetween(topMm, fromMm, isAlike)
    const seatMm = seats.atMost(topMm, bottomMm)
    if (seatMm >= bottomMm) yield* gripClassesUpwards({ fromMm: bottomMm, toMm: topMm }, classOf, seats)
    topMm = Math.min(seatMm, nextMm)
  }
}

/** Within a range of one class of sunk. */
function* gripClassesUpwards({ fromMm, toMm }: Range, classOf: SeatClassOf, seats: Seats): Generator<Range, void> {
  for (let bottomMm = fromMm; bottomMm <= toMm; ) {
    const { grip } = classOf(bottomMm), isAlike = (seatMm: number) => classOf(seatMm).grip === grip
    const [topMm, nextMm] = isAlike(toMm) ? [toMm, Infinity] : edgeBetween(bottomMm, toMm, isAlike)
    const seatMm = seats.atLeast(bottomMm, topMm)
    if (seatMm <= topMm) yield { fromMm: bottomMm, toMm: topMm }
    bottomMm = Math.max(seatMm <= topMm ? nextMm : seatMm, nextMm)
  }
}
