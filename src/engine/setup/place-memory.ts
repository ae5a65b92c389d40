import type { Places } from '#model/setup.ts'
import { inPlanOf, type Footings } from '#engine/setup/footings.ts'
import type { Obstacles } from '#engine/setup/obstacles.ts'
import { placeRanks } from '#engine/setup/order.ts'
import { inTheWayAtPlain, placesOf } from '#engine/setup/places.ts'
import { emptyBracket, narrow, rankBetween, worthTrying, type Bracket } from '#engine/setup/rank-bracket.ts'

/** What is known about places while one question is answered. */
export type PlaceMemory = {
  readonly placesAt: (footing: number) => Places
  /** Rank of the place in the order (`placeRanks`), without working out the place where wider and narrower bars tell it. */
  readonly rankAt: (footing: number) => number
  /** The same for bars as long as these, all of one size across. */
  readonly rankIfAcross: (footing: number, acrossMm: number) => number
  /** For each bar whether something is in its way at the plain place. */
  readonly inTheWayAt: (footing: number) => readonly boolean[]
}

/** Remembers places by what footings look like in the plan, and ranks by the lengths of the bars. */
export function rememberPlaces(footings: Footings, obstacles: Obstacles): PlaceMemory {
  const brackets = new Map<number, Bracket>()
  const placesAt = remembered(footings.footprint, (k) => placesOf(obstacles, inPlanOf(footings, k)))
  const inTheWayAt = remembered(footings.footprint, (k) => inTheWayAtPlain(obstacles, inPlanOf(footings, k)).map((holes) => holes.length > 0))
  const tryAcross = (k: number, acrossMm: number) => placeRanks[placesOf(obstacles, inPlanOf(footings, k).map(({ lengthMm }) => ({ acrossMm, lengthMm }))).status]
  const rankOf = (k: number, oneMm: number, twoMm: number, workOut: () => number) => {
    const lengths = footings.lengths[k]!
    let bracket = brackets.get(lengths)
    if (!bracket) brackets.set(lengths, (bracket = emptyBracket()))
    const told = rankBetween(bracket, oneMm, twoMm)
    if (told !== null) return told
    const rank = workOut()
    narrow(bracket, rank, oneMm, twoMm)
    for (const acrossMm of worthTrying(bracket, rank, oneMm, twoMm)) narrow(bracket, tryAcross(k, acrossMm), acrossMm, acrossMm)
    return rank
  }
  return {
    placesAt, inTheWayAt,
    rankAt: (k) => rankOf(k, footings.acrossFirstMm[k]!, footings.acrossSecondMm[k]!, () => placeRanks[placesAt(k).status]),
    rankIfAcross: (k, acrossMm) => rankOf(k, acrossMm, acrossMm, () => tryAcross(k, acrossMm)),
  }
}

function remembered<Value>(numbers: Int32Array, work: (k: number) => Value): (k: number) => Value {
  const known = new Map<number, Value>()
  return (k) => {
    const number = numbers[k]!
    let value = known.get(number)
    if (value === undefined) known.set(number, (value = work(k)))
    return value
  }
}
