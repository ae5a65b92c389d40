import type { Place, Places, PlaceStatus } from '#model/setup.ts'
import { nearestClearX } from '#engine/setup/clear-x.ts'
import { firstClearY, forbidAt, laneOf } from '#engine/setup/clear-y.ts'
import { spareMm } from '#engine/setup/clearance.ts'
import type { Obstacles } from '#engine/setup/obstacles.ts'
import { baseOf, isNotCarried, isOffBalance, type BarInPlan } from '#engine/setup/support.ts'
import { movedMm, touchMm } from '#engine/setup/tolerance.ts'
import { plainXMm, travelOf, type Travel } from '#engine/setup/travel.ts'

/**
 * Where one or two bars may stand under the part. Two: the first at the fixed jaw, the second at the moving jaw; one
 * alone belongs in the middle.
 *
 * Each takes the y nearest to the one wanted at which some place along is clear; there, the place nearest to the middle
 * along (of equals the smaller y, then the smaller x). So moving along goes before moving across. `fouled`: the places
 * are then the plain ones, as if nothing were in the way, and `fouledHoles` says what is.
 *
 * While `betweenJawsMm` is unknown there are no places, and only an end cut can stop a bar. While `alongJawsMm` is
 * unknown the bars are centred, x is 0 and `base` null.
 *
 * @source SETUP-RULES GEOMETRY
 */
export function placesOf(obstacles: Obstacles, bars: readonly BarInPlan[]): Places {
  const { part, wishes } = obstacles, acrossMm = part.betweenJawsMm
  if (acrossMm !== null && isTooThick(obstacles, bars)) return { ...nowhere, status: 'too-thick' }
  const travels = travelsOf(obstacles, bars)
  if (travels === null) return { ...nowhere, status: 'bar-in-cut' }
  if (acrossMm === null) return { ...nowhere, status: bars.length === 1 ? 'in the middle' : 'at the jaws' }
  const found = bars.map((bar, k) => (bars.length === 1 ? placeInTheMiddle(obstacles, bar, travels[k]!) : placeAtJaw(obstacles, bar, travels[k]!, k === 1)))
  const clear = found.every((place) => place !== null) && keepGap(acrossMm, bars, found, wishes.gapMm)
  const places = clear ? found : bars.map((bar, k) => plainPlace(acrossMm, bars.length, k, bar, travels[k]!))
  return {
    status: clear ? worstMove(acrossMm, bars, places, travels) : 'fouled',
    places,
    fouledHoles: clear ? [] : fouledHolesOf(obstacles, bars, places),
    base: baseOf(part, bars, places),
    offBalance: isOffBalance(part, bars, places),
    notCarried: isNotCarried(part, bars, places, wishes.carryMm),
  }
}

/** Whether bars of these sizes across do not go under the part; never while `betweenJawsMm` is unknown. */
export function isTooThick({ part, wishes }: Obstacles, bars: readonly BarInPlan[]): boolean {
  const neededMm = bars.reduce((sum, bar) => sum + bar.acrossMm, (bars.length - 1) * wishes.gapMm)
  return part.betweenJawsMm !== null && neededMm > part.betweenJawsMm + touchMm
}

/** For each bar what is in its way at the plain place, as indexes into the list given. Nothing where there are no places. */
export function inTheWayAtPlain(obstacles: Obstacles, bars: readonly BarInPlan[]): readonly (readonly number[])[] {
  const acrossMm = obstacles.part.betweenJawsMm, travels = travelsOf(obstacles, bars)
  if (acrossMm === null || travels === null) return bars.map(() => [])
  return bars.map((bar, k) => fouledHolesOf(obstacles, [bar], [plainPlace(acrossMm, bars.length, k, bar, travels[k]!)]))
}

const nowhere = { places: [], fouledHoles: [], base: null, offBalance: false, notCarried: false } as const

function travelsOf(obstacles: Obstacles, bars: readonly BarInPlan[]): readonly Travel[] | null {
  const travels = bars.map((bar) => travelOf(obstacles, bar.lengthMm))
  return travels.every((travel) => travel !== null) ? travels : null
}

/** Where bar k of one or two is wanted across, in mm from the fixed jaw. */
export const wantedYMm = (partMm: number, bars: number, k: number, bar: BarInPlan): number =>
  bars === 1 ? (partMm - bar.acrossMm) / 2 : k === 0 ? 0 : partMm - bar.acrossMm

const plainPlace = (partMm: number, bars: number, k: number, bar: BarInPlan, travel: Travel): Place =>
  ({ xMm: plainXMm(travel), yMm: wantedYMm(partMm, bars, k, bar) })

/** As near to its jaw as it can; `back`: the moving jaw. */
function placeAtJaw(obstacles: Obstacles, bar: BarInPlan, travel: Travel, back: boolean): Place | null {
  const lane = laneOf(obstacles, bar, travel, back), freeMm = obstacles.part.betweenJawsMm! - bar.acrossMm
  const yMm = firstClearY(lane, 0, freeMm)
  if (yMm === null) return null
  const xMm = nearestClearX(forbidAt(lane, yMm), travel)
  return xMm === null ? null : { xMm, yMm: back ? freeMm - yMm : yMm }
}

/** As near to the middle as it can; under a round part nowhere else. */
function placeInTheMiddle(obstacles: Obstacles, bar: BarInPlan, travel: Travel): Place | null {
  const freeMm = Math.max(0, obstacles.part.betweenJawsMm! - bar.acrossMm), middleMm = freeMm / 2
  const mostMm = obstacles.part.shape === 'round' ? middleMm : freeMm
  const up = laneOf(obstacles, bar, travel, false)
  const above = firstClearY(up, middleMm, mostMm), below = firstClearY(laneOf(obstacles, bar, travel, true), middleMm, mostMm)
  if (above === null && below === null) return null
  const yMm = below !== null && (above === null || below <= above + touchMm) ? freeMm - below : above!
  const xMm = nearestClearX(forbidAt(up, yMm), travel)
  return xMm === null ? null : { xMm, yMm }
}

/** Two bars keep their distance across, whatever their places along. At their jaws they do: the width was judged before. */
function keepGap(partMm: number, bars: readonly BarInPlan[], [fixed, moving]: readonly Place[], gapMm: number): boolean {
  if (fixed === undefined || moving === undefined) return true
  const atJaws = fixed.yMm === wantedYMm(partMm, 2, 0, bars[0]!) && moving.yMm === wantedYMm(partMm, 2, 1, bars[1]!)
  return atJaws || moving.yMm - fixed.yMm - bars[0]!.acrossMm >= gapMm - touchMm
}

/** The worse of the bars decides; moving across is worse than moving along. */
function worstMove(partMm: number, bars: readonly BarInPlan[], places: readonly Place[], travels: readonly Travel[]): PlaceStatus {
  const single = bars.length === 1
  if (places.some((place, k) => Math.abs(place.yMm - wantedYMm(partMm, bars.length, k, bars[k]!)) > movedMm)) return single ? 'off the middle' : 'inboard'
  if (places.some((place, k) => Math.abs(place.xMm - travels[k]!.wantedMm) > movedMm)) return 'shifted'
  return single ? 'in the middle' : 'at the jaws'
}

/** The holes and through cuts that lack air to a bar at its place, as indexes into the list given, rising. */
function fouledHolesOf(obstacles: Obstacles, bars: readonly BarInPlan[], places: readonly Place[]): readonly number[] {
  const fouled: number[] = []
  for (const [k, index] of obstacles.index.entries()) if (places.some((place, b) => spareMm(obstacles, k, bars[b]!, place) < -touchMm)) fouled.push(index)
  return fouled
}
