import type { TopWindow } from '#engine/setup/row/tight-windows.ts'

/**
 * Whether pairs can be given to vises in one way only, in all the windows together.
 *
 * A second way takes a pair nobody uses, or exchanges pairs; and where any pairs can be exchanged, those of two vises next
 * to one another in the order of their beds can, because their windows only move up.
 */
export function isOnlyWay(windows: readonly TopWindow[], pairs: number): boolean {
  const [first] = windows
  return windows.every((window) => window.picks.every((at, k) => at === first!.picks[k]) && isOnlyWayIn(window, pairs))
}

function isOnlyWayIn({ from, to, picks }: TopWindow, pairs: number): boolean {
  const used = new Set(picks), spare = new Int32Array(pairs + 1)
  for (let i = 0; i < pairs; i += 1) spare[i + 1] = spare[i]! + (used.has(i) ? 0 : 1)
  return picks.every((at, k) => {
    const takesSpare = spare[to[k]! + 1]! > spare[from[k]!]!
    const exchanges = k > 0 && picks[k - 1]! >= from[k]! && at <= to[k - 1]!
    return !takesSpare && !exchanges
  })
}
