import { notServing } from '#engine/setup/order.ts'

/**
 * What is known about the ranks of places of bars of certain lengths, for all sizes across.
 *
 * Wherever a bar may stand a narrower one may too, as near to its jaw or nearer. So the rank only rises with the sizes
 * across, and whatever lies between two of one rank has that rank. For each rank: the widest bars known to have at most
 * that rank, and the narrowest known to have more.
 */
export type Bracket = {
  readonly withinOne: Float64Array
  readonly withinTwo: Float64Array
  readonly beyondOne: Float64Array
  readonly beyondTwo: Float64Array
  asked: number
}

export const emptyBracket = (): Bracket => ({
  withinOne: new Float64Array(notServing).fill(-Infinity), withinTwo: new Float64Array(notServing).fill(-Infinity),
  beyondOne: new Float64Array(notServing).fill(Infinity), beyondTwo: new Float64Array(notServing).fill(Infinity),
  asked: 0,
})

/** The rank of bars of these sizes across; null where it is not known yet. */
export function rankBetween({ withinOne, withinTwo, beyondOne, beyondTwo }: Bracket, oneMm: number, twoMm: number): number | null {
  let rank = 0
  while (rank < notServing && !(oneMm <= withinOne[rank]! && twoMm <= withinTwo[rank]!)) rank += 1
  return rank === 0 || (oneMm >= beyondOne[rank - 1]! && twoMm >= beyondTwo[rank - 1]!) ? rank : null
}

/** Takes in the rank that was found for bars of these sizes. */
export function narrow({ withinOne, withinTwo, beyondOne, beyondTwo }: Bracket, rank: number, oneMm: number, twoMm: number): void {
  for (let r = 0; r < notServing; r += 1) {
    const within = rank <= r, one = within ? withinOne : beyondOne, two = within ? withinTwo : beyondTwo
    const isBetter = within ? oneMm >= one[r]! && twoMm >= two[r]! : oneMm <= one[r]! && twoMm <= two[r]!
    if (isBetter) [one[r], two[r]] = [oneMm, twoMm]
  }
}

/**
 * Sizes across worth trying beside one that had to be worked out, once it has happened so often that there must be many:
 * half-way to where the rank is known to change, or twice and half the size. So a thousand sizes a micrometre apart,
 * asked for in any order, take a few dozen trials.
 */
export function worthTrying(bracket: Bracket, rank: number, oneMm: number, twoMm: number): readonly number[] {
  bracket.asked += 1
  if (bracket.asked <= fewSizes) return []
  const widestMm = Math.max(oneMm, twoMm), narrowestMm = Math.min(oneMm, twoMm)
  const nextMm = rank < notServing ? Math.min(bracket.beyondOne[rank]!, bracket.beyondTwo[rank]!) : widestMm
  const lastMm = rank > 0 ? Math.max(bracket.withinOne[rank - 1]!, bracket.withinTwo[rank - 1]!) : narrowestMm
  return [
    ...(nextMm > widestMm ? [Number.isFinite(nextMm) ? (widestMm + nextMm) / 2 : 2 * widestMm] : []),
    ...(lastMm < narrowestMm ? [Number.isFinite(lastMm) ? (narrowestMm + lastMm) / 2 : narrowestMm / 2] : []),
  ]
}

const fewSizes = 8
