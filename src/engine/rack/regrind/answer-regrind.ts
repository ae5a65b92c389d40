import { Refusal } from '#model/refusal.ts'
import type { Sum } from '#model/sum.ts'
import { longestUm, mostBars, mostStations } from '#engine/inspect/reading-limits.ts'
import { type GrindingStage, type Regrind, regrindOf, type RegrindQuestion, type WornBar } from '#engine/rack/regrind/regrind.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import type { RawObject } from '#engine/read/raw-object.ts'

const mostStages = 20, mostWindows = 1000, mostSparkOut = 1000
/** µm. Nothing finer is counted. */
const leastUm = 1e-6

/**
 * The calculation `regrind`: one raw case in, its answer out.
 *
 * @throws Refusal with a malformed code, then `size-not-positive` (infeeds, step), `wish-negative` (clean-up, takes), `value-not-allowed` (faces),
 * `too-many` (spark-out), `too-few-stages`, then as `regrindOf`
 */
export function answerRegrind(raw: unknown): Regrind & Ignored & { readonly sum: readonly Sum[] } {
  const { value, ignored } = readCase(raw, (object) => ({
    bars: object.list('bars', readBar, mostBars), cleanUpUm: object.number('cleanUpUm', longestUm), stepUm: object.numberOr('stepUm', null, longestUm),
    faces: object.countOr('faces', 1), datumFace: object.has('datumFace') ? object.word('datumFace', ['A', 'B']) : null, stages: object.list('stages', readStage, mostStages), sparkOut: object.count('sparkOut'),
    windowsMm: object.pairsOr('windowsMm', null, undefined, mostWindows),
  }))
  refuseUnfit(value)
  const question: RegrindQuestion = { ...value, faces: value.faces === 2 ? 2 : 1 }, regrind = regrindOf(question)
  return { ...regrind, ignored, sum: regrindSums(question, regrind) }
}

const readBar = (raw: RawObject): WornBar => ({ id: raw.text('id'), heightsMm: raw.numbers('heightsMm', undefined, mostStations), ...(raw.has('lowUm') ? { lowUm: raw.number('lowUm', longestUm) } : {}) })

/** The first stage takes what remains, whatever it says; the others have to say. */
const readStage = (raw: RawObject): GrindingStage =>
  ({ infeedUm: raw.number('infeedUm', longestUm), takesUm: raw.path.endsWith('[0]') ? raw.numberOr('takesUm', 0, longestUm) : raw.number('takesUm', longestUm) })

function refuseUnfit({ bars, cleanUpUm, stepUm, faces, stages, sparkOut }: Omit<RegrindQuestion, 'faces'> & { readonly faces: number }): void {
  const sizes = [...stages.map(({ infeedUm }, k) => [`stages[${k}].infeedUm`, infeedUm] as const), ...(stepUm === null ? [] : [['stepUm', stepUm] as const])]
  for (const [field, given] of sizes) if (given < leastUm) throw new Refusal('size-not-positive', { field, given, needed: { above: 0 } })
  const wishes = [['cleanUpUm', cleanUpUm] as const, ...bars.map(({ lowUm = 0 }, k) => [`bars[${k}].lowUm`, lowUm] as const), ...stages.map(({ takesUm }, k) => [`stages[${k}].takesUm`, takesUm] as const)]
  for (const [field, given] of wishes) if (given < 0) throw new Refusal('wish-negative', { field, given, needed: 0 })
  if (faces !== 1 && faces !== 2) throw new Refusal('value-not-allowed', { field: 'faces', given: faces, needed: [1, 2] })
  if (sparkOut > mostSparkOut) throw new Refusal('too-many', { field: 'sparkOut', given: sparkOut, needed: mostSparkOut })
  if (stages.length === 0) throw new Refusal('too-few-stages', { field: 'stages', given: 0, needed: 1 })
}

/** How the new height, what comes off and the passes come about. */
export function regrindSums({ bars, cleanUpUm, stepUm, faces, sparkOut }: RegrindQuestion, { newHeightMm, totalUm, passes, passesTotal }: Regrind): readonly Sum[] {
  const allLower = bars.every(({ lowUm = 0 }) => lowUm > 0)
  const readings = bars.flatMap(({ id, heightsMm, lowUm = 0 }) => heightsMm.map((mm) => ({ id, mm: mm + (allLower ? 0 : lowUm / 1000) })))
  const lowest = readings.reduce((low, one) => (one.mm < low.mm ? one : low)), highestMm = readings.reduce((most, { mm }) => Math.max(most, mm), -Infinity)
  const sources = ['REGRIND-RULES']
  return [
    { formula: stepUm === null ? 'regrind-height' : 'regrind-height-step', result: { name: 'newHeightMm', value: newHeightMm }, inputs: { bar: lowest.id, lowestMm: lowest.mm, faces, cleanUpUm, ...(stepUm === null ? {} : { stepUm }) }, sources },
    { formula: 'regrind-total', result: { name: 'totalUm', value: totalUm }, inputs: { highestMm, newHeightMm }, sources },
    { formula: 'regrind-passes', result: { name: 'passesTotal', value: passesTotal }, inputs: { cutting: passes.reduce((sum, count) => sum + count, 0), faces, sparkOut }, sources },
  ]
}
