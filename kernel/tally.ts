/**
 * Counts values by size and sign, and adds their distances from `from` and the squares of those. A value is in bin
 * |value| · perUnit from the middle up, a negative one from there down; the first and the last bin hold all beyond.
 *
 * @param values  read in pairs: eight bytes more than an odd number of them, which are not counted
 * @param binOf   two bytes for each value, and for that one more: the bin it was counted in, written here
 * @param counts  a word for each bin, 2 · half of them
 * @param sums    Σ distance and Σ distance² of the even places and of the odd ones: four numbers
 */
export function tally(values: usize, count: i32, from: f64, perUnit: f64, half: i32, binOf: usize, counts: usize, sums: usize): void {
  const froms = f64x2.splat(from), perUnits = f64x2.splat(perUnit), halves = i32x4.splat(half), most = i32x4.splat(half - 1), end = values + (<usize>count << 3)
  let sum = v128.load(sums), squares = v128.load(sums, 16)
  for (let at = values; at < end; at += 16, binOf += 4) {
    const pair = v128.load(at), apart = f64x2.sub(pair, froms), isNegative = v128.shuffle<i32>(i32x4.shr_s(pair, 31), pair, 1, 3, 1, 3)
    const bins = i32x4.add(halves, v128.xor(isNegative, i32x4.min_s(most, i32x4.trunc_sat_f64x2_s_zero(f64x2.mul(f64x2.abs(pair), perUnits)))))
    const one = i32x4.extract_lane(bins, 0), two = i32x4.extract_lane(bins, 1)
    store<i32>(binOf, one | (two << 16))
    countIn(counts, one)
    if (at + 8 === end) {
      sum = f64x2.replace_lane(sum, 0, f64x2.extract_lane(f64x2.add(sum, apart), 0))
      squares = f64x2.replace_lane(squares, 0, f64x2.extract_lane(f64x2.add(squares, f64x2.mul(apart, apart)), 0))
      break
    }
    countIn(counts, two)
    sum = f64x2.add(sum, apart); squares = f64x2.add(squares, f64x2.mul(apart, apart))
  }
  v128.store(sums, sum); v128.store(sums, squares, 16)
}

function countIn(counts: usize, bin: i32): void {
  const at = counts + (bin << 2)
  store<i32>(at, load<i32>(at) + 1)
}

/** Moves the values whose bin is wanted (a byte of 1) to the front of the list, in their order; gives how many. */
export function gather(values: usize, count: i32, binOf: usize, wanted: usize): i32 {
  let to = values
  for (let at = values, end = values + (<usize>count << 3); at < end; at += 8, binOf += 2) {
    // few are
    if (load<u8>(wanted + load<u16>(binOf)) === 0) continue
    store<f64>(to, load<f64>(at))
    to += 8
  }
  return <i32>((to - values) >> 3)
}

/** How many values are not above a limit. */
export function countWithin(values: usize, count: i32, limit: f64): i32 {
  const limits = f64x2.splat(limit), end = values + (<usize>count << 3)
  let counts = i64x2.splat(0), at = values
  for (; at + 8 < end; at += 16) counts = i64x2.sub(counts, f64x2.le(v128.load(at), limits))
  return <i32>(i64x2.extract_lane(counts, 0) + i64x2.extract_lane(counts, 1)) + i32(at < end && load<f64>(at) <= limit)
}
