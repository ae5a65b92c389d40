import { firstClearY, laneOf } from '#engine/setup/clear-y.ts'
import type { Obstacles } from '#engine/setup/obstacles.ts'
import { placesOf } from '#engine/setup/places.ts'
import type { BarInPlan } from '#engine/setup/support.ts'
import { touchMm } from '#engine/setup/tolerance.ts'
import { travelOf } from '#engine/setup/travel.ts'

/** What would stand at a jaw that a bar does not reach: one as long but so thin, or as thick but so short. Null where none would. */
export type Instead = { readonly thickestMm: number | null; readonly longestMm: number | null }

/**
 * The thickest and the longest bar, in place of one of two, that has a clear place at its jaw; both to 0.1 µm, never more
 * than is clear. The shorter one has to be a quarter of the part's length (common practice, no source) and to leave the
 * part on balance and carried.
 *
 * @param k  the bar: 0 at the fixed jaw, 1 at the moving jaw
 */
export function atJawInstead(obstacles: Obstacles, bars: readonly BarInPlan[], k: 0 | 1): Instead {
  const bar = bars[k]!, isClear = (other: BarInPlan) => isClearAtJaw(obstacles, other, k === 1)
  const thickestMm = largest(bar.acrossMm, (acrossMm) => isClear({ ...bar, acrossMm })), longestMm = largest(bar.lengthMm, (lengthMm) => isClear({ ...bar, lengthMm }))
  const isLongEnough = longestMm !== null && longestMm >= leastShare * (obstacles.part.alongJawsMm ?? 0) && carries(obstacles, bars.map((one, at) => (at === k ? { ...bar, lengthMm: longestMm } : one)))
  return { thickestMm, longestMm: isLongEnough ? longestMm : null }
}

function isClearAtJaw(obstacles: Obstacles, bar: BarInPlan, back: boolean): boolean {
  const travel = travelOf(obstacles, bar.lengthMm)
  return travel !== null && firstClearY(laneOf(obstacles, bar, travel, back), 0, 0) !== null
}

function carries(obstacles: Obstacles, bars: readonly BarInPlan[]): boolean {
  const { status, offBalance, notCarried } = placesOf(obstacles, bars)
  return status !== 'fouled' && status !== 'too-thick' && status !== 'bar-in-cut' && !offBalance && !notCarried
}

/** The largest size below `mm` that is clear, rounded down; sizes below it are clear as well. */
function largest(mm: number, isClear: (mm: number) => boolean): number | null {
  if (!isClear(leastMm)) return null
  let clear = leastMm, not = mm
  while (not - clear > touchMm) {
    const middle = (clear + not) / 2
    if (isClear(middle)) clear = middle
    else not = middle
  }
  return Math.floor(clear / rasterMm + 0.01) * rasterMm
}

/** Of the part's length. */
const leastShare = 0.25

/** mm. Nothing thinner or shorter is a bar. */
const leastMm = 0.5

/** mm. Coarse enough for touching to count as clear, finer than anyone sets a bar. */
const rasterMm = 1e-4
