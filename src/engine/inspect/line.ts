import { Refusal } from '#model/refusal.ts'
import { leastSquares } from '#engine/numeric/least-squares.ts'
import { meanOf, totalOf } from '#engine/numeric/total.ts'

/** Readings y at places x, each in any one unit; without `intercept` the curve goes through the origin. */
export type LineQuestion = {
  readonly x: readonly number[]
  readonly y: readonly number[]
  readonly degree: number
  readonly intercept: boolean
  /** Places at which the curve is asked for, within the readings or beyond. */
  readonly at: readonly number[]
}

export type LineAnswer = {
  /** Of x⁰, x¹, x² …; without an intercept from x¹ on. */
  readonly coefficients: readonly number[]
  /** Null where as many readings as coefficients leave nothing over to judge by, as are the next two. */
  readonly standardErrors: readonly number[] | null
  readonly covariance: readonly (readonly number[])[] | null
  /** In units of y, with `dof` degrees of freedom; 0 where there are none. */
  readonly residualSd: number
  readonly residualSumOfSquares: number
  readonly dof: number
  /** Null where all y are equal (without an intercept: 0). */
  readonly rSquared: number | null
  /** The curve and its standard uncertainty, covariances included. */
  readonly at: readonly { readonly x: number; readonly y: number; readonly u: number | null }[]
}

/**
 * Straight line or polynomial through readings by ordinary least squares (error in y only).
 *
 * With an intercept the powers are of x less the middle of the readings, and only the result is written in powers of x: a
 * large common offset costs no digits. The uncertainty at a place takes the covariance of the coefficients with it.
 *
 * @throws Refusal `readings-do-not-match-stations`, `too-few-readings`, `stations-coincide` where fewer places differ
 * than there are coefficients
 * @source NIST-STRD · GUM H.3 (fixtures/published)
 */
export function lineOf({ x, y, degree, intercept, at }: LineQuestion): LineAnswer {
  const lowest = intercept ? 0 : 1, count = degree + 1 - lowest
  refuseUnfit(x, y, count, intercept)
  const middle = intercept ? Math.min(...x) / 2 + Math.max(...x) / 2 : 0
  const powersAt = (place: number): number[] => Array.from({ length: count }, (_, k) => (place - middle) ** (k + lowest))
  const rows = x.map(powersAt)
  const fit = leastSquares(rows[0]!.map((_, k) => rows.map((row) => row[k]!)), y)
  const dof = y.length - count, residualSumOfSquares = totalOf(fit.residuals.map((r) => r * r)), variance = dof > 0 ? residualSumOfSquares / dof : null
  const spread = columnsOf(fit.spread).map((column) => shifted(column, middle)), residualSd = Math.sqrt(variance ?? 0)
  const covariance = variance === null ? null : range(count).map((i) => range(count).map((j) => variance * totalOf(spread.map((column) => column[i]! * column[j]!))))
  const offset = intercept ? meanOf(y) : 0, squares = totalOf(y.map((value) => (value - offset) ** 2))
  return {
    coefficients: shifted(fit.coefficients, middle),
    standardErrors: covariance && covariance.map((row, k) => Math.sqrt(row[k]!)),
    covariance, residualSd, residualSumOfSquares, dof,
    rSquared: squares === 0 ? null : 1 - residualSumOfSquares / squares,
    at: at.map((place) => {
      const powers = powersAt(place), along = columnsOf(fit.spread).map((column) => totalOf(column.map((value, k) => value * powers[k]!)))
      return { x: place, y: totalOf(powers.map((power, k) => power * fit.coefficients[k]!)), u: dof > 0 ? residualSd * Math.hypot(...along) : null }
    }),
  }
}

function refuseUnfit(x: readonly number[], y: readonly number[], count: number, intercept: boolean): void {
  if (x.length !== y.length) throw new Refusal('readings-do-not-match-stations', { field: 'y', given: y.length, needed: x.length })
  if (x.length < count) throw new Refusal('too-few-readings', { field: 'x', given: x.length, needed: count })
  const places = new Set(x)
  if (!intercept) places.delete(0)
  if (places.size < count) throw new Refusal('stations-coincide', { field: 'x', given: places.size, needed: count })
}

/** Coefficients of powers of (x − middle) as coefficients of powers of x. */
function shifted(coefficients: readonly number[], middle: number): number[] {
  const result = [...coefficients]
  if (middle === 0) return result
  for (let from = 0; from < result.length - 1; from += 1) {
    for (let k = result.length - 2; k >= from; k -= 1) result[k]! -= middle * result[k + 1]!
  }
  return result
}

const range = (count: number): number[] => Array.from({ length: count }, (_, i) => i)
const columnsOf = (rows: readonly (readonly number[])[]): number[][] => rows.map((_, j) => rows.map((row) => row[j]!))
