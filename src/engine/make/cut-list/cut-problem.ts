/** Pieces of one size. `size` holds one kerf, as the capacity of the stock does: so n pieces need n − 1 cuts. */
export type Kind = { readonly size: number; readonly count: number }

/** Stock of one size. */
export type Stock = {
  readonly capacity: number
  readonly cost: number
  /** How many there are; Infinity where there is no limit. */
  readonly most: number
  /** Whether a piece of each kind may be cut from it at all; null: all may. */
  readonly takes: readonly boolean[] | null
}

/** What is to be cut, all in whole numbers, kinds in falling size: the least total cost of stock is sought. */
export type CutProblem = { readonly kinds: readonly Kind[]; readonly stocks: readonly Stock[] }

/** What is cut from one piece of stock: kinds, each once and rising, and how many of each. */
export type Pattern = { readonly stock: number; readonly kinds: readonly number[]; readonly counts: readonly number[] }

export type Used = { readonly pattern: Pattern; readonly times: number }

/** Every piece exactly once, on stock that is there. */
export type Plan = { readonly cost: number; readonly used: readonly Used[] }

/** Whether a piece of a kind may be cut from a stock. */
export const fits = ({ kinds, stocks }: CutProblem, stock: number, kind: number): boolean =>
  kinds[kind]!.size <= stocks[stock]!.capacity && (stocks[stock]!.takes?.[kind] ?? true)

/** The largest cost of which the costs of all stocks are multiples. */
export const costStep = ({ stocks }: CutProblem): number => stocks.reduce((step, { cost }) => commonOf(step, cost), 0)

export const commonOf = (a: number, b: number): number => (b === 0 ? a : commonOf(b, a % b))
