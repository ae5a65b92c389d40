import type { Way } from '#model/wishes.ts'
import { firstAtLeast } from '#engine/numeric/sorted.ts'
import type { Room, Want } from '#engine/rack/coverage/wants.ts'
import { type Footings, stands, widestMm } from '#engine/setup/footings.ts'
import type { RackIndex } from '#engine/setup/index-rack.ts'
import type { SeatList } from '#engine/setup/seat-list.ts'
import { mayBeStacked } from '#engine/setup/stacking.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/**
 * Whether anything of the rack carries a part at a height it asks for; `no-place`: the height is there, its bars find no place clear of the
 * cuts; `too-thick`: its bars do not go under.
 */
export type Serving = 'served' | 'no-place' | 'too-thick' | 'none'

/** Whether bars find a place; null: that is not looked at. */
export type IsPlaced = ((footing: number) => boolean) | null

/**
 * Looks for one footing that serves, by its seat, the match of its bars, whether they go under the part and, where that is looked at, find a place; bars
 * in work or gone are not in the lists.
 *
 * @source SETUP-RULES
 */
export function servingOf({ footings, bySeat, stacksFor }: RackIndex, ways: readonly Way[], want: Want, isPlaced: IsPlaced): Serving {
  if (ways.includes('bed') && want.lowMm <= touchMm && want.highMm >= -touchMm) return 'served'
  let best: Serving = 'none'
  for (const stand of stands) {
    if (!ways.includes(stand) || (want.room.round && stand !== 'single')) continue
    const serving = inList(footings, bySeat[stand].all, want, isPlaced)
    if (serving === 'served') return serving
    best = nearer(best, serving)
  }
  if (!ways.includes('stack') || want.room.round) return best
  return nearer(best, stackServes(footings, stacksFor(want.room.stackRatio).all, want, isPlaced))
}

const byNearness: readonly Serving[] = ['served', 'no-place', 'too-thick', 'none']
const nearer = (a: Serving, b: Serving): Serving => (byNearness.indexOf(b) < byNearness.indexOf(a) ? b : a)

/** Footings in the order of their seats. */
type BySeat = { readonly footings: Int32Array; readonly seatsMm: Float64Array }

function inList(footings: Footings, { footings: list, seatsMm }: BySeat, { lowMm, highMm, room }: Want, isPlaced: IsPlaced): Serving {
  let best: Serving = 'none'
  for (let at = firstAtLeast(seatsMm, lowMm - touchMm); at < list.length && seatsMm[at]! <= highMm + touchMm; at += 1) {
    const k = list[at]!
    if (!mayBeTaken(footings, k, room)) continue
    if (!isUnder(footings, k, room)) best = nearer(best, 'too-thick')
    else if (isPlaced === null || isPlaced(k)) return 'served'
    else best = 'no-place'
  }
  return best
}

/** Two pairs on each other whose seats add up; each of them has to be matched. */
function stackServes(footings: Footings, { footings: list, seatsMm }: Pick<SeatList, 'footings' | 'seatsMm'>, { lowMm, highMm, room }: Want, isPlaced: IsPlaced): Serving {
  let best: Serving = 'none'
  for (let at = 0; at < list.length && seatsMm[at]! <= highMm + touchMm; at += 1) {
    const lower = list[at]!, leastMm = lowMm - seatsMm[at]! - touchMm, mostMm = highMm - seatsMm[at]! + touchMm
    if (!mayBeTaken(footings, lower, room)) continue
    for (let over = firstAtLeast(seatsMm, leastMm); over < list.length && seatsMm[over]! <= mostMm; over += 1) {
      const upper = list[over]!
      if (!mayBeTaken(footings, upper, room) || !mayBeStacked(footings, lower, upper)) continue
      if (!isUnder(footings, lower, room)) best = nearer(best, 'too-thick')
      else if (isPlaced === null || isPlaced(lower)) return 'served'
      else best = 'no-place'
    }
  }
  return best
}

const mayBeTaken = (footings: Footings, k: number, room: Room): boolean =>
  isKnown(footings, k, room) && !(Math.abs(footings.differUm[k]!) > room.matchUm + 1000 * touchMm) && isCandidate(footings, k, room)

/** Lying flat on a thickness that is only marked serves drilling alone. */
const isKnown = ({ stand, differUm }: Footings, k: number, { drilling }: Room): boolean => stand[k] !== flat || drilling || !Number.isNaN(differUm[k]!)

/** One bar is a way only where two like it do not go under, and under a round part. */
const isCandidate = (footings: Footings, k: number, { acrossMm, gapMm, round }: Room): boolean =>
  footings.second[k]! >= 0 || round || (acrossMm !== null && 2 * widestMm(footings, k) + gapMm > acrossMm + touchMm)

function isUnder({ second, acrossFirstMm, acrossSecondMm }: Footings, k: number, { acrossMm, gapMm }: Room): boolean {
  if (acrossMm === null) return true
  return (second[k]! < 0 ? acrossFirstMm[k]! : acrossFirstMm[k]! + acrossSecondMm[k]! + gapMm) <= acrossMm + touchMm
}

const flat = stands.indexOf('lying flat')
