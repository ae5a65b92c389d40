import type { Finding } from '#model/finding.ts'
import type { Sum } from '#model/sum.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { type Gain, gainsOf } from '#engine/setup/tilt/gain.ts'
import { questionsFrom, readTilt } from '#engine/setup/tilt/read-tilt.ts'
import { type Tilted, tiltOf, type TiltQuestion } from '#engine/setup/tilt/tilt.ts'

type Told = Tilted & { readonly gain: readonly Gain[]; readonly findings: readonly Finding[]; readonly sum: readonly Sum[] }
/** `ifHeld`: the prediction if the fixed jaw squares the part, beside that of a free one, where nobody knows which. */
export type TiltAnswer = Told & Ignored & { readonly ifHeld?: Told }

/** The calculation `tilt`: bare `points` with their errors, or `bars` as they stand. @throws Refusal with a malformed code, then as `questionsFrom` */
export function answerTilt(raw: unknown): TiltAnswer {
  const { value, ignored } = readCase(raw, readTilt), [first, second] = questionsFrom(value).map(told) as [Told, Told?]
  return { ...first, ...(second === undefined ? {} : { ifHeld: second }), ignored }
}

function told(question: TiltQuestion): Told {
  const tilted = tiltOf(question), gain = tilted.status === 'predicted' ? gainsOf(question) : []
  return { ...tilted, gain, findings: findingsOf(tilted, gain, question), sum: sumOf(tilted, question) }
}

function findingsOf(tilted: Tilted, [first]: readonly Gain[], { part, toleranceUm }: TiltQuestion): readonly Finding[] {
  if (tilted.status !== 'predicted') {
    if (tilted.status === 'tips') return [{ code: 'seat-tips', facts: { xMm: part.loadMm[0], yMm: part.loadMm[1] } }]
    return [{ code: tilted.status === 'collinear' ? 'seat-collinear' : 'on-edge', facts: {} }]
  }
  const { overall, chanceWithin, mayRock } = tilted
  return [
    { code: 'part-will-tilt', facts: { medianUm: overall.medianUm, q95Um: overall.q95Um } },
    ...(chanceWithin !== null && overall.q95Um > toleranceUm! ? [{ code: 'tolerance-missed', facts: { chance: chanceWithin, toleranceUm } }] : []),
    ...(mayRock ? [{ code: 'load-over-line', facts: {} }] : []),
    ...(first !== undefined && first.gainUm > 0 ? [{ code: 'measure-first', facts: { of: first.of, bar: first.bar, gainUm: first.gainUm } }] : []),
  ]
}

function sumOf(tilted: Tilted, { trials, seed, toleranceUm }: TiltQuestion): readonly Sum[] {
  if (tilted.status !== 'predicted') return []
  const sources = ['JCGM-101', 'SEAT-MODEL'], { along, across, overall, chanceWithin } = tilted
  return [
    { formula: 'tilt-drawn-along', result: { name: 'along.meanUm', value: along.meanUm }, inputs: { trials, seed }, sources },
    { formula: 'tilt-drawn-across', result: { name: 'across.meanUm', value: across.meanUm }, inputs: { trials, seed }, sources },
    { formula: 'tilt-overall', result: { name: 'overall.q95Um', value: overall.q95Um }, inputs: { trials, seed }, sources },
    ...(chanceWithin === null ? [] : [{ formula: 'tilt-chance', result: { name: 'chanceWithin', value: chanceWithin }, inputs: { trials, seed, toleranceUm }, sources }]),
  ]
}
