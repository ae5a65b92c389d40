import { heightOf, type HeightWindow, ladderTo, rungsIn } from '#engine/rack/heights/ladder.ts'

/** The height to make for a window: the highest whole step in it; where none lies in it, its middle to a hundredth of a step. */
export function heightToMake(window: HeightWindow, stepMm: number): number {
  const ladder = ladderTo(stepMm, stepMm, [window]), { first, last } = rungsIn(ladder, window)
  if (first <= last) return heightOf(ladder, last)
  const fineMm = stepMm / 100
  return Math.round(Math.round((window[0] + window[1]) / 2 / fineMm) * fineMm * 1e9) / 1e9
}
