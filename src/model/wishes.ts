export const uses = ['drilling', 'milling', 'fine milling', 'grinding'] as const
export type Use = (typeof uses)[number]

export const ways = ['on edge', 'lying flat', 'stack', 'single', 'bed'] as const
/** A way of resting the part: two bars on edge, lying flat, two high, one in the middle, none. */
export type Way = (typeof ways)[number]

/** The numbers a person may give way on, with every default filled in. */
export type Wishes = {
  readonly gripMm: number | 'auto'
  readonly airMm: number
  readonly holeAirMm: number
  readonly bedAirMm: number
  readonly gapMm: number
  readonly gripLineMm: number
  readonly carryMm: number
  readonly stickOutPerGrip: number
  readonly stickOutPerThickness: number
  readonly stackRatio: number
  readonly toleranceUm: number | null
  readonly use: Use
  /** The largest difference of two standing sizes that still counts as matched. */
  readonly matchUm: number
}
