/** Heights of many bars at the same stations, one bar after the other. */
export type Profiles = {
  readonly count: number
  readonly stations: number
  readonly values: Float64Array
  readonly means: Float64Array
  /** Bars in order of their means: turning a bar leaves its mean, and two bars differ somewhere by at least what their means do. */
  readonly order: Int32Array
  /** What rounding may have done to the difference of two means. */
  readonly slack: number
}

/** @param rows  a list for each bar, all of one length */
export function profilesFrom(rows: readonly (readonly number[])[]): Profiles {
  const stations = rows[0]?.length ?? 0, values = Float64Array.from(rows.flat())
  const means = Float64Array.from(rows, (row) => row.reduce((sum, value) => sum + value, 0) / stations)
  const order = Int32Array.from(rows, (_, i) => i).sort((i, j) => means[i]! - means[j]! || i - j)
  const slack = 1e-12 * values.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
  return { count: rows.length, stations, values, means, order, slack }
}

/** Largest difference of two bars at a station, both laid the same way; beyond `limit` the first that is found. */
export function straightCost({ values, stations }: Profiles, i: number, j: number, limit = Infinity): number {
  let worst = 0
  for (let s = 0, a = i * stations, b = j * stations; s < stations && worst <= limit; s += 1) {
    const difference = Math.abs(values[a + s]! - values[b + s]!)
    if (difference > worst) worst = difference
  }
  return worst
}

/** The same with one of them turned end for end; which one makes no difference. */
export function turnedCost({ values, stations }: Profiles, i: number, j: number, limit = Infinity): number {
  let worst = 0
  for (let s = 0, a = i * stations, b = (j + 1) * stations - 1; s < stations && worst <= limit; s += 1) {
    const difference = Math.abs(values[a + s]! - values[b - s]!)
    if (difference > worst) worst = difference
  }
  return worst
}

/** The better way round; exact up to `limit`, above it only known to be above. */
export function pairCost(profiles: Profiles, i: number, j: number, limit = Infinity): number {
  const straight = straightCost(profiles, i, j, limit)
  return Math.min(straight, turnedCost(profiles, i, j, Math.min(straight, limit)))
}
