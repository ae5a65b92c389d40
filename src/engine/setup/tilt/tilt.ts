import { type Kernel, putBack, takeKernel } from '#engine/kernel/kernel.ts'
import { KernelLists } from '#engine/kernel/lists.ts'
import { bytesForTally, Tally } from '#engine/numeric/tally.ts'
import type { SeatPart } from '#engine/setup/seat/seat.ts'
import { loadsFor, type Carried, carriedOf } from '#engine/setup/tilt/loads.ts'
import type { Spot } from '#engine/setup/tilt/pivots.ts'
import { batchTrials, bytesForSlopes, slopesOf } from '#engine/setup/tilt/trials.ts'

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
 * @throws Refusal as `takeKernel`
 * @source JCGM-101 SEAT-MODEL
 */
export function* runTilt(question: TiltQuestion): Generator<number, Tilted> {
  const { trials } = question, status = carriedOf(question), inBatches = Math.ceil(trials / batchTrials) * batchTrials
  if (status !== 'carried') return { status }
  const kernel = takeKernel(bytesForSlopes(question) + 3 * bytesForTally(inBatches))
  try {
    const lists = new KernelLists(kernel), loads = loadsFor(question), tallies = [new Tally(lists, inBatches), new Tally(lists, inBatches), new Tally(lists, inBatches)] as const
    let start = 0
    for (const end of slopesOf(question, loads, lists, tallies[0].values, tallies[1].values)) {
      countTrials(kernel, question, tallies, start, end)
      start = end
      if (end < trials) yield end
    }
    return predictedFrom(question, tallies, loads.length > 1)
  } finally {
    putBack(kernel)
  }
}

type Tallies = readonly [along: Tally, across: Tally, sizes: Tally]

/** Slopes become tilts over the whole part, and are counted. */
function countTrials(kernel: Kernel, { part, trials }: TiltQuestion, [along, across, sizes]: Tallies, start: number, end: number): void {
  const at = 8 * start, counted = Math.min(end, trials)
  kernel.tilts(along.values.byteOffset + at, part.lengthMm, across.values.byteOffset + at, part.widthMm, sizes.values.byteOffset + at, (end - start) / 2)
  along.countTo(counted); across.countTo(counted); sizes.countTo(counted)
}

function predictedFrom({ trials, toleranceUm }: TiltQuestion, [along, across, sizes]: Tallies, mayRock: boolean): Tilted {
  const chanceWithin = toleranceUm === null ? null : sizes.countWithin(toleranceUm) / trials
  const [medianUm, q95Um] = sizes.quantiles([0.5, 0.95]).ofValues as [number, number]
  return { status: 'predicted', mayRock, along: spreadingOf(along), across: spreadingOf(across), overall: { medianUm, q95Um }, chanceWithin }
}

function spreadingOf(tally: Tally): Spreading {
  const { mean, sd } = tally.moments(), { ofValues, ofSizes } = tally.quantiles([0.025, 0.5, 0.975, 0.95], [0.95])
  const [q025Um, medianUm, q975Um, q95Um] = ofValues as [number, number, number, number]
  return { meanUm: mean, sdUm: sd, q025Um, medianUm, q975Um, q95Um, q95AbsUm: ofSizes[0]! }
}
