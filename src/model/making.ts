import type { BlackBar } from '#model/black-bar.ts'
import type { GrindingAllowance } from '#model/grinding-allowance.ts'
import type { Machine } from '#model/machine.ts'
import type { MakingSteel } from '#model/making-steel.ts'
import type { Experience, StepTime } from '#model/route.ts'
import type { StockLength } from '#model/stock-length.ts'
import type { StockLimit } from '#model/stock-limit.ts'
import type { StockPlate } from '#model/stock-plate.ts'
import type { Use } from '#model/wishes.ts'

/** Stock to leave, in mm; on each side where not said otherwise. */
export type Leave = {
  /** On an edge as drawn or rolled, and on each end. */
  readonly edgeMm: number
  readonly endMm: number
  /** On each end of bars that are only cut. */
  readonly cutEndMm: number
  /** On each face, where faces are worked. */
  readonly faceMm: number
  /** Lost to 240 grit, in all. */
  readonly rubMm: number
  /** After hardening: bow once straightened, cleaning up, skin. */
  readonly bowMm: number
  readonly cleanUpMm: number
  readonly skinMm: number
}

/** `takesUm` of the first stage does not count: it takes what remains. */
export type Infeeds = { readonly stages: readonly { readonly infeedUm: number; readonly takesUm: number }[]; readonly sparkOut: number }

/** Outside work: for the lot, in the shop's money; how many days it is away. */
export type Outside = { readonly cost: number | null; readonly days: number }

/** A price for all that is ordered. What its certificate says of it, if it has one. */
export type Bought = Outside & { readonly matchUm: number | null; readonly parallelUm: number | null }

/** The shop as far as making needs to know it: what there is, what it costs, what has come out so far. */
export type Making = {
  readonly lengths: readonly StockLength[]
  readonly plates: readonly StockPlate[]
  readonly steels: readonly MakingSteel[]
  readonly machines: readonly Machine[]
  /** A person's hour; null: nobody has said. */
  readonly handPerHour: number | null
  readonly hoursPerDay: number
  /** Null: nobody hardens for the shop. */
  readonly hardening: Outside | null
  readonly bought: Bought | null
  readonly cutterCost: number | null
  readonly limitsUm: { readonly [use in Use]: number }
  readonly stockLimits: readonly StockLimit[]
  readonly allowances: readonly GrindingAllowance[]
  readonly blackBars: readonly BlackBar[]
  readonly times: readonly StepTime[]
  readonly experience: readonly Experience[]
  readonly leave: Leave
  readonly infeeds: Infeeds
  /** Whether the faces are worked too, not only the edges. */
  readonly faces: boolean
  /** Until the day it is wanted; null: no hurry. */
  readonly daysLeft: number | null
}

/** What the books know of it; rows of the shop's own stand before them. */
export type MakingBooks = Pick<Making, 'steels' | 'stockLimits' | 'allowances' | 'blackBars'>
