/** Index of the first value of an ascending list that is at least `value`; its length where there is none. */
export function firstAtLeast(sorted: ArrayLike<number>, value: number): number {
  let low = 0, high = sorted.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if (sorted[middle]! < value) low = middle + 1
    else high = middle
  }
  return low
}

/** Index of the first value of an ascending list that is above `value`; its length where there is none. */
export function firstAbove(sorted: ArrayLike<number>, value: number): number {
  let low = 0, high = sorted.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if (sorted[middle]! <= value) low = middle + 1
    else high = middle
  }
  return low
}

/**
 * Where a property ends on the way from a number that has it to one that has not: the last double that has it and the
 * first that has not, neighbours. It may change only once on the way.
 */
export function edgeBetween(inside: number, outside: number, has: (value: number) => boolean): readonly [last: number, first: number] {
  let last = inside, first = outside
  for (;;) {
    const middle = last + (first - last) / 2
    if (middle === last || middle === first) return [last, first]
    if (has(middle)) last = middle
    else first = middle
  }
}
