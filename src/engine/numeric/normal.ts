const perRoot2Pi = 0.3989422804014327
/** Below this Φ is worked out from the middle, beyond it from the tail. */
const tailFrom = 2

/** Density of the standard normal. */
export const normalDensity = (z: number): number => perRoot2Pi * Math.exp(-0.5 * z * z)

/** Φ(z), the share of the standard normal below z; about 1e-14 relative, also far down the lower tail. @source AMS-55 (26.2.10, 26.2.14) */
export function normalBelow(z: number): number {
  if (Number.isNaN(z)) return NaN
  if (z < -tailFrom) return normalTail(-z)
  if (z > tailFrom) return 1 - normalTail(z)
  let term = z, sum = z
  for (let k = 3; Math.abs(term) > 1e-18 * Math.abs(sum); k += 2) { term *= (z * z) / k; sum += term }
  return 0.5 + normalDensity(z) * sum
}

/** Share beyond z > 0: the continued fraction φ(z)/(z + 1/(z + 2/(z + …))) from its far end. */
function normalTail(z: number): number {
  if (z > 39) return 0
  let under = z
  for (let k = 120; k > 0; k -= 1) under = z + k / under
  return normalDensity(z) / under
}

/**
 * z with Φ(z) = p. Relative error about 1e-16; −∞ at 0, ∞ at 1, NaN outside.
 *
 * @source AS-241 (PPND16)
 */
export function normalQuantile(p: number): number {
  const fromMiddle = p - 0.5
  if (Math.abs(fromMiddle) <= 0.425) {
    const r = 0.180625 - fromMiddle * fromMiddle
    return (fromMiddle * polynomial(middleOver, r)) / polynomial(middleUnder, r)
  }
  const share = fromMiddle < 0 ? p : 1 - p
  if (!(share > 0)) return share === 0 ? Math.sign(fromMiddle) * Infinity : NaN
  const r = Math.sqrt(-Math.log(share))
  const size = r <= 5 ? polynomial(tailOver, r - 1.6) / polynomial(tailUnder, r - 1.6) : polynomial(farOver, r - 5) / polynomial(farUnder, r - 5)
  return Math.sign(fromMiddle) * size
}

const polynomial = (coefficients: readonly number[], x: number): number => coefficients.reduceRight((sum, c) => sum * x + c, 0)

const middleOver = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946,
  45921.95393154987, 67265.7709270087, 33430.57558358813, 2509.0809287301227,
]
const middleUnder = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751,
  21213.794301586597, 39307.89580009271, 28729.085735721943, 5226.495278852854,
]
const tailOver = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045,
  1.2704582524523684, 0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
]
const tailUnder = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851,
  0.14810397642748008, 0.015198666563616457, 0.0005475938084995345, 1.0507500716444169e-9,
]
const farOver = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487,
  0.026532189526576124, 0.0012426609473880784, 0.000027115555687434876, 2.0103343992922881e-7,
]
const farUnder = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615,
  0.0007868691311456133, 0.000018463183175100548, 1.421511758316446e-7, 2.0442631033899397e-15,
]
