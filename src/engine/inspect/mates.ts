import { pairHeights } from '#engine/inspect/pair-heights.ts'
import { pairProfiles } from '#engine/inspect/pair-profiles.ts'
import { windowOfHeights, windowOfProfiles } from '#engine/inspect/mates-window.ts'

/**
 * Bars by their places in the list given, in any one unit: single heights, or profiles at the same stations.
 *
 * `k` pairs, or two bars for each of `vises` that are all to be as equal as they can be.
 */
export type MatesQuestion =
  | { readonly kind: 'pairs'; readonly heights: readonly number[]; readonly k: number }
  | { readonly kind: 'profile'; readonly profiles: readonly (readonly number[])[]; readonly k: number }
  | { readonly kind: 'window'; readonly heights: readonly number[]; readonly vises: number }
  | { readonly kind: 'profile-window'; readonly profiles: readonly (readonly number[])[]; readonly vises: number }

/** Two bars, what they differ by at their worst station, and whether one of them is to be turned end for end for that. */
export type Mates = { readonly bars: readonly [number, number]; readonly turnOne: boolean; readonly cost: number }

/** Cheapest pairs first. `pairsBelow`: how many pairs there could be at most if every one had to be better than `worst`. */
export type Paired = { readonly worst: number; readonly groups: readonly Mates[]; readonly pairsBelow: number }

/** Bars of the least spread over all stations, and the best pairs among them. */
export type Windowed = { readonly spread: number; readonly bars: readonly number[]; readonly groups: readonly Mates[] }

/** The best mates out of a pile. The worst pair of `pairs` and `profile`, and the spread of the others, are proven least. */
export function matesOf(question: MatesQuestion): Paired | Windowed {
  switch (question.kind) {
    case 'pairs': return pairHeights(question.heights, question.k)
    case 'profile': return pairProfiles(question.profiles, question.k)
    case 'window': return windowOfHeights(question.heights, question.vises)
    case 'profile-window': return windowOfProfiles(question.profiles, question.vises)
  }
}
