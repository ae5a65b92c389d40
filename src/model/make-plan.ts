import type { Finding } from '#model/finding.ts'
import type { Infeeds } from '#model/making.ts'
import type { MadeBar, MakeStep, ReadingKind, StepKind } from '#model/make-step.ts'
import type { Experience } from '#model/route.ts'
import type { Sum } from '#model/sum.ts'

/** A blank on the route sheet: something to be read of a bar, with its limits as read, and what was read; null: not yet. */
export type ActualField = {
  readonly bar: string
  readonly what: ReadingKind
  readonly places: number
  readonly least: number | null
  readonly most: number | null
  readonly values: readonly number[] | null
  /** Null: not read, or no limit to hold it against. */
  readonly isInside: boolean | null
}

export type PlannedStep = MakeStep & { readonly state: 'done' | 'next' | 'open'; readonly takenHours: number | null; readonly fields: readonly ActualField[] }

/** `edges` set the height, `faces` the thickness. */
export const worked = ['edges', 'faces'] as const
export type Worked = (typeof worked)[number]

/** What is left on edges or faces of a bar before its last tool, in mm; `measured`: from a size read, not from the plan. */
export type BarLeft = {
  readonly id: string
  readonly side: Worked
  readonly finishedMm: number
  readonly nowMm: number
  readonly measured: boolean
  readonly perSideMm: number
  readonly bowMm: number | null
  readonly neededPerSideMm: number
  /** Null until a bow was read. */
  readonly isEnough: boolean | null
  readonly hrc: number | null
}

/** A pack ground down to a size: from the highest place, on each of its two sides; passes of each stage, and with the sweeps of spark-out. */
export type PackDown = { readonly toMm: number; readonly downfeedMm: number; readonly passes: readonly number[]; readonly passesTotal: number }

/** Mates that are ground together, and what to put under each. */
export type PackLeft = {
  readonly matesId: string
  readonly side: Worked
  readonly bars: readonly string[]
  /** Until all are clean and straight, no size aimed at; below what was ordered where the allowance is not enough. */
  readonly clean: PackDown
  /** Down to what was ordered; null where the allowance is not enough. */
  readonly ordered: PackDown | null
  /** Under the hollow in the middle of each bar, hollow side down. */
  readonly shimsMm: readonly number[]
  /** The case of `grind`. */
  readonly grind: GrindCase
}

export type GrindCase = {
  readonly sides: Worked
  readonly bars: number
  readonly heightMm: number
  readonly thicknessMm: number
  readonly lengthMm: number
  readonly bowMm: number
  readonly cleanUpMm: number
  readonly skinMm: number
  readonly allowanceMm: number
  readonly stages: Infeeds['stages']
  readonly sparkOut: number
}

/**
 * A bar to be pressed straight: a case of `straighten` but for the steel's `eMPa` and `yieldMPa`. The span is shorter than the bar, and
 * the bow over it less by its square.
 */
export type Press = { readonly bar: string; readonly side: Worked; readonly spanMm: number; readonly widthMm: number; readonly depthMm: number; readonly wantedSetUm: number }

export type MakePlan = {
  readonly steps: readonly PlannedStep[]
  readonly next: StepKind | null
  readonly made: readonly MadeBar[]
  readonly bars: readonly BarLeft[]
  /** Only where there is grinding. */
  readonly packs: readonly PackLeft[]
  readonly presses: readonly Press[]
  readonly hours: { readonly planned: number; readonly taken: number; readonly left: number }
  /** For the shop's own experience, once all steps are done and the plate was read; null before. */
  readonly experience: Experience | null
  readonly findings: readonly Finding[]
  readonly sum: readonly Sum[]
}
