import type { LongBarQuestion } from '#engine/setup/row/long-bar.ts'

/** `bedUm`: height of the bed against the first vise, or against any zero that all of the row share. */
export type RowVise = { readonly bedUm: number }

/** A pair by the mean of its two heights; `matchUm`, by which the two differ, null where nobody measured it. */
export type RowPair = { readonly id: string; readonly meanMm: number; readonly matchUm: number | null }

/** `oneZ`: all vises run with one Z, so their tops have to be alike; otherwise each has a Z of its own. */
export type RowQuestion = {
  readonly vises: readonly RowVise[]
  readonly pairs: readonly RowPair[]
  readonly oneZ: boolean
  readonly longBar: LongBarQuestion | null
}

/** µm. Spreads, and differences of a pair, nearer than this are equal; so are sums of squares, in µm². */
export const sameUm = 1e-6
