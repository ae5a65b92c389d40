import type { Obstacles } from '#engine/setup/obstacles.ts'
import type { Travel } from '#engine/setup/travel.ts'
import type { Forbidden } from '#engine/setup/forbidden.ts'
import { clearToTheRight, furthestFrom } from '#engine/setup/clear-x.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** The obstacles as one bar meets them: seen from one jaw, for a bar of this size and travel. */
export type Lane = {
  readonly x0: Float64Array
  readonly x1: Float64Array
  readonly y0: Float64Array
  readonly y1: Float64Array
  readonly keepOut: Float64Array
  readonly acrossMm: number
  readonly lengthMm: number
  readonly travel: Travel
  /** Filled by `forbidAt`; what stands in it is of the last y asked. */
  readonly forbidden: Forbidden
}

/** `back`: y counted from the moving jaw. */
export function laneOf(obstacles: Obstacles, bar: { readonly acrossMm: number; readonly lengthMm: number }, travel: Travel, back: boolean): Lane {
  const { x0, x1, keepOut, forbidden } = obstacles
  const y0 = back ? obstacles.y0Back : obstacles.y0, y1 = back ? obstacles.y1Back : obstacles.y1
  return { x0, x1, y0, y1, keepOut, acrossMm: bar.acrossMm, lengthMm: bar.lengthMm, travel, forbidden }
}

/** Fills `lane.forbidden` with what is forbidden along for a bar whose near side is at `yMm`. */
export function forbidAt(lane: Lane, yMm: number): Forbidden {
  const { x0, x1, keepOut, lengthMm, forbidden } = lane
  let count = 0
  for (let k = 0; k < keepOut.length; k += 1) {
    const gapMm = gapAcrossMm(lane, k, yMm)
    if (gapMm >= keepOut[k]! - touchMm) continue
    const reachMm = gapMm <= 0 ? keepOut[k]! : Math.sqrt(keepOut[k]! ** 2 - gapMm ** 2)
    forbidden.of[count] = k
    forbidden.from[count] = x0[k]! - lengthMm - reachMm
    forbidden.to[count] = x1[k]! + reachMm
    count += 1
  }
  forbidden.count = count
  return forbidden
}

/**
 * The first y from `yMm` upwards, to `endMm`, at which the bar has a clear place somewhere along its travel.
 *
 * Where all of the travel is forbidden, a chain of overlapping intervals covers it. Nothing opens before one link of
 * this chain gives way: so the search goes from one such y to the next. Each link, once open, stays open (the reach of
 * an obstacle is concave in y), which bounds the steps; there are rarely more than a few.
 *
 * @returns null where there is none up to `endMm`
 */
export function firstClearY(lane: Lane, yMm: number, endMm: number): number | null {
  for (let at = yMm; at <= endMm + touchMm; ) {
    const forbidden = forbidAt(lane, at)
    if (clearToTheRight(forbidden, lane.travel.fromMm, lane.travel.toMm) !== null) return Math.min(at, endMm)
    at = Math.max(chainBreaksAt(lane, at), at + leastStepMm)
  }
  return null
}

/** mm. Takes the search past a link whose opening is lost in rounding (parts of a kilometre). */
const leastStepMm = 1e-9

/** The smallest y above `yMm` at which a link of the chain that covers the travel gives way. */
function chainBreaksAt(lane: Lane, yMm: number): number {
  const { x0, x1, lengthMm, travel, forbidden } = lane
  const { fromMm, toMm } = travel
  let link = furthestFrom(forbidden, fromMm), of = forbidden.of[link]!
  let breaksAt = Math.min(passesAt(lane, of), fallsTo(lane, of, x0[of]! - lengthMm - fromMm))
  while (forbidden.to[link]! <= toMm + touchMm) {
    const next = furthestFrom(forbidden, forbidden.to[link]!), nextOf = forbidden.of[next]!
    breaksAt = Math.min(breaksAt, passesAt(lane, nextOf), partAt(lane, yMm, of, nextOf))
    link = next
    of = nextOf
  }
  return Math.min(breaksAt, fallsTo(lane, of, toMm - x1[of]!))
}

/** Distance across between the bar and an obstacle's rectangle; negative where they overlap across. */
const gapAcrossMm = ({ y0, y1, acrossMm }: Lane, k: number, yMm: number): number => Math.max(y0[k]! - yMm - acrossMm, yMm - y1[k]!)

/** The y from which the bar is past the obstacle. */
const passesAt = ({ y1, keepOut }: Lane, k: number): number => y1[k]! + keepOut[k]!

/** The y, going up, at which an obstacle's reach along falls to `reachMm`; never sooner than its flank for a negative one. */
function fallsTo(lane: Lane, k: number, reachMm: number): number {
  return reachMm <= 0 ? passesAt(lane, k) : lane.y1[k]! + Math.sqrt(Math.max(0, lane.keepOut[k]! ** 2 - reachMm ** 2))
}

/**
 * The y, going up, at which the bar just fits between two obstacles: their reaches along sum to the room between them.
 * The sum is concave, above the room at `yMm`: below it at the end of the bracket means one crossing, found by halving.
 */
function partAt(lane: Lane, yMm: number, left: number, right: number): number {
  const roomMm = lane.x0[right]! - lane.lengthMm - lane.x1[left]!
  let low = yMm, high = Math.min(passesAt(lane, left), passesAt(lane, right))
  if (roomMm <= 0 || reachAlongMm(lane, left, high) + reachAlongMm(lane, right, high) > roomMm) return high
  for (let halvings = 0; halvings < 60 && high - low > 1e-12; halvings += 1) {
    const middle = (low + high) / 2
    if (reachAlongMm(lane, left, middle) + reachAlongMm(lane, right, middle) > roomMm) low = middle
    else high = middle
  }
  return high
}

function reachAlongMm(lane: Lane, k: number, yMm: number): number {
  const gapMm = gapAcrossMm(lane, k, yMm), keepOutMm = lane.keepOut[k]!
  return gapMm <= 0 ? keepOutMm : Math.sqrt(Math.max(0, keepOutMm ** 2 - gapMm ** 2))
}
