/** Bytes of a pair of numbers, one for each of two trials, and of the bracket of such a pair: both ends of a chord and its slope. */
const pairBytes: usize = 16, bracketBytes: usize = 80

/**
 * Seats of pairs of trials on two lines of places along the jaws. The load sees both lines as one: places x and heights z
 * of the one by its weight and of the other by its own, added. On the upper outline of all those sums the part lies, along
 * the edge over the load. Of a chord from left to right of the load the sum that stands highest above it takes the place of
 * the end on its own side, until none stands above: then the chord is that edge.
 *
 * Which sum is the highest cannot be foreseen: there is no branch on it, and of all pairs that are not done yet each is taken
 * one step further before the first comes again, so that none waits for the one before.
 *
 * @param heights    pair by pair, `row` bytes each, place by place, the first line up to `split`, each line from left to right
 * @param xs         of each place, twice; no two of a line alike
 * @param weightOne  the part of the load that the first line carries; `weightTwo` the rest
 * @param loadX      between the ends of those sums, and on none of them
 * @param perApart   1 / distance from the first line to the second
 * @param brackets   room for a bracket a pair; `open` for a word a pair
 * @param along      slopes, written here: a pair of numbers for each pair of trials; `across` the same
 */
export function settle(
  heights: usize, row: usize, xs: usize, split: i32, places: i32, weightOne: f64, weightTwo: f64, loadX: f64, perApart: f64,
  pairs: i32, brackets: usize, open: usize, along: usize, across: usize,
): void {
  const secondXs = xs + <usize>split * pairBytes, endXs = xs + <usize>places * pairBytes, secondZ = <usize>split * pairBytes, endZ = <usize>places * pairBytes
  const ones = f64x2.splat(weightOne), twos = f64x2.splat(weightTwo), loads = f64x2.splat(loadX), perAparts = f64x2.splat(perApart)
  const mostLeft = sum(ones, v128.load(xs), twos, v128.load(secondXs)), mostRight = sum(ones, v128.load(secondXs - pairBytes), twos, v128.load(endXs - pairBytes))
  for (let pair = 0, z = heights, at = brackets; pair < pairs; pair += 1, z += row, at += bracketBytes) {
    const leftZ = sum(ones, v128.load(z), twos, v128.load(z + secondZ)), rightZ = sum(ones, v128.load(z + secondZ - pairBytes), twos, v128.load(z + endZ - pairBytes))
    keep(at, mostLeft, leftZ, mostRight, rightZ)
    store<i32>(open + (<usize>pair << 2), pair)
  }
  for (let left = pairs; left > 0;) {
    let kept = 0
    for (let k = 0; k < left; k += 1) {
      const pair = load<i32>(open + (<usize>k << 2)), at = brackets + <usize>pair * bracketBytes
      const leftX = v128.load(at), leftZ = v128.load(at, 16), rightX = v128.load(at, 32), rightZ = v128.load(at, 48), slope = v128.load(at, 64)
      // the place of each line that stands highest above the slope
      let z = heights + <usize>pair * row, x = v128.load(xs), xOne = x, above = f64x2.sub(v128.load(z), f64x2.mul(slope, x)), aboveOne = above
      for (let next = xs + pairBytes; next < secondXs; next += pairBytes) {
        z += pairBytes; x = v128.load(next); above = f64x2.sub(v128.load(z), f64x2.mul(slope, x))
        xOne = v128.bitselect(x, xOne, f64x2.gt(above, aboveOne)); aboveOne = f64x2.pmax(aboveOne, above)
      }
      z += pairBytes; x = v128.load(secondXs); above = f64x2.sub(v128.load(z), f64x2.mul(slope, x))
      let xTwo = x, aboveTwo = above
      for (let next = secondXs + pairBytes; next < endXs; next += pairBytes) {
        z += pairBytes; x = v128.load(next); above = f64x2.sub(v128.load(z), f64x2.mul(slope, x))
        xTwo = v128.bitselect(x, xTwo, f64x2.gt(above, aboveTwo)); aboveTwo = f64x2.pmax(aboveTwo, above)
      }
      const newX = sum(ones, xOne, twos, xTwo), newZ = f64x2.add(sum(ones, aboveOne, twos, aboveTwo), f64x2.mul(slope, newX))
      const inside = v128.and(f64x2.gt(newX, leftX), f64x2.lt(newX, rightX)), onLeft = f64x2.lt(newX, loads)
      const newLeft = v128.and(inside, onLeft), newRight = v128.andnot(inside, onLeft)
      keep(at, v128.bitselect(newX, leftX, newLeft), v128.bitselect(newZ, leftZ, newLeft), v128.bitselect(newX, rightX, newRight), v128.bitselect(newZ, rightZ, newRight))
      v128.store(along + (<usize>pair << 4), slope)
      v128.store(across + (<usize>pair << 4), f64x2.mul(f64x2.sub(aboveTwo, aboveOne), perAparts))
      store<i32>(open + (<usize>kept << 2), pair)
      kept += i32(v128.any_true(inside))
    }
    left = kept
  }
}

function sum(ones: v128, one: v128, twos: v128, two: v128): v128 {
  return f64x2.add(f64x2.mul(ones, one), f64x2.mul(twos, two))
}

/** Both ends of a chord and its slope, which is ready when it is wanted again: a division takes long. */
function keep(bracket: usize, leftX: v128, leftZ: v128, rightX: v128, rightZ: v128): void {
  v128.store(bracket, leftX); v128.store(bracket, leftZ, 16); v128.store(bracket, rightX, 32); v128.store(bracket, rightZ, 48)
  v128.store(bracket, f64x2.div(f64x2.sub(rightZ, leftZ), f64x2.sub(rightX, leftX)), 64)
}
