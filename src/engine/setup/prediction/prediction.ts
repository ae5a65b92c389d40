import type { Finding } from '#model/finding.ts'
import { notForetold, notKnown } from '#engine/setup/prediction/not-known.ts'
import type { PredictionAsked } from '#engine/setup/prediction/asked.ts'
import { predictionFindings } from '#engine/setup/prediction/findings.ts'
import { supportFrom } from '#engine/setup/prediction/support-from.ts'
import { seatOnSupport, type SeatTold } from '#engine/setup/seat/seat-on-support.ts'
import { heldBy, type Support } from '#engine/setup/seat/support.ts'
import { type Closing, closingOn } from '#engine/setup/seat-elastic/closing.ts'
import { gainsOf } from '#engine/setup/tilt/gain.ts'
import { tiltInputFrom } from '#engine/setup/tilt/input.ts'
import { type Contributor, runTilt, type Spreading, type Tilted, type TiltQuestion, type TiltSource } from '#engine/setup/tilt/tilt.ts'

/** Thickness variation of the part in µm: right end less left, moving jaw less fixed. `ownSdUm`: without the shop's own scatter. */
export type Foretold = { readonly medianUm: number; readonly lowUm: number; readonly highUm: number; readonly meanUm: number; readonly sdUm: number; readonly ownSdUm: number }

/** What of the 95 % hangs on one contributor, and what its being measured by the shop's own instrument would take off; null: it cannot be. */
export type Contribution = { readonly of: Contributor['of']; readonly bar: string | null; readonly shareUm: number; readonly gainUm: number | null }

export type Coming =
  | { readonly status: 'predicted'; readonly mayRock: boolean; readonly along: Foretold; readonly across: Foretold; readonly overall: { readonly medianUm: number; readonly q95Um: number }
    readonly chanceWithin: number | null; readonly contributions: readonly Contribution[] }
  | { readonly status: Exclude<Tilted['status'], 'predicted'> }

/** The part free on its bars, or squared by the fixed jaw: how it lies, what it comes out as, what would close its gaps, and what is not in it. */
export type WayForetold = { readonly held: boolean; readonly seat: SeatTold; readonly coming: Coming; readonly closing: Closing | null; readonly findings: readonly Finding[]; readonly notKnown: readonly Finding[] }

/** `foretold`: free before held, both where nobody knows the side at the fixed jaw. */
export type Prediction =
  | { readonly status: 'foretold'; readonly ways: readonly WayForetold[] }
  | { readonly status: 'not foretold'; readonly because: readonly Finding[] }

/**
 * What the part will come out as on one choice of bars. Gives the part done, 0 to 1, every now and then; who does not ask for
 * the next one has stopped it.
 *
 * A part is cut level: where its underside lies high it comes out thin.
 */
export function* runPrediction(asked: PredictionAsked): Generator<number, Prediction> {
  const because = notForetold(asked)
  if (because.length > 0) return { status: 'not foretold', because }
  const support = supportFrom(asked), mode = heldBy(asked.side), kinds = mode === 'both' ? [false, true] : [mode === 'jaw'], ways: WayForetold[] = []
  for (const [at, held] of kinds.entries()) {
    const question = questionOn(support, held, asked), run = runTilt(question)
    let next = run.next()
    for (; next.done !== true; next = run.next()) yield (at + next.value / asked.trials) / kinds.length
    ways.push(wayFrom(support, held, asked, question, next.value))
    yield (at + 1) / kinds.length
  }
  return { status: 'foretold', ways }
}

/** Prediction at once; see `runPrediction`. */
export function predictionOf(asked: PredictionAsked): Prediction {
  const run = runPrediction(asked)
  for (;;) {
    const next = run.next()
    if (next.done === true) return next.value
  }
}

/** The shop's own scatter tilts whatever comes out as a whole: along through the heights, across through them or through the jaw's slope. */
function questionOn(support: Support, held: boolean, { could, scatter, toleranceUm, trials, seed }: PredictionAsked): TiltQuestion {
  const input = tiltInputFrom(support, held, could), { part: { lengthMm, widthMm }, spots } = input, none = spots.map(() => 0)
  const shop = (sdUm: number | null, onPoints: readonly number[], onSlope: number): TiltSource[] =>
    sdUm === null || sdUm === 0 ? [] : [{ by: { of: 'shop', bar: null }, spread: { dist: 'normal', sd: sdUm }, onPoints, onSlope, could: null }]
  return {
    ...input, toleranceUm, trials, seed,
    sources: [
      ...input.sources, ...shop(scatter.along.sdUm, spots.map(({ xMm }) => xMm / lengthMm), 0),
      ...shop(scatter.across.sdUm, held ? none : spots.map(({ yMm }) => yMm / widthMm), held ? 1 / widthMm : 0),
    ],
  }
}

function wayFrom(support: Support, held: boolean, asked: PredictionAsked, question: TiltQuestion, tilted: Tilted): WayForetold {
  const seat = seatOnSupport(support, held, asked.toleranceUm), closing = closingOn(support, held), coming = comingFrom(tilted, question, support, asked)
  return { held, seat, coming, closing, findings: predictionFindings({ seat, coming, closing }, question), notKnown: notKnown(asked, held) }
}

/** Enough to rank by: each contributor is a run of its own with the same draws. */
const rankTrials = 10_000

function comingFrom(tilted: Tilted, question: TiltQuestion, { bars }: Support, { scatter }: PredictionAsked): Coming {
  if (tilted.status !== 'predicted') return tilted
  const { mayRock, along, across, overall, chanceWithin } = tilted, known: TiltSource['could'] = { dist: 'normal', sd: 0 }
  const few = { ...question, trials: Math.min(question.trials, rankTrials) }, gains = gainsOf(few), shares = gainsOf({ ...few, sources: question.sources.map((source) => ({ ...source, could: known })) })
  return {
    status: 'predicted', mayRock, overall, chanceWithin, along: thickness(along, scatter.along.sdUm), across: thickness(across, scatter.across.sdUm),
    contributions: shares.map(({ of, bar, gainUm }) => ({
      of, bar: bar === null ? null : bars[bar]!.id, shareUm: Math.max(0, gainUm), gainUm: gains.find((one) => one.of === of && one.bar === bar)?.gainUm ?? null,
    })).sort((a, b) => (b.gainUm ?? 0) - (a.gainUm ?? 0) || b.shareUm - a.shareUm),
  }
}

const thickness = ({ meanUm, sdUm, medianUm, q025Um, q975Um }: Spreading, shopUm: number | null): Foretold =>
  ({ medianUm: -medianUm, lowUm: -q975Um, highUm: -q025Um, meanUm: -meanUm, sdUm, ownSdUm: Math.sqrt(Math.max(0, sdUm ** 2 - (shopUm ?? 0) ** 2)) })
