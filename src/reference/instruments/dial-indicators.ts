import type { Cited } from '#model/cited.ts'

/** Largest permissible errors of a dial indicator, by graduation and measuring range (over `overMm`, up to `toMm`). */
export type DialLimits = Cited & {
  /** `large`: bezel of 50 mm or more; `small`: under 50 mm, and plungers at the back. */
  readonly bezel: 'large' | 'small'
  readonly graduationMm: number
  readonly overMm: number
  readonly toMm: number
  readonly retraceUm: number
  readonly repeatabilityUm: number
  readonly tenthTurnUm: number
  /** Dials of one turn have no limit for half and one turn of their own. */
  readonly halfTurnUm: number
  readonly turnUm: number
  readonly rangeUm: number
}

type Row = readonly [graduationMm: number, overMm: number, toMm: number, retraceUm: number, repeatabilityUm: number, tenthTurnUm: number, halfTurnUm: number, turnUm: number, rangeUm: number]

const large: readonly Row[] = [
  [0.01, 0, 1, 3, 3, 5, 8, 8, 8], [0.01, 1, 3, 3, 3, 5, 8, 9, 10], [0.01, 3, 5, 3, 3, 5, 9, 10, 12], [0.01, 5, 10, 3, 3, 5, 9, 10, 15],
  [0.01, 10, 20, 5, 4, 8, 10, 15, 25], [0.01, 20, 30, 7, 5, 10, 12, 15, 30], [0.01, 30, 50, 8, 5, 10, 12, 15, 40], [0.01, 50, 100, 9, 5, 12, 17, 20, 50],
  [0.005, 0, 5, 3, 3, 5, 9, 10, 12], [0.001, 0, 1, 2, 0.5, 2, 3.5, 4, 5], [0.001, 1, 2, 2, 0.5, 2, 4, 5, 7], [0.001, 2, 5, 3, 1, 3.5, 5, 6, 10],
]
const small: readonly Row[] = [
  [0.01, 0, 1, 4, 3, 8, 11, 12, 15], [0.01, 1, 3, 4, 3, 8, 11, 12, 16], [0.01, 3, 5, 4, 3, 8, 12, 14, 18], [0.01, 5, 10, 5, 3, 9, 12, 14, 20],
  [0.005, 0, 5, 3.5, 3, 6, 9, 10, 12], [0.002, 0, 1, 2.5, 1, 2.5, 4.5, 5, 6], [0.001, 0, 1, 2, 1, 2.5, 4, 4.5, 5],
]

const withBezel = (bezel: DialLimits['bezel']) => ([graduationMm, overMm, toMm, retraceUm, repeatabilityUm, tenthTurnUm, halfTurnUm, turnUm, rangeUm]: Row): DialLimits =>
  ({ bezel, graduationMm, overMm, toMm, retraceUm, repeatabilityUm, tenthTurnUm, halfTurnUm, turnUm, rangeUm, source: 'JIS-B-7503', standing: 'published' })

/** @source JIS-B-7503 */
export const dialIndicators: readonly DialLimits[] = [...large.map(withBezel('large')), ...small.map(withBezel('small'))]
