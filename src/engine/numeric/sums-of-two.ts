import { firstAbove, firstAtLeast } from '#engine/numeric/sorted.ts'

/**
 * The least sum, not below `from`, of one number of each of two ascending lists; Infinity where there is none. The first
 * sum found up to `enough` will do, which in long lists saves going through them.
 */
export function leastSumFrom(a: ArrayLike<number>, b: ArrayLike<number>, from: number, enough: number): number {
  if (a.length === 0 || b.length === 0) return Infinity
  let least = Infinity, k = firstAtLeast(b, from - a[0]!)
  while (k < b.length && a[0]! + b[k]! < from) k += 1
  for (let i = 0; i < a.length; i += 1) {
    while (k > 0 && a[i]! + b[k - 1]! >= from) k -= 1
    if (k < b.length && a[i]! + b[k]! < least) least = a[i]! + b[k]!
    if (least <= enough) break
  }
  return least
}

/** The largest sum, not above `to`, likewise; −Infinity where there is none. The first found from `enough` up will do. */
export function mostSumTo(a: ArrayLike<number>, b: ArrayLike<number>, to: number, enough: number): number {
  if (a.length === 0 || b.length === 0) return -Infinity
  let most = -Infinity, k = firstAbove(b, to - a[0]!)
  while (k < b.length && a[0]! + b[k]! <= to) k += 1
  for (let i = 0; i < a.length; i += 1) {
    while (k > 0 && a[i]! + b[k - 1]! > to) k -= 1
    if (k > 0 && a[i]! + b[k - 1]! > most) most = a[i]! + b[k - 1]!
    if (most >= enough) break
  }
  return most
}
