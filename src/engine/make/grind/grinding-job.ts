import type { GrindingRow } from '#model/cutting-data.ts'
import type { Finding } from '#model/finding.ts'
import type { GrindCase } from '#model/make-plan.ts'
import type { Situation } from '#model/situation.ts'
import type { Removal } from '#engine/make/grind/removal.ts'
import type { Wheel } from '#engine/make/grind/sweep.ts'

/** What one pass takes, and what the stage takes in all; the first stage takes what remains. */
export type GrindStage = { readonly infeedUm: number; readonly takesUm: number }

/** Bars to be ground together; sizes as they come to the grinder. */
export type GrindQuestion = Omit<GrindCase, 'allowanceMm' | 'stages'> & {
  readonly growthPercent: number
  /** What there is on each side; null: not to be judged. */
  readonly allowanceMm: number | null
  readonly stages: readonly GrindStage[]
  /** What a stiff machine takes of this work at the most; null: nothing known. */
  readonly row: GrindingRow | null
  readonly hardened: boolean
  readonly wheel: Wheel | null
}

/** `lastInfeedUm`: what is left for the last of its passes, so that the stage takes what it is said to take. */
export type StagePasses = { readonly infeedUm: number; readonly passes: number; readonly lastInfeedUm: number; readonly takesUm: number }

export type Grind = {
  readonly removal: Removal
  readonly allowanceUm: number | null
  /** Whether the allowance is enough; null where none was told. */
  readonly enough: boolean | null
  /** What is left of it; negative: what is missing. */
  readonly spareUm: number | null
  readonly stages: readonly StagePasses[]
  /** Of each side: with infeed, and with the spark-out. */
  readonly passesPerSide: number
  readonly sweepsPerSide: number
  /** How often the bars are turned over: once, and twice more to finish where the bow let stress go. */
  readonly turns: number
  /** Under the hollow, so that the magnet pulls nothing straight; null: none needed. */
  readonly shimUm: number | null
  /** Blocks around bars on edge: at least, and lower than the work. */
  readonly blockMm: { readonly leastMm: number; readonly belowMm: number }
  /** Of the machine alone, both sides; null: the wheel was not told. */
  readonly machineMin: number | null
  /** What to do, in its order. */
  readonly order: readonly Finding[]
  readonly cautions: readonly Situation[]
  readonly findings: readonly Finding[]
}
