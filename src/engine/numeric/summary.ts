import { meanOf, totalOf } from '#engine/numeric/total.ts'

export type Summary = {
  readonly count: number
  readonly mean: number
  /** Standard deviation with divisor n − 1; null for one value. */
  readonly sd: number | null
  /** Autocorrelation from each value to the next; null below two values and where all are equal. */
  readonly lag1: number | null
}

/**
 * Mean, standard deviation and lag-1 autocorrelation of a series, in two passes: a mean far from 0 costs no digits.
 *
 * @source NIST-STRD (certified values in fixtures/published)
 */
export function summaryOf(values: readonly number[]): Summary {
  const count = values.length, mean = meanOf(values)
  const departures = values.map((value) => value - mean)
  const squares = totalOf(departures.map((d) => d * d))
  const steps = totalOf(departures.slice(1).map((d, i) => d * departures[i]!))
  return {
    count, mean,
    // What rounding left in the mean shows in the sum of the departures and is taken out again.
    sd: count < 2 ? null : Math.sqrt(Math.max(0, squares - totalOf(departures) ** 2 / count) / (count - 1)),
    lag1: count < 2 || squares === 0 ? null : steps / squares,
  }
}
