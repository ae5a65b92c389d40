import type { Rect } from '#model/part.ts'
import type { Place } from '#model/setup.ts'
import type { PartInPlan } from '#engine/setup/obstacles.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** A bar's size in the plan, as it stands. */
export type BarInPlan = { readonly acrossMm: number; readonly lengthMm: number }

/** The rectangle spanned by bars at their places, cut to the part; null without places or while a size of the part is unknown. */
export function baseOf(part: PartInPlan, bars: readonly BarInPlan[], places: readonly Place[]): Rect | null {
  const acrossMm = part.betweenJawsMm, alongMm = part.alongJawsMm
  if (acrossMm === null || alongMm === null || places.length === 0) return null
  return {
    x0Mm: Math.max(0, Math.min(...places.map((place) => place.xMm))),
    x1Mm: Math.min(alongMm, Math.max(...places.map((place, k) => place.xMm + bars[k]!.lengthMm))),
    y0Mm: Math.max(0, Math.min(...places.map((place) => place.yMm))),
    y1Mm: Math.min(acrossMm, Math.max(...places.map((place, k) => place.yMm + bars[k]!.acrossMm))),
  }
}

/**
 * Whether the middle of the part is not far enough inside the base: it has to reach a tenth of the part's size past
 * the middle to either side; across, over a single bar, the middle has only to lie in it.
 *
 * @source SETUP-RULES
 */
export function isOffBalance(part: PartInPlan, bars: readonly BarInPlan[], places: readonly Place[]): boolean {
  const acrossMm = part.betweenJawsMm, alongMm = part.alongJawsMm, base = baseOf({ ...part, alongJawsMm: alongMm ?? 0 }, bars, places)
  if (acrossMm === null || base === null) return false
  const reaches = (from: number, to: number, size: number, share: number) =>
    from <= size / 2 - share * size + touchMm && to >= size / 2 + share * size - touchMm
  const across = reaches(base.y0Mm, base.y1Mm, acrossMm, places.length === 1 ? 0 : 0.1)
  return !across || (alongMm !== null && !reaches(base.x0Mm, base.x1Mm, alongMm, 0.1))
}

/**
 * Whether a bar touches too little outside the hollows: on its middle line, `carryMm` on each half of the part's
 * length. A middle line on a hollow's edge is outside it. False while a size of the part is unknown.
 *
 * @source SETUP-RULES
 */
export function isNotCarried(part: PartInPlan, bars: readonly BarInPlan[], places: readonly Place[], carryMm: number): boolean {
  const alongMm = part.alongJawsMm
  if (part.hollows.length === 0 || alongMm === null) return false
  return places.some((place, k) => {
    const middleMm = place.yMm + bars[k]!.acrossMm / 2, endMm = place.xMm + bars[k]!.lengthMm
    const under = part.hollows.filter((hollow) => hollow.y0Mm < middleMm - touchMm && hollow.y1Mm > middleMm + touchMm)
    const touches = (fromMm: number, toMm: number) => lengthOutsideMm(under, Math.max(fromMm, place.xMm), Math.min(toMm, endMm))
    return touches(0, alongMm / 2) < carryMm - touchMm || touches(alongMm / 2, alongMm) < carryMm - touchMm
  })
}

/** How much of a stretch along lies outside all the hollows. */
function lengthOutsideMm(hollows: readonly Rect[], fromMm: number, toMm: number): number {
  let outsideMm = 0, reachedMm = fromMm
  for (const hollow of hollows.toSorted((a, b) => a.x0Mm - b.x0Mm)) {
    if (hollow.x0Mm > reachedMm) outsideMm += Math.max(0, Math.min(hollow.x0Mm, toMm) - reachedMm)
    reachedMm = Math.max(reachedMm, hollow.x1Mm)
  }
  return outsideMm + Math.max(0, toMm - reachedMm)
}
