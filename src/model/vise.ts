/** The vise as the setup sees it: heights up from the bed. */
export type Vise = {
  /** Height of the jaws above the bed; with two heights the higher, which the cutter has to clear. */
  readonly jawHeightMm: number
  /** The lower of two jaws of different height, which limits the grip; left out: both are alike. */
  readonly lowerJawHeightMm?: number
  readonly jawWidthMm?: number
  readonly openingMm: number
}
