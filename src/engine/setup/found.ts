import type { Bar } from '#model/bar.ts'
import type { Places, Stacked } from '#model/setup.ts'
import { ways, type Way } from '#model/wishes.ts'
import { barsOf, inPlanOf, standOf, widestMm, type Footings } from '#engine/setup/footings.ts'
import { lengthClassOf, fitnessOf, matchClassOf, placeRanks, type Key } from '#engine/setup/order.ts'
import type { Search } from '#engine/setup/search.ts'
import { onTopOf, stackSeatMm, type Stack } from '#engine/setup/stacking.ts'
import type { BarInPlan } from '#engine/setup/support.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** A way of resting the part out of the rack, and what decides where it stands in the order. */
export type Found = {
  readonly stand: Way
  /** Fixed side first; of a stack the lower pair before the upper. */
  readonly bars: readonly Bar[]
  /** How the lower and the upper pair of a stack stand; null for all else. */
  readonly stacked: Stacked | null
  readonly seatMm: number
  /** Between the two bars, or the two columns of a stack, the fixed side less the moving; NaN while a standing size is only marked. */
  readonly differUm: number
  /** The bars that stand on the bed, as they lie in the plan, and where. */
  readonly inPlan: readonly BarInPlan[]
  readonly places: Places
  /** Of the worst bar, as indexes into `trusts` and `whereabouts`. */
  readonly trust: number
  readonly where: number
  /** Size across of the widest bar; 0 for the bed. */
  readonly acrossMm: number
}

export function foundFooting(search: Search, k: number): Found {
  const { footings } = search
  return {
    stand: standOf(footings, k), bars: barsOf(footings, k), stacked: null, seatMm: footings.seatMm[k]!, differUm: footings.differUm[k]!,
    inPlan: inPlanOf(footings, k), places: search.placesAt(k), trust: footings.trust[k]!, where: footings.where[k]!, acrossMm: widestMm(footings, k),
  }
}

export function foundStack(search: Search, stack: Stack): Found {
  const { footings } = search, { lower, upper } = stack
  return {
    stand: 'stack', bars: [...barsOf(footings, lower), ...onTopOf(footings, stack)], stacked: [stackedOf(footings, lower), stackedOf(footings, upper)],
    seatMm: stackSeatMm(footings, lower, upper), differUm: stack.differUm, inPlan: inPlanOf(footings, lower), places: search.placesAt(lower),
    trust: Math.max(footings.trust[lower]!, footings.trust[upper]!), where: Math.max(footings.where[lower]!, footings.where[upper]!),
    acrossMm: widestMm(footings, lower),
  }
}

/** A single bar is never in a stack. */
const stackedOf = (footings: Footings, k: number): Stacked[number] => (standOf(footings, k) === 'lying flat' ? 'lying flat' : 'on edge')

/** The part on the bed of the vise. */
export const theBed: Found = {
  stand: 'bed', bars: [], stacked: null, seatMm: 0, differUm: 0, inPlan: [],
  places: { status: 'on the bed', places: [], fouledHoles: [], base: null, offBalance: false, notCarried: false },
  trust: 0, where: 0, acrossMm: 0,
}

export function keyOf({ window, classOf, question, tolerance }: Search, found: Found): Key {
  const across = lengthClassOf(found.acrossMm), { sunk, grip } = classOf(found.seatMm)
  return {
    advised: found.seatMm <= window.advisedHighMm + touchMm ? 0 : 1,
    trust: fitnessOf(found.trust, question.wishes.use),
    way: ways.indexOf(found.stand),
    place: placeRanks[found.places.status],
    sunk,
    grip: -grip,
    where: found.where,
    match: matchClassOf(found.differUm, tolerance),
    across: found.stand === 'single' ? -across : across,
  }
}
