/** The next word of xoshiro128** from a state of four words. @source XOSHIRO */
export function drawWord(state: usize): u32 {
  const s1 = load<u32>(state, 4), s2 = load<u32>(state, 8) ^ load<u32>(state), s3 = load<u32>(state, 12) ^ s1
  store<u32>(state, s1 ^ s2, 4)
  store<u32>(state, load<u32>(state) ^ s3)
  store<u32>(state, s2 ^ (s1 << 9), 8)
  store<u32>(state, rotl<u32>(s3, 11), 12)
  return rotl<u32>(s1 * 5, 7) * 9
}

/** A multiple of 2⁻⁵³ from 0 up to but not 1; takes two words, the high one first. */
export function drawUnit(state: usize): f64 {
  const high = drawWord(state) >>> 5
  return (<f64>high * 67_108_864 + <f64>(drawWord(state) >>> 6)) * (1.0 / 9_007_199_254_740_992)
}
