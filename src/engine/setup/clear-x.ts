import type { Forbidden } from '#engine/setup/forbidden.ts'
import type { Travel } from '#engine/setup/travel.ts'
import { plainXMm } from '#engine/setup/travel.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** Whether a left end lies inside a forbidden interval; its very ends are clear. */
export function isForbidden(forbidden: Forbidden, xMm: number): boolean {
  for (let k = 0; k < forbidden.count; k += 1) {
    if (forbidden.from[k]! < xMm - touchMm && forbidden.to[k]! > xMm + touchMm) return true
  }
  return false
}

/** The first clear left end from `xMm` to the right, up to `endMm`; null where there is none. */
export function clearToTheRight(forbidden: Forbidden, xMm: number, endMm: number): number | null {
  for (let at = xMm; ; ) {
    const blocked = furthestFrom(forbidden, at)
    if (blocked < 0) return at <= endMm + touchMm ? Math.min(at, endMm) : null
    at = forbidden.to[blocked]!
  }
}

/** Of the intervals that hold `xMm` inside them, the one that reaches furthest right; −1 where `xMm` is clear. */
export function furthestFrom({ count, from, to }: Forbidden, xMm: number): number {
  let furthest = -1
  for (let k = 0; k < count; k += 1) {
    if (from[k]! < xMm - touchMm && to[k]! > xMm + touchMm && (furthest < 0 || to[k]! > to[furthest]!)) furthest = k
  }
  return furthest
}

/** The clear left end nearest to the middle along; of two equally near the smaller. Null where all is forbidden. */
export function nearestClearX(forbidden: Forbidden, travel: Travel): number | null {
  const plainMm = plainXMm(travel)
  if (!isForbidden(forbidden, plainMm)) return plainMm
  const rightMm = clearToTheRight(forbidden, plainMm, travel.toMm)
  const leftMm = clearToTheLeft(forbidden, plainMm, travel.fromMm)
  if (leftMm === null || rightMm === null) return leftMm ?? rightMm ?? clearToTheRight(forbidden, travel.fromMm, travel.toMm)
  return travel.wantedMm - leftMm <= rightMm - travel.wantedMm + touchMm ? leftMm : rightMm
}

function clearToTheLeft(forbidden: Forbidden, xMm: number, endMm: number): number | null {
  const { count, from, to } = forbidden
  for (let at = xMm; ; ) {
    let next = at
    for (let k = 0; k < count; k += 1) if (from[k]! < at - touchMm && to[k]! > at + touchMm && from[k]! < next) next = from[k]!
    if (next === at) return at >= endMm - touchMm ? Math.max(at, endMm) : null
    at = next
  }
}
