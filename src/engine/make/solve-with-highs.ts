import type { Programme, Solve, Solved } from '#engine/make/solver.ts'

/** As much of the package `highs` as the port needs; the door that loads it hands it in. */
export type Highs = {
  readonly infinity: number
  withModel<Result>(source: HighsData, use: (model: HighsModel) => Result): Result
}

type HighsModel = {
  readonly options: { set(values: { readonly [name: string]: boolean | number | string }): unknown }
  readonly info: { get(name: string): number | bigint }
  run(): { readonly modelStatus: number }
  getSolution(): { readonly colValue: Float64Array }
}

type HighsData = {
  readonly numCols: number
  readonly numRows: number
  readonly colCost: number[]
  readonly colLower: number[]
  readonly colUpper: number[]
  readonly rowLower: number[]
  readonly rowUpper: number[]
  readonly matrix: { readonly format: 'csc'; readonly numRows: number; readonly numCols: number; readonly starts: number[]; readonly indices: number[]; readonly values: number[] }
  readonly integrality: (0 | 1)[]
}

/** Model statuses of HiGHS and kinds of its solutions. */
const optimal = 7, infeasible = 8, feasiblePoint = 2

/** The solver port over HiGHS: proven to a gap of 0, or ended. Time that is already over is none: HiGHS takes no less than 0. */
export const solveWith = (highs: Highs): Solve => (programme, secondsMost) => highs.withModel(dataOf(programme, highs.infinity), (model): Solved => {
  model.options.set({ output_flag: false, time_limit: Math.max(0, secondsMost), mip_rel_gap: 0, mip_abs_gap: 0, random_seed: 1 })
  const { modelStatus } = model.run()
  if (modelStatus === infeasible) return { status: 'infeasible', values: null, bound: Infinity }
  const hasValues = Number(model.info.get('primal_solution_status')) === feasiblePoint
  const bound = programme.columns.some(({ isWhole }) => isWhole) ? Number(model.info.get('mip_dual_bound')) : modelStatus === optimal ? Number(model.info.get('objective_function_value')) : -Infinity
  return { status: modelStatus === optimal ? 'optimal' : 'ended', values: hasValues ? [...model.getSolution().colValue] : null, bound }
})

function dataOf({ columns, rows }: Programme, infinity: number): HighsData {
  const starts = [0], within = (value: number) => Math.max(-infinity, Math.min(infinity, value))
  for (const column of columns) starts.push(starts.at(-1)! + column.rows.length)
  return {
    numCols: columns.length, numRows: rows.length, colCost: columns.map(({ cost }) => cost), colLower: columns.map(() => 0), colUpper: columns.map(({ most }) => within(most)),
    rowLower: rows.map(({ least }) => within(least)), rowUpper: rows.map(({ most }) => within(most)), integrality: columns.map(({ isWhole }) => (isWhole ? 1 : 0)),
    matrix: { format: 'csc', numRows: rows.length, numCols: columns.length, starts, indices: columns.flatMap((column) => column.rows), values: columns.flatMap(({ values }) => values) },
  }
}
