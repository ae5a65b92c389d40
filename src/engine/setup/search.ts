import { trusts, type Bar } from '#model/bar.ts'
import type { AtSeat, SetupQuestion, Window } from '#model/setup.ts'
import { edgeBetween } from '#engine/numeric/sorted.ts'
import { atSeatOf } from '#engine/setup/at-seat.ts'
import { askedOf, type Conceding } from '#engine/setup/concession.ts'
import { barsOf, isAvailable, standOf, worstAvailable, type Footings, type Stand } from '#engine/setup/footings.ts'
import type { RackIndex } from '#engine/setup/index-rack.ts'
import { obstaclesOf, type Obstacles } from '#engine/setup/obstacles.ts'
import { fitnessOf, gripClassOf, notServing, placeRanks, sunkClassOf } from '#engine/setup/order.ts'
import { rememberPlaces, type PlaceMemory } from '#engine/setup/place-memory.ts'
import { isTooThick } from '#engine/setup/places.ts'
import { deepestOverJawMm } from '#engine/setup/reach.ts'
import type { Range, SeatClassOf } from '#engine/setup/seat-classes.ts'
import type { SeatList } from '#engine/setup/seat-list.ts'
import { touchMm } from '#engine/setup/tolerance.ts'
import { windowOf } from '#engine/setup/window.ts'

/** One question put to one rack, with what is worked out once for all candidates. */
export type Search = PlaceMemory & Conceding & {
  readonly rack: RackIndex
  readonly footings: Footings
  readonly obstacles: Obstacles
  readonly atSeat: (seatMm: number) => AtSeat
  readonly classOf: SeatClassOf
  /** Seats that serve: up to the advised height, and above it; null where there are none. */
  readonly advised: Range | null
  readonly above: Range | null
  /** The different fitnesses of available bars for the use, best first, each with the trusts that make it. */
  readonly fitnesses: readonly { readonly fitness: number; readonly trusts: readonly number[] }[]
  readonly tolerance: boolean
  /** Rank of the place of bars that may be taken, as far as it tells itself without the place; `notServing` for all others. */
  readonly servingRankAt: (footing: number) => number
}

export function searchFor(question: SetupQuestion, rack: RackIndex): Search {
  const { footings } = rack, window = windowOf(question), deepestMm = deepestOverJawMm(question.cuts)
  const obstacles = obstaclesOf(question.part, question.cuts, question.wishes)
  const atSeat = (seatMm: number) => atSeatOf(question, window, seatMm, deepestMm)
  const classOf = (seatMm: number) => {
    const { gripMm, stickOutMm } = atSeat(seatMm)
    return { sunk: sunkClassOf(stickOutMm), grip: gripClassOf(gripMm) }
  }
  const ranks = new Uint8Array(footings.count).fill(unknown)
  const search: Search = {
    question, rack, footings, window, asked: askedOf(question), obstacles, atSeat, classOf, ...rangesOf(window), ...rememberPlaces(footings, obstacles),
    fitnesses: fitnessesFor(question), tolerance: question.wishes.toleranceUm !== null,
    servingRankAt: (k) => (ranks[k] === unknown ? (ranks[k] = servingRankOf(search, k)) : ranks[k]!),
  }
  return search
}

const unknown = notServing + 1

function servingRankOf(search: Search, k: number): number {
  if (!mayBeTaken(search, k)) return notServing
  const rank = search.rankAt(k)
  return rank === placeRanks.fouled && isCutInto(search, k) ? notServing : rank
}

function rangesOf({ lowMm, highMm, advisedHighMm }: Window): Pick<Search, 'advised' | 'above'> {
  const fromMm = lowMm - touchMm, toMm = highMm + touchMm, isAdvised = (seatMm: number) => seatMm <= advisedHighMm + touchMm
  if (fromMm > toMm) return { advised: null, above: null }
  if (isAdvised(toMm)) return { advised: { fromMm, toMm }, above: null }
  if (!isAdvised(fromMm)) return { advised: null, above: { fromMm, toMm } }
  const [lastMm, firstMm] = edgeBetween(fromMm, toMm, isAdvised)
  return { advised: { fromMm, toMm: lastMm }, above: { fromMm: firstMm, toMm } }
}

function fitnessesFor({ wishes }: SetupQuestion): Search['fitnesses'] {
  const fitnesses = new Map<number, number[]>()
  for (let trust = 0; trust <= worstAvailable; trust += 1) {
    const fitness = fitnessOf(trust, wishes.use)
    fitnesses.set(fitness, [...(fitnesses.get(fitness) ?? []), trust])
  }
  return [...fitnesses].map(([fitness, alike]) => ({ fitness, trusts: alike }))
}

/**
 * Whether bars may be tried in this way at all. Two lie under a part between flat sides; one alone only where two like
 * it do not go under, and under a round part. While the part's width is unknown nobody can tell, and one is no way.
 */
export function isCandidate({ question: { part }, obstacles, footings }: Search, k: number): boolean {
  if (standOf(footings, k) !== 'single' || part.shape === 'round') return true
  const bar = { acrossMm: footings.acrossFirstMm[k]!, lengthMm: footings.lengthFirstMm[k]! }
  return isTooThick(obstacles, [bar, bar])
}

/** Standing sizes near enough to each other; a size that is only marked does not fail this. */
export const isMatched = ({ question, footings }: Search, k: number): boolean =>
  !(Math.abs(footings.differUm[k]!) > question.wishes.matchUm + touchMm * 1000)

/** Bars lying flat stand on their thickness: it has to be measured, for drilling excepted. */
export const isThicknessKnown = ({ question, footings }: Search, k: number): boolean =>
  standOf(footings, k) !== 'lying flat' || question.wishes.use === 'drilling' || !Number.isNaN(footings.differUm[k]!)

/** Two bars do not carry a round part. */
export const restsOnBars = ({ question }: Search, stand: Stand): boolean => question.part.shape !== 'round' || stand === 'single'

/** Whether bars may be taken, whatever their seat and place. */
export const mayBeTaken = (search: Search, k: number): boolean =>
  isAvailable(search.footings, k) && isCandidate(search, k) && isMatched(search, k) && isThicknessKnown(search, k)

/**
 * Whether bars on a fouled place would be cut into that are not meant for it: every bar in the way has to be a drill
 * bar; with the bars of a stack on top given, each of a fouled column.
 */
export function isCutInto({ footings, inTheWayAt }: Pick<Search, 'footings' | 'inTheWayAt'>, k: number, onTop: readonly Bar[] = []): boolean {
  if (footings.trust[k]! < trusts.indexOf('drill bar')) return true
  const below = barsOf(footings, k), isDrillBar = (bar: Bar | undefined) => bar === undefined || bar.trust === 'drill bar'
  if (below.every(isDrillBar) && onTop.every(isDrillBar)) return false
  return inTheWayAt(k).some((fouled, b) => fouled && !(isDrillBar(below[b]) && isDrillBar(onTop[b])))
}

/**
 * No footing of a list has a better place than this, told from the narrowest bars of each length; `notServing`: none of
 * them serves, because of places alone or because none is a candidate.
 */
export function leastRankIn(search: Search, stand: Stand, { extents, trust }: SeatList): number {
  const { question, obstacles, footings } = search, few = stand === 'single' && question.part.shape !== 'round'
  const tried = extents.filter(({ footing, widestMm: acrossMm }) => {
    const bar = { acrossMm, lengthMm: footings.lengthFirstMm[footing]! }
    return !few || isTooThick(obstacles, [bar, bar])
  })
  return usableRank(tried.reduce((least, { footing, narrowestMm }) => Math.min(least, search.rankIfAcross(footing, narrowestMm)), notServing), trust)
}

/** A fouled place is no use to bars of which none is a drill bar. */
export const usableRank = (rank: number, trust: number): number => (rank === placeRanks.fouled && trust < trusts.indexOf('drill bar') ? notServing : rank)

/** Whether the part may be put on bars at their places, whatever their seat. What takes longest is asked last. */
export function isPlaceUsable(search: Search, k: number, onTop: readonly Bar[] = []): boolean {
  const rank = search.servingRankAt(k)
  if (rank >= notServing || (rank === placeRanks.fouled && onTop.length > 0 && isCutInto(search, k, onTop))) return false
  const { offBalance, notCarried } = search.placesAt(k)
  return !offBalance && !notCarried
}
