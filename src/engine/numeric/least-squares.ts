import { Refusal } from '#model/refusal.ts'
import { dotOf } from '#engine/numeric/dot.ts'

export type LeastSquares = {
  readonly coefficients: readonly number[]
  /** F with F·Fᵀ = (AᵀA)⁻¹, a row for each coefficient: times the residual variance that is their covariance. */
  readonly spread: readonly (readonly number[])[]
  readonly residuals: readonly number[]
}

type Column = Float64Array

/** Below this part of its length a column hardly differs from those before it, and the digits of its coefficient are gone. */
const leastPivot = 1e-14
const mostRefinements = 10

/**
 * The coefficients of the columns whose sum comes nearest to y in squares: Householder reflections on columns scaled by
 * powers of two, then refinement of coefficients and residuals together against residuals in twice the precision.
 *
 * @param columns  one list for each coefficient, each as long as y
 * @throws Refusal `fit-not-determined` where a column follows from those before it, or there are more columns than readings
 * @source NIST-STRD (certified values in fixtures/published) · REFINEMENT
 */
export function leastSquares(columns: readonly (readonly number[])[], y: readonly number[]): LeastSquares {
  const scales = columns.map(scaleOf), scaled = columns.map((column, j) => column.map((value) => value / scales[j]!))
  const { reflectors, upper } = reflect(scaled)
  const rows = scaled.length === 0 ? [] : y.map((_, i) => scaled.map((column) => column[i]!))
  let coefficients: readonly number[] = columns.map(() => 0), residuals: readonly number[] = y.map(() => 0), last = Infinity
  for (let turn = 0; turn < mostRefinements; turn += 1) {
    const missing = Float64Array.from(y, (value, i) => dotOf([...rows[i]!, 1, 1], [...coefficients.map((c) => -c), value, -residuals[i]!]))
    const leaning = scaled.map((column) => -dotOf(column, residuals))
    const held = solveTransposed(upper, leaning)
    reflectors.forEach((reflector) => mirror(reflector, missing))
    const step = solve(upper, held.map((h, j) => missing[j]! - h))
    missing.set(held)
    reflectors.toReversed().forEach((reflector) => mirror(reflector, missing))
    const size = Math.max(...step.map((s, j) => Math.abs(s) / (Math.abs(coefficients[j]! + s) || 1)))
    if (size >= last) break
    coefficients = coefficients.map((c, j) => c + step[j]!)
    residuals = residuals.map((r, i) => r + missing[i]!)
    last = size
  }
  return {
    coefficients: coefficients.map((c, j) => c / scales[j]!),
    spread: inverseOf(upper).map((row, i) => row.map((value) => value / scales[i]!)),
    residuals,
  }
}

/** The power of two nearest to the length of a column; 1 for a column of zeros. */
function scaleOf(column: readonly number[]): number {
  const largest = column.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
  return largest === 0 ? 1 : 2 ** Math.round(Math.log2(largest))
}

/** Reflections that make the columns upper triangular, and the triangle (row by row). */
function reflect(columns: readonly (readonly number[])[]): { reflectors: Column[]; upper: number[][] } {
  const work = columns.map((column) => Float64Array.from(column)), reflectors: Column[] = []
  work.forEach((column, k) => {
    const before = Math.hypot(...columns[k]!), length = Math.hypot(...column.subarray(k))
    if (k >= column.length || !(length > leastPivot * before)) throw new Refusal('fit-not-determined', { given: column.length, needed: columns.length })
    const reflector = column.slice(), pivot = column[k]!
    reflector.fill(0, 0, k)
    reflector[k] = pivot + (pivot < 0 ? -length : length)
    reflectors.push(reflector)
    for (const later of work.slice(k)) mirror(reflector, later)
  })
  return { reflectors, upper: work.map((_, i) => work.map((column, j) => (j < i ? 0 : column[i]!))) }
}

/** Reflects a vector in the plane across the reflector. */
function mirror(reflector: Column, vector: Column): void {
  let along = 0, square = 0
  for (let i = 0; i < reflector.length; i += 1) { along += reflector[i]! * vector[i]!; square += reflector[i]! ** 2 }
  const times = (2 * along) / square
  for (let i = 0; i < reflector.length; i += 1) vector[i]! -= times * reflector[i]!
}

function solve(upper: readonly (readonly number[])[], right: readonly number[]): number[] {
  const x = [...right]
  for (let i = x.length - 1; i >= 0; i -= 1) {
    for (let j = i + 1; j < x.length; j += 1) x[i]! -= upper[i]![j]! * x[j]!
    x[i]! /= upper[i]![i]!
  }
  return x
}

function solveTransposed(upper: readonly (readonly number[])[], right: readonly number[]): number[] {
  const x = [...right]
  for (let i = 0; i < x.length; i += 1) {
    for (let j = 0; j < i; j += 1) x[i]! -= upper[j]![i]! * x[j]!
    x[i]! /= upper[i]![i]!
  }
  return x
}

function inverseOf(upper: readonly (readonly number[])[]): number[][] {
  const columns = upper.map((_, k) => solve(upper, upper.map((_row, i) => (i === k ? 1 : 0))))
  return upper.map((_, i) => columns.map((column) => column[i]!))
}
