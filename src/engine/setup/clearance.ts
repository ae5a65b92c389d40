import type { Place } from '#model/setup.ts'
import type { Obstacles } from '#engine/setup/obstacles.ts'
import type { BarInPlan } from '#engine/setup/support.ts'

/** How much further from a bar at its place obstacle k is than it must be, in mm; negative: it lacks air. */
export function spareMm({ x0, x1, y0, y1, keepOut }: Obstacles, k: number, bar: BarInPlan, { xMm, yMm }: Place): number {
  const alongMm = Math.max(x0[k]! - xMm - bar.lengthMm, xMm - x1[k]!), acrossMm = Math.max(y0[k]! - yMm - bar.acrossMm, yMm - y1[k]!)
  // inside one another along and across: there is no distance, only an overlap
  const distanceMm = alongMm > 0 && acrossMm > 0 ? Math.hypot(alongMm, acrossMm) : Math.max(alongMm, acrossMm)
  return distanceMm - keepOut[k]!
}

/** Least air between a bar at its place and a hole or through cut, in mm; Infinity where there is none. */
export function leastAirMm(obstacles: Obstacles, bar: BarInPlan, place: Place): number {
  let least = Infinity
  for (const k of obstacles.index.keys()) least = Math.min(least, spareMm(obstacles, k, bar, place))
  return least + obstacles.wishes.holeAirMm
}
