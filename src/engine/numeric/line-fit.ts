import { meanOf, totalOf } from '#engine/numeric/total.ts'

export type Line = {
  /** The line goes through the means. */
  readonly xMean: number
  readonly yMean: number
  readonly slope: number
  /** With n − 2 degrees of freedom; null for two points, as is the next. */
  readonly residualSd: number | null
  readonly slopeSe: number | null
  /** Sum of the squares of x about its mean. */
  readonly xSquares: number
}

/**
 * Straight line by ordinary least squares (error in y only).
 *
 * Sums are taken about the means, so a large common offset in x or y costs no digits.
 *
 * @param xs  at least two, not all alike
 * @source NIST-STRD (certified values in fixtures/published)
 */
export function fitLine(xs: readonly number[], ys: readonly number[]): Line {
  const xMean = meanOf(xs), yMean = meanOf(ys), dx = xs.map((x) => x - xMean), dy = ys.map((y) => y - yMean)
  const xSquares = totalOf(dx.map((x) => x * x)), slope = totalOf(dx.map((x, i) => x * dy[i]!)) / xSquares
  const residualSd = xs.length > 2 ? Math.sqrt(totalOf(dx.map((x, i) => (dy[i]! - slope * x) ** 2)) / (xs.length - 2)) : null
  return { xMean, yMean, slope, residualSd, slopeSe: residualSd === null ? null : residualSd / Math.sqrt(xSquares), xSquares }
}
