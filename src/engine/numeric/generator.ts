/** State of xoshiro128**: four unsigned words, never all 0. Changed by every draw. */
export type Generator = Uint32Array<ArrayBuffer>

/**
 * A generator whose draws are the same on every machine.
 *
 * @param seed  unsigned 32-bit; the state is the first two outputs of SplitMix64 from it, low words first
 * @source XOSHIRO (test vectors in fixtures/shop)
 */
export function generatorFrom(seed: number): Generator {
  const [first, second] = splitMix64(BigInt(seed >>> 0), 2) as [bigint, bigint]
  return Uint32Array.of(...[first, first >> 32n, second, second >> 32n].map((word) => Number(word & 0xffffffffn)))
}

/** The next unsigned 32-bit word. */
export function drawWord(generator: Generator): number {
  const s1 = generator[1]!, times5 = Math.imul(s1, 5)
  const word = Math.imul((times5 << 7) | (times5 >>> 25), 9)
  const s2 = generator[2]! ^ generator[0]!, s3 = generator[3]! ^ s1
  generator[1] = s1 ^ s2
  generator[0] = generator[0]! ^ s3
  generator[2] = s2 ^ (s1 << 9)
  generator[3] = (s3 << 11) | (s3 >>> 21)
  return word >>> 0
}

/** A multiple of 2⁻⁵³ from 0 up to but not 1, all alike likely; takes two words, the high one first. */
export function drawUnit(generator: Generator): number {
  const high = drawWord(generator) >>> 5
  return (high * 67_108_864 + (drawWord(generator) >>> 6)) / 9_007_199_254_740_992
}

/** Outputs of SplitMix64 from a 64-bit state. @source XOSHIRO */
export function splitMix64(state: bigint, count: number): bigint[] {
  const low64 = (value: bigint): bigint => BigInt.asUintN(64, value)
  return Array.from({ length: count }, (_, k) => {
    let z = low64(state + BigInt(k + 1) * 0x9e3779b97f4a7c15n)
    z = low64((z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n)
    z = low64((z ^ (z >> 27n)) * 0x94d049bb133111ebn)
    return z ^ (z >> 31n)
  })
}
