/**
 * Sum of values with the rounding of each step carried along, so that a large common offset costs no digits.
 *
 * The empty sum is 0.
 */
export function totalOf(values: readonly number[]): number {
  let total = 0, lost = 0
  for (const value of values) {
    const next = total + value
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total
    total = next
  }
  return total + lost
}

/** Plain mean; of no values NaN. */
export const meanOf = (values: readonly number[]): number => totalOf(values) / values.length
