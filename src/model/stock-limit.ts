import type { Cited } from '#model/cited.ts'
import type { Condition } from '#model/stock-length.ts'

/**
 * What a delivered size may be off its nominal: a row of a table, for sizes over `overMm` up to `toMm`, steels with more than
 * `carbonOverPercent` and up to `carbonToPercent` carbon. The lower deviation is negative or 0.
 */
export type StockLimit = Cited & {
  readonly condition: Condition
  readonly dimension: 'width' | 'thickness'
  readonly carbonOverPercent: number
  readonly carbonToPercent: number
  readonly overMm: number
  readonly toMm: number
  readonly lowerMm: number
  readonly upperMm: number
  /** The class of tolerance, if the table names one. */
  readonly grade: string | null
}
