import type { Trust, Whereabouts } from '#model/bar.ts'
import type { Cut } from '#model/cut.ts'
import type { Finding } from '#model/finding.ts'
import type { Part, Rect } from '#model/part.ts'
import type { Sum } from '#model/sum.ts'
import type { Vise } from '#model/vise.ts'
import type { Way, Wishes } from '#model/wishes.ts'

/** What is asked of the rack: every default filled in, every word known. */
export type SetupQuestion = {
  readonly vise: Vise
  readonly part: Part
  readonly cuts: readonly Cut[]
  readonly wishes: Wishes
  readonly ways: readonly Way[]
  /** Choices and rejections to answer at most; `only` the bars to look at. Ranks are counted before cutting. */
  readonly most?: number
  readonly rejectedMost?: number
  readonly only?: readonly string[]
}

export const lowReasons = ['cutter-over-jaw', 'drill-tip', 'through-cut', 'bed'] as const
export type LowReason = (typeof lowReasons)[number]

/** The seat heights that serve, up from the vise bed. `widthMm` below zero: none does, and `giveUp` tells what to give. */
export type Window = {
  readonly lowMm: number
  readonly highMm: number
  readonly widthMm: number
  readonly lowBecause: LowReason
  readonly highBecause: 'grip' | 'contact-line'
  readonly advisedHighMm: number
  readonly gripWishMm: number | null
  readonly giveUp: GiveUp | null
  readonly stickOut: { readonly maxSeatMmByGrip: number | null; readonly maxSeatMmByThickness: number | null }
}

export type GiveUp = {
  readonly gripMm: number | null
  readonly airMm: number | null
  readonly bedAirMm: number | null
  readonly runThroughMm: number | null
}

export type AtSeat = {
  readonly gripMm: number
  readonly stickOutMm: number
  readonly airMm: number | null
  readonly stickOutPerGrip: number | null
  readonly serves: boolean
}

/** A bar's corner with the smallest x and y in the plan. */
export type Place = { readonly xMm: number; readonly yMm: number }

export const statuses = [
  'at the jaws', 'in the middle', 'on the bed', 'shifted', 'inboard', 'off the middle', 'fouled', 'bar-in-cut', 'too-thick',
] as const
export type PlaceStatus = (typeof statuses)[number]

/** Where given bars may stand; `fouledHoles` are indexes into the list of holes (or cuts) given, rising. */
export type Places = {
  readonly status: PlaceStatus
  readonly places: readonly Place[]
  readonly fouledHoles: readonly number[]
  readonly base: Rect | null
  readonly offBalance: boolean
  readonly notCarried: boolean
}

/** How the lower and the upper pair of a stack stand. */
export type Stacked = readonly [lower: Extract<Way, 'on edge' | 'lying flat'>, upper: Extract<Way, 'on edge' | 'lying flat'>]

/** One way of resting the part that serves. Bars: fixed side first; of a stack the lower pair before the upper. */
export type Choice = {
  readonly bars: readonly string[]
  readonly stand: Way
  /** Of a stack only. */
  readonly stacked?: Stacked
  readonly seatMm: number
  readonly gripMm: number
  readonly stickOutMm: number
  readonly airMm: number | null
  /** Least air between drill tips or through cuts and the bed; null where nothing comes out below. */
  readonly bedAirMm: number | null
  readonly matchUm: number | null
  /** Its standard uncertainty; left out where it is not known of every bar. */
  readonly matchUUm?: number
  /** The higher of the two, by how much; null where they are equal, unmeasured, or there are not two. */
  readonly higher: { readonly bar: string; readonly byUm: number } | null
  readonly status: PlaceStatus
  readonly places: readonly Place[]
  readonly fouledHoles: readonly number[]
  readonly base: Rect | null
  readonly trust: Trust
  readonly where: Whereabouts
  readonly rank: number
  readonly because: readonly Finding[]
  readonly findings: readonly Finding[]
}

export const rejectionReasons = [
  'not-available', 'round-on-two-bars', 'not-matched', 'thickness-not-measured', 'too-thick', 'too-low', 'too-high',
  'bar-in-cut', 'fouled', 'off-balance', 'not-carried',
] as const
export type RejectionReason = (typeof rejectionReasons)[number]

/** A candidate that does not serve, with every reason in the fixed order. */
export type Rejection = {
  readonly bars: readonly string[]
  readonly stand: Way
  /** Of a stack only. */
  readonly stacked?: Stacked
  readonly seatMm: number
  readonly gripMm: number
  readonly airMm: number | null
  readonly reasons: readonly RejectionReason[]
  readonly fouledHoles?: readonly number[]
}

/** What one wish would have to become for a rejected candidate to serve. */
export type Offer = {
  readonly wish: 'gripMm' | 'airMm' | 'bedAirMm'
  readonly toMm: number
  readonly bars: readonly string[]
  readonly stand: Way
  readonly stacked?: Stacked
}

export type SetupAnswer = {
  readonly window: Window
  readonly choices: readonly Choice[]
  readonly rejected: readonly Rejection[]
  readonly best: { readonly bars: readonly string[]; readonly stand: Way } | null
  readonly make: { readonly lowMm: number; readonly highMm: number } | null
  readonly offers?: readonly Offer[]
  /** What the answer leaves open: `holes-not-given`, `along-not-given` … and what was not computed. */
  readonly findings: readonly Finding[]
  readonly sum: readonly Sum[]
}

