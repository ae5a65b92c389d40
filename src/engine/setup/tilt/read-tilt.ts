import { Refusal } from '#model/refusal.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { longestUm, mostPoints, readSeatPart, refuseNegative, refusePart, refuseSeat } from '#engine/setup/seat/read-part.ts'
import { readSupport, refuseSupport } from '#engine/setup/seat/read-support.ts'
import { heldBy, type Support } from '#engine/setup/seat/support.ts'
import { type Could, normalOr, tiltInputFrom } from '#engine/setup/tilt/input.ts'
import type { Spread, TiltQuestion, TiltSource } from '#engine/setup/tilt/tilt.ts'

/** Where nobody says otherwise. */
const commonTrials = 200_000, commonSeed = 1
const mostTrials = 10_000_000, mostSeed = 2 ** 32 - 1

type Errors = { readonly error: Spread; readonly slope: number | null }
type PointCase = { readonly xMm: number; readonly yMm: number; readonly nominalUm: number; readonly bar: number; readonly error: Spread }
/** Bare points with the bars they belong to, as drawn. */
type BareCase = { readonly part: TiltQuestion['part']; readonly jawSlope: Errors | null; readonly bars: readonly Spread[]; readonly points: readonly PointCase[] }
export type TiltCase = { readonly on: BareCase | Support; readonly could: Could; readonly trials: number; readonly seed: number; readonly toleranceUm: number | null }

export function readTilt(raw: RawObject): TiltCase {
  const run = {
    trials: raw.countOr('trials', commonTrials), seed: raw.countOr('seed', commonSeed), toleranceUm: raw.numberOr('toleranceUm', null, longestUm),
    could: raw.objectOr('could', readCould, { barUm: null, stationUm: null, slopeUmPerMm: null, bedUm: null, liftUm: null }),
  }
  return { ...run, on: !raw.has('points') && raw.has('part') && raw.has('bars') && !raw.has('mode') ? readSupport(raw) : readBare(raw) }
}

function readBare(raw: RawObject): BareCase {
  const mode = raw.word('mode', ['free', 'jaw'] as const)
  return {
    part: raw.object('part', readSeatPart)!,
    jawSlope: mode === 'jaw' ? raw.object('jawSlope', (slope) => ({ slope: slope.number('nominalUmPerMm', longestUm), error: slope.objectOr('error', readSpread, none) })) : null,
    bars: raw.list('bars', readSpread, mostPoints),
    points: raw.list('points', (point) => ({
      xMm: point.number('xMm'), yMm: point.number('yMm'), nominalUm: point.number('nominalUm', longestUm), bar: point.count('bar'), error: point.objectOr('error', readSpread, none),
    }), mostPoints),
  }
}

const none: Spread = { dist: 'none' }

function readSpread(raw: RawObject): Spread {
  const dist = raw.word('dist', ['none', 'normal', 'rect'] as const)
  if (dist === 'normal') return { dist, sd: raw.number('sd', longestUm) }
  return dist === 'rect' ? { dist, half: raw.number('half', longestUm) } : none
}

const readCould = (raw: RawObject): Could => ({
  barUm: raw.numberOr('barUm', null, longestUm), stationUm: raw.numberOr('stationUm', null, longestUm), slopeUmPerMm: raw.numberOr('slopeUmPerMm', null, longestUm),
  bedUm: raw.numberOr('bedUm', null, longestUm), liftUm: raw.numberOr('liftUm', null, longestUm),
})

/**
 * The question of a case; two, free before held, where nobody knows what squares the part.
 *
 * @throws Refusal `size-not-positive`, `uncertainty-negative`, `too-few-bars`, `bar-off-part`, `too-few-points`, `wish-negative`, `no-such-bar`, `too-few-trials`, `too-many`
 */
export function questionsFrom({ on, could, ...run }: TiltCase): readonly TiltQuestion[] {
  for (const [key, value] of Object.entries(could)) if (value !== null) refuseNegative(value, `could.${key}`)
  if ('points' in on) {
    refuseBare(on, run)
    return [{ ...run, ...heightsOf(on, could) }]
  }
  refuseSupport(on)
  refuseRun(run)
  const mode = heldBy(on.side)
  return (mode === 'both' ? [false, true] : [mode === 'jaw']).map((held) => ({ ...run, ...tiltInputFrom(on, held, could) }))
}

function heightsOf({ part, jawSlope, bars, points }: BareCase, could: Could): Pick<TiltQuestion, 'part' | 'spots' | 'nominalUm' | 'jawSlopeUmPerMm' | 'sources'> {
  const sources: readonly TiltSource[] = [
    ...bars.map((spread, bar): TiltSource => ({ by: { of: 'bar', bar }, spread, onPoints: points.map((point) => Number(point.bar === bar)), onSlope: 0, could: normalOr(could.barUm) })),
    ...points.map(({ error, bar }, i): TiltSource => ({ by: { of: 'bar', bar }, spread: error, onPoints: points.map((_, k) => Number(k === i)), onSlope: 0, could: normalOr(could.stationUm) })),
    ...(jawSlope === null ? [] : [{ by: { of: 'jaw-slope', bar: null }, spread: jawSlope.error, onPoints: points.map(() => 0), onSlope: 1, could: normalOr(could.slopeUmPerMm) } satisfies TiltSource]),
  ]
  return { part, spots: points, nominalUm: points.map(({ nominalUm }) => nominalUm), jawSlopeUmPerMm: jawSlope?.slope ?? null, sources }
}

type Run = Pick<TiltQuestion, 'trials' | 'seed' | 'toleranceUm'>

function refuseBare({ part, jawSlope, bars, points }: BareCase, run: Run): void {
  refusePart(part)
  const refuseSpread = (spread: Spread, field: string) => { if (spread.dist !== 'none') refuseNegative(spread.dist === 'normal' ? spread.sd : spread.half, `${field}.${spread.dist === 'normal' ? 'sd' : 'half'}`) }
  bars.forEach((spread, b) => refuseSpread(spread, `bars[${b}]`))
  points.forEach(({ error }, i) => refuseSpread(error, `points[${i}].error`))
  if (jawSlope !== null) refuseSpread(jawSlope.error, 'jawSlope.error')
  refuseSeat(points.length, run.toleranceUm)
  points.forEach(({ bar }, i) => { if (bar >= bars.length) throw new Refusal('no-such-bar', { field: `points[${i}].bar`, given: bar, needed: { below: bars.length } }) })
  refuseRun(run)
}

function refuseRun({ trials, seed, toleranceUm }: Run): void {
  refuseSeat(1, toleranceUm)
  if (trials < 1) throw new Refusal('too-few-trials', { field: 'trials', given: trials, needed: { least: 1 } })
  if (trials > mostTrials) throw new Refusal('too-many', { field: 'trials', given: trials, needed: mostTrials })
  if (seed > mostSeed) throw new Refusal('too-many', { field: 'seed', given: seed, needed: mostSeed })
}
