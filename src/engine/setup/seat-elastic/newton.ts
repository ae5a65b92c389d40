/** One condition on the step and how much it weighs. */
type Weighed = { readonly row: readonly number[]; readonly weight: number }

/** As a part of the largest pivot: below it the springs leave that way of moving free. */
const leastPivot = 1e-12

/**
 * The step d with Σ w r rᵀ d = −gradient. Where the springs leave a way of moving free, the step goes down the gradient in
 * it if there is any to go down, and else not that way at all.
 *
 * @param none  a gradient no larger than this is rounding
 */
export function leastSquaresStep(weighed: readonly Weighed[], gradient: readonly number[], none: number): readonly number[] {
  const matrix = gradient.map((_, i) => gradient.map((_value, j) => weighed.reduce((sum, { row, weight }) => sum + weight * row[i]! * row[j]!, 0)))
  const { values, vectors } = spread(matrix), largest = Math.max(...values), size = Math.hypot(...gradient)
  const along = vectors.map((vector) => vector.reduce((sum, value, k) => sum + value * gradient[k]!, 0))
  const free = values.map((value) => value <= leastPivot * largest), down = along.some((part, k) => free[k] && Math.abs(part) > none)
  return gradient.map((_, i) => vectors.reduce((sum, vector, k) => {
    if (free[k]) return down ? sum - (along[k]! / size) * vector[i]! : sum
    return down ? sum : sum - (along[k]! / values[k]!) * vector[i]!
  }, 0))
}

/** Eigenvalues and eigenvectors of a small symmetric matrix, by turning pairs of axes until nothing is left beside the diagonal. @source JACOBI */
function spread(matrix: readonly (readonly number[])[]): { readonly values: readonly number[]; readonly vectors: readonly (readonly number[])[] } {
  const a = matrix.map((row) => [...row]), n = a.length, vectors = a.map((_, i) => a.map((_row, j) => Number(i === j)))
  for (let sweep = 0; sweep < 30; sweep += 1) {
    for (let p = 0; p < n; p += 1) for (let q = p + 1; q < n; q += 1) {
      if (Math.abs(a[p]![q]!) <= 1e-18 * Math.sqrt(Math.abs(a[p]![p]! * a[q]![q]!))) continue
      const theta = (a[q]![q]! - a[p]![p]!) / (2 * a[p]![q]!), tan = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.hypot(theta, 1)), cos = 1 / Math.hypot(tan, 1), sin = tan * cos
      for (let k = 0; k < n; k += 1) [a[k]![p], a[k]![q]] = [cos * a[k]![p]! - sin * a[k]![q]!, sin * a[k]![p]! + cos * a[k]![q]!]
      for (let k = 0; k < n; k += 1) [a[p]![k], a[q]![k]] = [cos * a[p]![k]! - sin * a[q]![k]!, sin * a[p]![k]! + cos * a[q]![k]!]
      const [vp, vq] = [vectors[p]!, vectors[q]!]
      vectors[p] = vp.map((value, k) => cos * value - sin * vq[k]!)
      vectors[q] = vq.map((value, k) => sin * vp[k]! + cos * value)
    }
  }
  return { values: a.map((row, i) => row[i]!), vectors }
}
