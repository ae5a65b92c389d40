import type { Bar } from '#model/bar.ts'
import type { Part, Side } from '#model/part.ts'
import type { Choice } from '#model/setup.ts'
import type { ViseMeasured } from '#model/vise-measured.ts'
import type { Scatter } from '#engine/setup/prediction/scatter.ts'
import type { Could } from '#engine/setup/tilt/input.ts'

/** A bar of the choice, and how well each of its stations is known by itself: standard uncertainty in µm; null: not known. */
export type BarKnown = Bar & { readonly stationUUm: number | null }

/** One way of resting a part, and all that bears on what it will come out as. Plain data: it goes to a worker as it is. */
export type PredictionAsked = {
  readonly part: Part
  readonly choice: Pick<Choice, 'bars' | 'stand' | 'places'>
  readonly bars: readonly BarKnown[]
  /** What was measured of the vise; null: it was never indicated. */
  readonly vise: ViseMeasured | null
  readonly side: Side
  readonly scatter: Scatter
  /** What the shop's own instrument could know; null figures: it has none that could. */
  readonly could: Could
  readonly toleranceUm: number | null
  readonly trials: number
  readonly seed: number
}

/** Trials for each choice in view, enough for half a percent of the 95 %, and the seed of them all: the same question has the same answer everywhere. */
export const commonRun = { trials: 50_000, seed: 1 } as const
