/** Tilts over the whole part from slopes, and their sizes together, for pairs of trials. */
export function tilts(along: usize, length: f64, across: usize, width: f64, sizes: usize, pairs: i32): void {
  const lengths = f64x2.splat(length), widths = f64x2.splat(width)
  for (let at: usize = 0, end = <usize>pairs << 4; at < end; at += 16) {
    const onLength = f64x2.mul(lengths, v128.load(along + at)), onWidth = f64x2.mul(widths, v128.load(across + at))
    v128.store(along + at, onLength); v128.store(across + at, onWidth)
    v128.store(sizes + at, f64x2.add(f64x2.abs(onLength), f64x2.abs(onWidth)))
  }
}
