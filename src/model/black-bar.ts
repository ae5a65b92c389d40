import type { Cited } from '#model/cited.ts'

/** What a hot rolled flat of tool steel must lose on each side before it is hardened; up to 80 % of it may be decarburised. */
export type BlackBar = Cited & {
  readonly overThicknessMm: number
  readonly toThicknessMm: number
  readonly overWidthMm: number
  readonly toWidthMm: number
  /** The wide faces and the edges; which of the two printed rows is which is a reading of the table. */
  readonly faceMm: number
  readonly edgeMm: number
}
