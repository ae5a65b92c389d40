import type { Places } from '#model/setup.ts'
import { inPlanOf, type Footings } from '#engine/setup/footings.ts'
import type { Obstacles } from '#engine/setup/obstacles.ts'
import { notServing, placeRanks } from '#engine/setup/order.ts'
import { placesOf } from '#engine/setup/places.ts'

/** What is known about places while one question is answered. */
export type PlaceMemory = {
  readonly placesAt: (footing: number) => Places
  /** Rank of the place in the order (`placeRanks`), without working out the place where wider and narrower bars tell it. */
  readonly rankAt: (footing: number) => number
}

/**
 * Remembers places by what footings look like in the plan, and concludes from bars of equal length: wherever a bar may
 * stand a narrower one may too, as near to its jaw or nearer. So the rank only rises with the sizes across, and one that
 * lies between two of the same rank has that rank.
 */
export function rememberPlaces(footings: Footings, obstacles: Obstacles): PlaceMemory {
  const known = new Map<number, Places>(), brackets = new Map<number, Bracket>()
  const placesAt = (footing: number) => {
    const footprint = footings.footprint[footing]!, before = known.get(footprint)
    if (before) return before
    const places = placesOf(obstacles, inPlanOf(footings, footing))
    known.set(footprint, places)
    return places
  }
  const rankAt = (footing: number) => {
    const lengths = footings.lengths[footing]!, oneMm = footings.acrossFirstMm[footing]!, twoMm = footings.acrossSecondMm[footing]!
    let bracket = brackets.get(lengths)
    if (!bracket) brackets.set(lengths, (bracket = newBracket()))
    const concluded = rankBetween(bracket, oneMm, twoMm)
    if (concluded !== null) return concluded
    const rank = placeRanks[placesAt(footing).status]
    narrow(bracket, rank, oneMm, twoMm)
    return rank
  }
  return { placesAt, rankAt }
}

/** For each rank the widest bars known to have at most that rank, and the narrowest known to have more. */
type Bracket = {
  readonly withinOne: Float64Array
  readonly withinTwo: Float64Array
  readonly beyondOne: Float64Array
  readonly beyondTwo: Float64Array
}

const newBracket = (): Bracket => ({
  withinOne: new Float64Array(notServing).fill(-Infinity), withinTwo: new Float64Array(notServing).fill(-Infinity),
  beyondOne: new Float64Array(notServing).fill(Infinity), beyondTwo: new Float64Array(notServing).fill(Infinity),
})

function rankBetween({ withinOne, withinTwo, beyondOne, beyondTwo }: Bracket, oneMm: number, twoMm: number): number | null {
  let rank = 0
  while (rank < notServing && !(oneMm <= withinOne[rank]! && twoMm <= withinTwo[rank]!)) rank += 1
  return rank === 0 || (oneMm >= beyondOne[rank - 1]! && twoMm >= beyondTwo[rank - 1]!) ? rank : null
}

function narrow({ withinOne, withinTwo, beyondOne, beyondTwo }: Bracket, rank: number, oneMm: number, twoMm: number): void {
  for (let r = 0; r < notServing; r += 1) {
    const within = rank <= r, one = within ? withinOne : beyondOne, two = within ? withinTwo : beyondTwo
    const isBetter = within ? oneMm >= one[r]! && twoMm >= two[r]! : oneMm <= one[r]! && twoMm <= two[r]!
    if (isBetter) [one[r], two[r]] = [oneMm, twoMm]
  }
}
