import type { Cited } from '#model/cited.ts'

/** What is left on each side of a hardened bar to be ground, by its length: least (steel hardened in air) to most (thin bars quenched in oil). */
export type GrindingAllowance = Cited & {
  readonly overLengthMm: number
  readonly toLengthMm: number
  /** On the flats of bars 6 to 10 mm thick, and 10 to 20; on the edges. */
  readonly thinFaceMm: readonly [least: number, most: number]
  readonly thickFaceMm: readonly [least: number, most: number]
  readonly edgeMm: readonly [least: number, most: number]
}
