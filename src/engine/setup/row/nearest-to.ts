import type { TopWindow } from '#engine/setup/row/tight-windows.ts'
import { topUm, type Tops } from '#engine/setup/row/tops.ts'

/** Tops above the low end of the window, in the order of the vises asked about, and their sum of squares about the height. */
export type Nearest = { readonly topsUm: readonly number[]; readonly um2: number }

/**
 * The tops in a window with the smallest sum of squares about a height, for some vises and all pairs that nobody has
 * taken; null where they do not go round.
 *
 * The lower the bed the higher the pair, so vise after vise takes its pair above the last one's, and of all ways to do so
 * only the best up to each pair has to be remembered.
 *
 * @param vises     rising positions in `tops`, at least one
 * @param heightUm  above the low end of the window
 */
export function nearestTo(tops: Tops, window: TopWindow, vises: readonly number[], taken: ReadonlySet<number>, heightUm: number): Nearest | null {
  const rows: Row[] = []
  for (const k of vises) {
    const row = rowFor(tops, window, k, taken, heightUm, rows.at(-1))
    if (row === null) return null
    rows.push(row)
  }
  const topsUm: number[] = []
  for (let r = rows.length - 1, before = Infinity; r >= 0; r -= 1) {
    const row = rows[r]!, at = row.best[Math.min(before - row.from, row.best.length) - 1]!
    topsUm.unshift(topUm(tops, vises[r]!, at) - window.lowUm)
    before = at
  }
  return { topsUm, um2: rows.at(-1)!.um2.at(-1)! }
}

/** For each pair from `from` on: the least sum with this vise on it or on one below, and the pair it is then on. */
type Row = { readonly from: number; readonly um2: Float64Array; readonly best: Int32Array }

function rowFor(tops: Tops, window: TopWindow, k: number, taken: ReadonlySet<number>, heightUm: number, last: Row | undefined): Row | null {
  const from = window.from[k]!, count = window.to[k]! - from + 1
  if (count < 1) return null
  const um2 = new Float64Array(count), best = new Int32Array(count), aboutUm = window.lowUm + heightUm
  let least = Infinity, leastAt = -1
  for (let at = from; at < from + count; at += 1) {
    const before = taken.has(at) ? Infinity : sumBefore(last, at), sum = before === Infinity ? Infinity : before + (topUm(tops, k, at) - aboutUm) ** 2
    if (sum < least) { least = sum; leastAt = at }
    um2[at - from] = least
    best[at - from] = leastAt
  }
  return least === Infinity ? null : { from, um2, best }
}

const sumBefore = (last: Row | undefined, at: number): number => {
  if (last === undefined) return 0
  return at <= last.from ? Infinity : last.um2[Math.min(at - last.from, last.um2.length) - 1]!
}
