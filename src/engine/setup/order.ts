import type { PlaceStatus } from '#model/setup.ts'
import type { Use } from '#model/wishes.ts'
import { worstAvailable } from '#engine/setup/footings.ts'

/**
 * What decides between two choices, the first first; of each the smaller number is better. Two choices alike in all are
 * a tie.
 *
 * @source SETUP-RULES
 */
export const deciders = ['advised', 'trust', 'way', 'place', 'sunk', 'grip', 'where', 'match', 'across'] as const
export type Decider = (typeof deciders)[number]
export type Key = { readonly [decider in Decider]: number }

/** The first that decides between two choices; null for a tie. */
export const deciderBetween = (a: Key, b: Key): Decider | null => deciders.find((decider) => a[decider] !== b[decider]) ?? null

/** For drilling it does not matter whether a bar has been looked over or drilled into. */
export const fitnessOf = (trust: number, use: Use): number => (use === 'drilling' && trust <= worstAvailable ? 0 : trust)

/** Places of this rank and worse never serve. */
export const notServing = 4

export const placeRanks: { readonly [status in PlaceStatus]: number } = {
  'at the jaws': 0, 'in the middle': 0, 'on the bed': 0, 'shifted': 1, 'inboard': 2, 'off the middle': 2, 'fouled': 3, 'bar-in-cut': 4, 'too-thick': 4,
}

/** Classes of 0.1 mm below the jaw tops. */
export const sunkClassOf = (stickOutMm: number): number => Math.floor(10 * Math.max(0, -stickOutMm) + halvesGoUp)

/** Classes of 1 mm of grip. */
export const gripClassOf = (gripMm: number): number => Math.floor(gripMm + halvesGoUp)

/** With a tolerance in classes of 0.1 µm; without one all that is measured is alike. Not measured (NaN) comes last. */
export const matchClassOf = (differUm: number, tolerance: boolean): number =>
  Number.isNaN(differUm) ? Infinity : tolerance ? Math.floor(10 * Math.abs(differUm) + halvesGoUp) : 0

/** Lengths that count as equal are in one class: of 1e-6 mm, its borders off any length that is written down. */
export const lengthClassOf = (lengthMm: number): number => Math.floor(lengthMm * 1e6 + 0.37)

/** No length of a class is above this, in mm. */
export const lengthClassTopMm = (lengthClass: number): number => (lengthClass + 0.63) / 1e6

/** A half goes up, also one that rounding left a little short. */
const halvesGoUp = 0.5 + 1e-6
