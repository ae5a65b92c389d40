/**
 * Heights (or slopes) of pairs of trials, mixed from draws: base + one · factorOne + two · factorTwo.
 *
 * @param mixes  a row of five numbers for each place: base, where the one draws begin, their factor, where the two, their factor
 * @param into   places one after the other, `step` bytes from a pair to the next
 */
export function mixTwo(mixes: usize, places: i32, into: usize, step: usize, pairs: i32): void {
  for (let place = 0; place < places; place += 1, mixes += 40, into += 16) {
    const base = f64x2.splat(load<f64>(mixes)), factorOne = f64x2.splat(load<f64>(mixes, 16)), factorTwo = f64x2.splat(load<f64>(mixes, 32))
    let one = <usize>load<f64>(mixes, 8), two = <usize>load<f64>(mixes, 24)
    for (let pair = 0, at = into; pair < pairs; pair += 1, at += step, one += 16, two += 16)
      v128.store(at, f64x2.add(f64x2.add(base, f64x2.mul(factorOne, v128.load(one))), f64x2.mul(factorTwo, v128.load(two))))
  }
}

/** into += draws · factor, for pairs of trials at one place. */
export function mixMore(into: usize, step: usize, pairs: i32, draws: usize, factor: f64): void {
  const factors = f64x2.splat(factor)
  for (let pair = 0, at = into; pair < pairs; pair += 1, at += step, draws += 16)
    v128.store(at, f64x2.add(v128.load(at), f64x2.mul(factors, v128.load(draws))))
}

/** into = the higher of itself and another place, for pairs of trials. */
export function raise(into: usize, step: usize, pairs: i32, other: usize): void {
  for (let pair = 0, at = into, from = other; pair < pairs; pair += 1, at += step, from += step)
    v128.store(at, f64x2.pmax(v128.load(at), v128.load(from)))
}
