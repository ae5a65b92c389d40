import { totalOf } from '#engine/numeric/total.ts'
import { quantilesOf } from '#engine/numeric/quantiles.ts'
import type { SeatPart } from '#engine/setup/seat/seat.ts'
import { loadsFor, type Carried, carriedOf } from '#engine/setup/tilt/loads.ts'
import type { Spot } from '#engine/setup/tilt/pivots.ts'
import { slopesOf } from '#engine/setup/tilt/trials.ts'

/** How an error may fall: not at all, normally with a standard deviation, or anywhere within ± half. In the unit of what it is the error of. */
export type Spread = { readonly dist: 'none' } | { readonly dist: 'normal'; readonly sd: number } | { readonly dist: 'rect'; readonly half: number }

export const contributors = ['bar', 'jaw-slope', 'bed', 'jaw-lift', 'shop'] as const
/** Whose uncertainty it is; `bar` counts the bars from 0. `shop`: what its parts came out as beyond everything foretold. */
export type Contributor = { readonly of: (typeof contributors)[number]; readonly bar: number | null }

/**
 * One error, drawn once for each trial: what of it each point gets, and what the slope across that the jaw gives.
 * `could`: how well the shop's own instrument could know it; null where nobody said.
 */
export type TiltSource = { readonly by: Contributor; readonly spread: Spread; readonly onPoints: readonly number[]; readonly onSlope: number; readonly could: Spread | null }

export type TiltQuestion = {
  readonly part: SeatPart
  readonly spots: readonly Spot[]
  readonly nominalUm: readonly number[]
  /** Null: free. */
  readonly jawSlopeUmPerMm: number | null
  readonly sources: readonly TiltSource[]
  readonly trials: number
  readonly seed: number
  readonly toleranceUm: number | null
}

export type Spreading = { readonly meanUm: number; readonly sdUm: number; readonly q025Um: number; readonly medianUm: number; readonly q975Um: number; readonly q95Um: number; readonly q95AbsUm: number }

/**
 * Tilt along and across over the whole part, and `overall`: from the highest to the lowest corner, |along| + |across|.
 * `chanceWithin`: the share of trials in which that is within the tolerance. `mayRock`: the load stands over a line through
 * two points; half the trials fall to either side.
 */
export type Tilted =
  | { readonly status: 'predicted'; readonly mayRock: boolean; readonly along: Spreading; readonly across: Spreading; readonly overall: { readonly medianUm: number; readonly q95Um: number }; readonly chanceWithin: number | null }
  | { readonly status: Exclude<Carried, 'carried'> }

/** Trials done at a time before a worker may report or stop. */
const reportEvery = 20_480

/** Prediction of the tilt; see `runTilt`. */
export function tiltOf(question: TiltQuestion): Tilted {
  const run = runTilt(question)
  for (;;) {
    const next = run.next()
    if (next.done === true) return next.value
  }
}

/**
 * Monte Carlo of the seat: in each trial every error is drawn, the rigid seat found, its tilt kept. Gives the number of trials
 * done every now and then; who does not ask for the next one has stopped it.
 *
 * The same on every machine: nothing but + − × ÷, √ and tables.
 *
 * @source JCGM-101 SEAT-MODEL
 */
export function* runTilt(question: TiltQuestion): Generator<number, Tilted> {
  const { part, trials, toleranceUm } = question, status = carriedOf(question)
  if (status !== 'carried') return { status }
  const along = new Float64Array(trials), across = new Float64Array(trials), loads = loadsFor(question)
  let next = reportEvery, t = 0
  for (const done of slopesOf(question, loads, along, across)) {
    for (; t < done; t += 1) { along[t]! *= part.lengthMm; across[t]! *= part.widthMm }
    if (done >= next && done < trials) { yield done; next += reportEvery }
  }
  const told = { along: spreadingOf(along), across: spreadingOf(across) }
  // in the place of the tilts along: a third list of fresh memory takes longer than the sums
  const sizes = along
  let within = 0
  for (t = 0; t < trials; t += 1) {
    const size = Math.abs(along[t]!) + Math.abs(across[t]!)
    sizes[t] = size
    if (toleranceUm !== null && size <= toleranceUm) within += 1
  }
  const [medianUm, q95Um] = quantilesOf(sizes, [0.5, 0.95]).ofValues as [number, number]
  return {
    status: 'predicted', mayRock: loads.length > 1, ...told, overall: { medianUm, q95Um }, chanceWithin: toleranceUm === null ? null : within / trials,
  }
}

function spreadingOf(values: Float64Array): Spreading {
  const { mean, sd } = momentsOf(values), { ofValues, ofSizes } = quantilesOf(values, [0.025, 0.5, 0.975, 0.95], [0.95])
  const [q025Um, medianUm, q975Um, q95Um] = ofValues as [number, number, number, number]
  return { meanUm: mean, sdUm: sd, q025Um, medianUm, q975Um, q95Um, q95AbsUm: ofSizes[0]! }
}

/** Mean and standard deviation, in two passes and by thousands, so that many small values are not lost in a large sum. */
function momentsOf(values: Float64Array): { readonly mean: number; readonly sd: number } {
  const mean = sumFrom(values, 0, 1) / values.length
  return { mean, sd: values.length < 2 ? 0 : Math.sqrt(sumFrom(values, mean, 2) / (values.length - 1)) }
}

/** Σ (value − from), or of its square. */
function sumFrom(values: Float64Array, from: number, power: 1 | 2): number {
  const sums: number[] = []
  for (let start = 0; start < values.length; start += 1000) {
    const end = Math.min(values.length, start + 1000)
    let sum = 0
    if (power === 1) for (let t = start; t < end; t += 1) sum += values[t]! - from
    else for (let t = start; t < end; t += 1) { const apart = values[t]! - from; sum += apart * apart }
    sums.push(sum)
  }
  return totalOf(sums)
}
