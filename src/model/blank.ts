import type { BarSize } from '#model/bar-size.ts'
import type { Finding } from '#model/finding.ts'
import type { StepKind } from '#model/make-step.ts'
import type { Condition } from '#model/stock-length.ts'

export const dimensions = ['height', 'thickness', 'length'] as const
export type Dimension = (typeof dimensions)[number]

/** Why stock is left on a size. `shrinkage`: hardening makes it less; growth is never counted on. `reserve`: up to what is usual for the size. */
export const allowanceKinds = ['sawn face', 'milling', 'rubbing', 'bow', 'skin', 'cleaning up', 'shrinkage', 'reserve'] as const
export type AllowanceKind = (typeof allowanceKinds)[number]

/** Stock left on one size: `eachMm` on so many sides, `totalMm` together, taken off (or lost) by a step. */
export type Allowance = {
  readonly dimension: Dimension
  readonly kind: AllowanceKind
  readonly sides: 1 | 2
  readonly eachMm: number
  readonly totalMm: number
  readonly takenBy: StepKind
  readonly source: string
}

/** Sizes once a step is done. */
export type BlankStage = { readonly after: StepKind; readonly size: BarSize }

/** One height on its way: from the sawn blank to the finished bar. `stages` in the order of work, the last one finished. */
export type Blank = {
  readonly heightMm: number
  readonly count: number
  readonly sawn: BarSize
  readonly stages: readonly BlankStage[]
  readonly finished: BarSize
  readonly allowances: readonly Allowance[]
  /** What a size may read once hardened; null where nothing is hardened. */
  readonly hardened: { readonly heightMm: readonly [number, number]; readonly lengthMm: readonly [number, number] } | null
  /** To come off each side of the height (of the thickness: where faces are worked) after hardening or at the last milling. */
  readonly perSideMm: { readonly height: number; readonly thickness: number }
}

/** Blanks of one height out of one piece of stock; `together` of them side by side in one bar, so that mates come from it. */
export type Taking = {
  readonly stockId: string
  readonly form: 'length' | 'plate'
  readonly heightMm: number
  readonly count: number
}

/** A case of `cut-bars`: the stock of one section and the pairs of blanks to come out of it, a pair being one piece. In mm. */
export type BarCut = {
  readonly steel: string
  readonly condition: Condition
  readonly widthMm: number
  readonly thicknessMm: number
  readonly kerf: number
  readonly stock: readonly { readonly length: number; readonly available: number | null; readonly id: string }[]
  readonly pieces: readonly (readonly [length: number, count: number])[]
  /** Beside each kind of piece: the height it is for, and how many blanks it is cut into. */
  readonly of: readonly { readonly heightMm: number; readonly blanks: number }[]
}

/** A case of `cut-plate`: the blanks to come out of plates of one kind. In mm; `height` along the plate. */
export type PlateCut = {
  readonly stockId: string
  readonly plateWidth: number
  readonly plateLength: number
  readonly kerf: number
  readonly pieces: readonly { readonly length: number; readonly height: number; readonly count: number }[]
}

export type CutList = {
  readonly takings: readonly Taking[]
  /** How many of each stock are begun: no more are needed. */
  readonly begun: readonly { readonly stockId: string; readonly count: number }[]
  readonly bars: readonly BarCut[]
  readonly plates: readonly PlateCut[]
  /** Blanks for which there is no stock. */
  readonly short: readonly { readonly heightMm: number; readonly count: number; readonly widthMm: number; readonly thicknessMm: number; readonly lengthMm: number }[]
  /** Prices of the stock that is begun; null where one of them is not known. */
  readonly cost: number | null
  readonly findings: readonly Finding[]
}
