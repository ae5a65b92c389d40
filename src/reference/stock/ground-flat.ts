import type { Cited } from '#model/cited.ts'

/** What ground flat stock is to be had in, and how far its faces may be out of square. Its straightness is not in the copies seen. */
export type GroundFlat = Cited & {
  readonly widthMm: readonly [least: number, most: number]
  readonly thicknessMm: readonly [least: number, most: number]
  readonly squareMm: readonly [least: number, most: number]
  readonly lengthsMm: readonly number[]
  readonly angleDeg: number
  /** A length may be over, never under. */
  readonly lengthOverMm: number
  /** Ordered with something left to machine: thickness and width may be over by so much. */
  readonly withAllowanceOverMm: number
}

/** Limits of ready sizes are in `deliveredLimits`. @source DIN-59350 */
export const groundFlat: GroundFlat = {
  widthMm: [10, 500], thicknessMm: [1, 100], squareMm: [4, 150], lengthsMm: [500, 1000, 1030], angleDeg: 0.25, lengthOverMm: 5, withAllowanceOverMm: 0.2, source: 'DIN-59350', standing: 'published',
}
