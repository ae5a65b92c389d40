import { heightOf, isInside, type HeightWindow, type Ladder, rungsIn } from '#engine/rack/heights/ladder.ts'

/** Heights to own besides those owned, rising, and for each window the heights that serve it: one, or two on each other. */
export type HeightSet = { readonly count: number; readonly heights: readonly number[]; readonly served: readonly (readonly number[])[] }

/** `ranges`: how far each height may be moved, the others kept, with every window still served. */
export type SingleHeights = HeightSet & { readonly ranges: readonly HeightWindow[] }

/**
 * The fewest heights of the ladder so that every window holds one of them, or an owned one; null where a window holds
 * neither.
 *
 * Always the highest rung of the window that ends first: windows that force a new one do not overlap, so there cannot be
 * fewer.
 *
 * @source STABBING
 */
export function fewestSingle(ladder: Ladder, windows: readonly HeightWindow[], owned: readonly number[]): SingleHeights | null {
  const servedBy: (number | null)[] = windows.map((window) => owned.find((height) => isInside(ladder, window, height)) ?? null)
  const open = windows.flatMap((window, k) => (servedBy[k] === null ? [{ k, ...rungsIn(ladder, window) }] : [])).sort((a, b) => a.last - b.last)
  const rungs: number[] = []
  for (const { k, first, last } of open) {
    if (first > last) return null
    if (rungs.length === 0 || rungs.at(-1)! < first) rungs.push(last)
    servedBy[k] = heightOf(ladder, rungs.at(-1)!)
  }
  const heights = rungs.map((rung) => heightOf(ladder, rung))
  return {
    count: heights.length, heights, served: servedBy.map((height) => [height!]),
    ranges: heights.map((height) => commonOf(windows.filter((_, k) => servedBy[k] === height))),
  }
}

const commonOf = (windows: readonly HeightWindow[]): HeightWindow =>
  [Math.max(...windows.map(([low]) => low)), Math.min(...windows.map(([, high]) => high))]
