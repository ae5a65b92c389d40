import { gapsOf, heightOf, type Plane } from '#engine/setup/seat/plane.ts'
import { seatOf, type Tilt, tiltOf } from '#engine/setup/seat/seat.ts'
import { balanceOf, type ElasticQuestion, reachOf } from '#engine/setup/seat-elastic/springs.ts'

type Range = readonly [leastUm: number, mostUm: number]

/**
 * `seated`: plane, forces and gaps are settled. `rocks`: all of the load is carried on one line (or spot), so the forces are
 * settled and the tilt is free within the ranges. `on-edge`: the same over the edge of what carries it, with nothing to stop
 * it on the outer side. `jawMomentNMm`: Σ f y − F y of the load, which the fixed jaw takes.
 */
export type Elastic =
  | (Tilt & { readonly status: 'seated'; readonly plane: Plane; readonly heightUnderLoadUm: number; readonly contacts: readonly number[]; readonly forcesN: readonly number[]; readonly gapsUm: readonly number[]
    readonly jawMomentNMm?: number })
  | { readonly status: 'rocks'; readonly heightUnderLoadUm: number; readonly contacts: readonly number[]; readonly forcesN: readonly number[]; readonly tiltAlongUmRange: Range; readonly tiltAcrossUmRange: Range
    readonly jawMomentNMm?: number }
  | { readonly status: 'on-edge'; readonly heightUnderLoadUm: number; readonly contacts: readonly number[]; readonly forcesN: readonly number[]; readonly jawMomentNMm?: number }
  | { readonly status: 'tips' }
  | { readonly status: 'collinear' }

/** As a part of the whole force: below it a spring carries nothing. */
const carries = 1e-10

/**
 * The seat of a rigid part on springs that only push; what the tilt is free to do, where it is free, is the rigid seat's rocking on
 * the points as they are pressed down.
 *
 * @source SEAT-MODEL
 */
export function elasticOf(question: ElasticQuestion): Elastic {
  const reach = reachOf(question)
  if (reach === 'tips' || reach === 'collinear') return { status: reach }
  const { part, springs, forceN, jawSlopeUmPerMm } = question, { plane, forcesN: rough } = balanceOf(question)
  const forcesN = rough.map((force) => (force > carries * forceN ? force : 0)), contacts = forcesN.flatMap((force, i) => (force > 0 ? [i] : []))
  const moment = jawSlopeUmPerMm === null ? {} : { jawMomentNMm: springs.reduce((sum, { yMm }, i) => sum + forcesN[i]! * yMm, -forceN * part.loadMm[1]) }
  const settled = { heightUnderLoadUm: heightOf(plane, ...part.loadMm), contacts, forcesN, ...moment }
  if (reach === 'on-edge') return { status: 'on-edge', ...settled }
  const pressed = springs.map((spring, i) => (forcesN[i]! > 0 ? { ...spring, zUm: heightOf(plane, spring.xMm, spring.yMm) } : spring))
  const seat = seatOf({ part, points: pressed, jawSlopeUmPerMm })
  if (seat.status === 'tie') {
    const rangeOf = (tilts: readonly number[]): Range => [Math.min(...tilts), Math.max(...tilts)]
    return { status: 'rocks', ...settled, tiltAlongUmRange: rangeOf(seat.facetsAtLoad.map((way) => way.tiltAlongUm)), tiltAcrossUmRange: rangeOf(seat.facetsAtLoad.map((way) => way.tiltAcrossUm)) }
  }
  return { status: 'seated', plane, ...settled, gapsUm: gapsOf(plane, springs).map((gapUm, i) => (forcesN[i]! > 0 ? 0 : Math.max(0, gapUm))), ...tiltOf(plane, part) }
}
