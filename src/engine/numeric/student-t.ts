import { normalQuantile } from '#engine/numeric/normal.ts'

/**
 * t with P(T ≤ t) = p for Student's distribution with `dof` degrees of freedom, which need not be whole; Infinity gives the normal.
 *
 * About 1e-12 relative from 0.1 degrees of freedom. −∞ at 0, ∞ at 1, NaN outside and for dof not above 0.
 *
 * @source AMS-55 (26.5.8, 26.7.1, 26.7.5)
 */
export function studentQuantile(p: number, dof: number): number {
  if (!(dof > 0)) return NaN
  if (p === 0.5 || !(p > 0 && p < 1)) return normalQuantile(p)
  if (dof > nearlyNormalFrom) return nearNormal(normalQuantile(p), dof)
  const middle = Math.abs(p - 0.5)
  const size = middle < 0.25 ? solve((t) => middleArea(t, dof), middle, dof, 1) : solve((t) => tailArea(t, dof), Math.min(p, 1 - p), dof, -1)
  return p < 0.5 ? -size : size
}

/** Degrees of freedom from which the series about the normal is exact to the last digits. */
const nearlyNormalFrom = 1e5

/** t from z by the series in 1/dof. */
function nearNormal(z: number, dof: number): number {
  if (dof === Infinity) return z
  const q = z * z, r = 1 / dof
  return z * (1 + r * ((q + 1) / 4 + r * (((5 * q + 16) * q + 3) / 96 + (r * (((3 * q + 19) * q + 17) * q - 15)) / 384)))
}

/** t > 0 at which an area that rises (or falls, −1) with t reaches a value: Newton on the logarithms, kept between bounds. */
function solve(area: (t: number) => number, wanted: number, dof: number, rises: 1 | -1): number {
  let low = -700, high = 700, s = 0
  for (let turn = 0; turn < 200; turn += 1) {
    const t = Math.exp(s), reached = area(t), excess = Math.log(reached / wanted)
    if (excess * rises < 0) low = s; else high = s
    const slope = (rises * studentDensity(t, dof) * t) / reached
    const newton = s - excess / slope
    const next = newton > low && newton < high ? newton : (low + high) / 2
    if (Math.abs(next - s) < 1e-15 * Math.max(1, Math.abs(s))) return Math.exp(next)
    s = next
  }
  return Math.exp(s)
}

/** Area from 0 to t > 0. */
function middleArea(t: number, dof: number): number {
  return nearTheEnd(t, dof) ? 0.5 - betaShare(dof / (dof + t * t), dof / 2, 0.5, t, dof) / 2 : betaShare((t * t) / (dof + t * t), 0.5, dof / 2, t, dof) / 2
}

/** Area beyond t > 0. */
function tailArea(t: number, dof: number): number {
  return nearTheEnd(t, dof) ? betaShare(dof / (dof + t * t), dof / 2, 0.5, t, dof) / 2 : 0.5 - betaShare((t * t) / (dof + t * t), 0.5, dof / 2, t, dof) / 2
}

/** Where the continued fraction runs faster from the tail than from the middle. */
const nearTheEnd = (t: number, dof: number): boolean => t * t * (dof + 2) > 3 * dof

/** Incomplete beta function I_x(a, b) for a or b one half, its power factor written through the density of t. */
function betaShare(x: number, a: number, b: number, t: number, dof: number): number {
  // x^a (1 − x)^b / B(a, b) = density(t) · t, whichever of a and b is the half.
  return (studentDensity(t, dof) * t * betaFraction(x, a, b)) / a
}

/** Continued fraction of the incomplete beta function, by the modified Lentz method. */
function betaFraction(x: number, a: number, b: number): number {
  let c = 1, d = 1 / notZero(1 - ((a + b) * x) / (a + 1)), fraction = d
  for (let m = 1; m < 10_000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    d = 1 / notZero(1 + even * d); c = notZero(1 + even / c); fraction *= d * c
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    d = 1 / notZero(1 + odd * d); c = notZero(1 + odd / c)
    fraction *= d * c
    if (Math.abs(d * c - 1) < 1e-16) break
  }
  return fraction
}

const notZero = (value: number): number => (Math.abs(value) < 1e-300 ? 1e-300 : value)

/** Density of Student's t. */
function studentDensity(t: number, dof: number): number {
  return (gammaRatio(dof / 2) / Math.sqrt(dof * Math.PI)) * Math.exp(-0.5 * (dof + 1) * Math.log1p((t * t) / dof))
}

/** Γ(z + ½) / Γ(z) for z > 0: the series for large z, brought down by the recurrence. */
function gammaRatio(z: number): number {
  if (z < 20) return (gammaRatio(z + 1) * z) / (z + 0.5)
  const r = 1 / z
  return Math.sqrt(z) * (1 + r * (-1 / 8 + r * (1 / 128 + r * (5 / 1024 + r * (-21 / 32768 + r * (-399 / 262144 + r * (869 / 4194304 + r * (39325 / 33554432))))))))
}
