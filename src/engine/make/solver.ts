/** A linear or mixed-integer programme as data: least cost, every row between its limits, every column from 0 to its most. */
export type Programme = {
  readonly columns: readonly ProgrammeColumn[]
  readonly rows: readonly { readonly least: number; readonly most: number }[]
}

export type ProgrammeColumn = {
  readonly cost: number
  readonly most: number
  readonly isWhole: boolean
  /** Rows this column stands in, each once. */
  readonly rows: readonly number[]
  readonly values: readonly number[]
}

/**
 * `optimal`: `values` are best. `infeasible`: there are none. `ended`: the time ran out; `values` are the best found, or null.
 *
 * Values are floating point: whoever asked rounds and checks them. `bound`: no solution costs less, as far as was shown.
 */
export type Solved = { readonly status: 'optimal' | 'infeasible' | 'ended'; readonly values: readonly number[] | null; readonly bound: number }

/**
 * The port behind which a solver stands. It holds its thread while it works: so it runs in a worker, which is ended to stop
 * it, and it is asked for a few seconds at a time.
 */
export type Solve = (programme: Programme, secondsMost: number) => Solved
