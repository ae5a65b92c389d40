import type { Bar } from '#model/bar.ts'
import { barsOf, narrowestMm, standOf, widestMm, type Footings } from '#engine/setup/footings.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/**
 * Two mates on two others, by the footings they have; `crossed`: the upper two have changed sides, which levels the
 * columns better. `differUm` is what is left between the columns, NaN where a standing size is only marked.
 */
export type Stack = { readonly lower: number; readonly upper: number; readonly crossed: boolean; readonly differUm: number }

/** Whether a footing may go into a stack: two bars, lying flat, or on edge and thick enough for their height. @source SETUP-RULES */
export function mayBeInStack(footings: Footings, k: number, stackRatio: number): boolean {
  const stand = standOf(footings, k)
  if (stand !== 'on edge') return stand === 'lying flat'
  return barsOf(footings, k).every(({ heightMm, thicknessMm }) => thicknessMm >= heightMm / stackRatio - touchMm)
}

/**
 * Widest bar that the pair below carries, in mm: none of the upper may be wider than what it stands on, whichever way the
 * two are crossed.
 *
 * @source SETUP-RULES
 */
export const carriedMm = (footings: Footings, lower: number): number => narrowestMm(footings, lower) + touchMm

/** Whether two pairs have no bar in common. */
export function areApart({ first, second }: Footings, lower: number, upper: number): boolean {
  const a = first[lower]!, b = second[lower]!, c = first[upper]!, d = second[upper]!
  return a !== c && a !== d && b !== c && b !== d
}

/** Whether one pair may stand on another; that both may go into a stack is known. */
export const mayBeStacked = (footings: Footings, lower: number, upper: number): boolean =>
  areApart(footings, lower, upper) && widestMm(footings, upper) <= carriedMm(footings, lower)

export function stackOf({ differUm }: Footings, lower: number, upper: number): Stack {
  const straightUm = Math.abs(differUm[lower]! + differUm[upper]!), crossedUm = Math.abs(differUm[lower]! - differUm[upper]!)
  const crossed = crossedUm < straightUm - roundingUm
  return { lower, upper, crossed, differUm: crossed ? crossedUm : straightUm }
}

/** µm. Columns as level as this either way are not worth changing sides. */
const roundingUm = 1e-6

/** The upper bars from the fixed jaw. */
export function onTopOf(footings: Footings, { upper, crossed }: Stack): readonly Bar[] {
  const bars = barsOf(footings, upper)
  return crossed ? bars.toReversed() : bars
}

export const stackSeatMm = ({ seatMm }: Footings, lower: number, upper: number): number => seatMm[lower]! + seatMm[upper]!

/** By the ids of the bars in the order in which they are named. */
export function compareStackIds(footings: Footings, a: Stack, b: Stack): number {
  const { first, second } = footings
  return first[a.lower]! - first[b.lower]! || second[a.lower]! - second[b.lower]!
    || fixedOnTop(footings, a) - fixedOnTop(footings, b) || movingOnTop(footings, a) - movingOnTop(footings, b)
    || a.lower - b.lower || a.upper - b.upper
}

const fixedOnTop = ({ first, second }: Footings, { upper, crossed }: Stack): number => (crossed ? second : first)[upper]!
const movingOnTop = ({ first, second }: Footings, { upper, crossed }: Stack): number => (crossed ? first : second)[upper]!
