import type { Finding } from '#model/finding.ts'
import { Refusal } from '#model/refusal.ts'
import { meanOf } from '#engine/numeric/total.ts'
import { refuseCoinciding, refuseFew, refuseMismatch, sameStationMm } from '#engine/inspect/refuse-readings.ts'
import { middleDeparture, middlesOf } from '#engine/inspect/shape.ts'

/** One bar read with face A up and, rolled about its long axis, with face B up; µm above the zero, stations in mm from the marked end. */
export type TurnOverQuestion = {
  readonly zeroMm: number
  readonly lengthMm: number
  readonly stationsMm: readonly number[]
  readonly faceAUpUm: readonly number[]
  readonly faceBUpUm: readonly number[]
}

export type TurnOverAnswer = {
  /** Bend of the centre line; positive: the middle toward face A. */
  readonly bowUm: number
  /** Crown (positive) or hollow of the local height. */
  readonly heightCrownUm: number
  /** Local heights above the zero, in order of the stations; null where the bar rocks on both faces. */
  readonly heightsUm: readonly number[] | null
  readonly parallelismUm: number | null
  /** Range with A up and with B up: what a single laying would have been taken for. */
  readonly asReadUm: readonly [number, number]
  readonly heightAtMiddleMm: number
  readonly rocksOnA: boolean
  readonly rocksOnB: boolean
  /** Largest difference of the heights found from either face; null where only one face tells them. */
  readonly checkUm: number | null
  readonly findings: readonly Finding[]
}

/** A line by its height at x = 0 and its slope; null where the bar rocks on the face and the line could lie either way. */
type Line = { readonly atZero: number; readonly perMm: number } | null

/** µm. Two edges of the hull that differ by less over the stations are one line: the rounding of readings. */
const sameLineUm = 1e-6

/**
 * Bend and height error apart, from the two layings.
 *
 * Rigid bar on a perfect plate, touching at stations only and resting on the two that touch on either side of its middle,
 * where its weight acts. The upper hull of the readings with B up is then the plate that A lay on. A bar whose middle is
 * over a corner of the hull rocks there; on both faces its taper and the rocking cannot be told apart.
 *
 * @throws Refusal `readings-do-not-match-stations`, `too-few-readings` below three stations, `stations-coincide`,
 * `size-not-positive`, `middle-outside-stations`
 * @source REVERSAL · TURN-OVER-MODEL
 */
export function turnOverOf(question: TurnOverQuestion): TurnOverAnswer {
  refuseUnfit(question)
  const order = question.stationsMm.map((_, i) => i).sort((i, j) => question.stationsMm[i]! - question.stationsMm[j]!)
  const xs = order.map((i) => question.stationsMm[i]!), a = order.map((i) => question.faceAUpUm[i]!), b = order.map((i) => question.faceBUpUm[i]!)
  const onA = hullOver(xs, a, question.lengthMm / 2), onB = hullOver(xs, b, question.lengthMm / 2)
  const heightsFrom = (line: NonNullable<Line>): number[] => xs.map((x, i) => a[i]! + b[i]! - line.atZero - line.perMm * x)
  const found = [onA, onB].flatMap((line) => (line ? [heightsFrom(line)] : []))
  const heightsUm = found.length === 0 ? null : xs.map((_, i) => meanOf(found.map((heights) => heights[i]!)))
  const middleUm = meanOf(middlesOf(xs.length).map((i) => heightsUm?.[i] ?? (a[i]! + b[i]!) / 2))
  return {
    bowUm: middleDeparture(xs, xs.map((_, i) => a[i]! - b[i]!)) / 2,
    heightCrownUm: middleDeparture(xs, xs.map((_, i) => a[i]! + b[i]!)),
    heightsUm, parallelismUm: heightsUm && rangeOf(heightsUm),
    asReadUm: [rangeOf(a), rangeOf(b)],
    heightAtMiddleMm: question.zeroMm + middleUm / 1000,
    rocksOnA: onA === null, rocksOnB: onB === null,
    checkUm: found.length < 2 ? null : Math.max(...xs.map((_, i) => Math.abs(found[0]![i]! - found[1]![i]!))),
    findings: found.length === 0 ? [{ code: 'taper-or-rocking', facts: {} }] : [],
  }
}

const rangeOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values)

/** The edge of the upper hull over the middle; null where two edges meet there. */
function hullOver(xs: readonly number[], ys: readonly number[], middle: number): Line {
  const lineThrough = (i: number, j: number): NonNullable<Line> => {
    const perMm = (ys[j]! - ys[i]!) / (xs[j]! - xs[i]!)
    return { perMm, atZero: ys[i]! - perMm * xs[i]! }
  }
  const hull = upperHull(xs, ys), right = hull.findIndex((i) => xs[i]! > middle + sameStationMm)
  const edge = lineThrough(hull[right - 1]!, hull[right]!), corner = hull[right - 1]!
  if (xs[corner]! < middle - sameStationMm) return edge
  const other = lineThrough(hull[right - 2]!, corner)
  const apart = Math.max(...[xs[0]!, xs.at(-1)!].map((x) => Math.abs(other.perMm - edge.perMm) * Math.abs(x - xs[corner]!)))
  return apart > sameLineUm ? null : edge
}

/** The stations that a line laid on from above would touch, from the left. */
function upperHull(xs: readonly number[], ys: readonly number[]): number[] {
  const hull: number[] = []
  xs.forEach((x, i) => {
    const under = (): boolean => {
      const [from, over] = hull.slice(-2) as [number, number]
      return hull.length > 1 && (ys[over]! - ys[from]!) * (x - xs[from]!) <= (ys[i]! - ys[from]!) * (xs[over]! - xs[from]!)
    }
    while (under()) hull.pop()
    hull.push(i)
  })
  return hull
}

function refuseUnfit({ stationsMm, faceAUpUm, faceBUpUm, lengthMm }: TurnOverQuestion): void {
  refuseMismatch(faceAUpUm, stationsMm.length, 'faceAUpUm')
  refuseMismatch(faceBUpUm, stationsMm.length, 'faceBUpUm')
  refuseFew(stationsMm, 3, 'stationsMm')
  refuseCoinciding(stationsMm, 'stationsMm')
  if (lengthMm <= sameStationMm) throw new Refusal('size-not-positive', { field: 'lengthMm', given: lengthMm, needed: { above: 0 } })
  const first = Math.min(...stationsMm), last = Math.max(...stationsMm)
  if (!(first < lengthMm / 2 - sameStationMm && last > lengthMm / 2 + sameStationMm)) {
    throw new Refusal('middle-outside-stations', { field: 'stationsMm', given: [first, last], needed: { middleMm: lengthMm / 2 } })
  }
}
