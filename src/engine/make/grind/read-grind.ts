import type { GrindingRow } from '#model/cutting-data.ts'
import { Refusal } from '#model/refusal.ts'
import { longestUm } from '#engine/inspect/reading-limits.ts'
import type { GrindQuestion, GrindStage } from '#engine/make/grind/grinding-job.ts'
import { worked } from '#model/make-plan.ts'
import { removalOf } from '#engine/make/grind/removal.ts'
import type { Wheel } from '#engine/make/grind/sweep.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { refuseNotPositive } from '#engine/setup/seat/read-part.ts'

const mostBars = 1000, mostStages = 20, mostSparkOut = 1000, mostRpm = 1e6, mostPercent = 10, mostPasses = 1_000_000
/** µm. Nothing finer is counted. */
const leastUm = 1e-6

/** For a small toolroom grinder; common practice, no source. @source GRIND-RULES */
export const usualStages: readonly GrindStage[] = [{ infeedUm: 10, takesUm: 0 }, { infeedUm: 2, takesUm: 20 }]
export const usualSparkOut = 3
const usualCleanUpMm = 0.05, usualSkinMm = 0.05

const works = ['plain carbon', 'alloy', 'tool steel'] as const

/** @param rows  what a stiff machine takes at the most, by work */
export function readGrind(raw: RawObject, rows: readonly GrindingRow[]): GrindQuestion {
  const work = raw.wordOr('work', works, 'tool steel'), hardened = raw.yesNoOr('hardened', true), row = rows.find((one) => one.work === work && one.hardened === hardened) ?? null
  return {
    sides: raw.wordOr('sides', worked, 'edges'), bars: raw.countOr('bars', 2), heightMm: raw.number('heightMm'), thicknessMm: raw.number('thicknessMm'), lengthMm: raw.number('lengthMm'),
    bowMm: raw.number('bowMm'), cleanUpMm: raw.numberOr('cleanUpMm', usualCleanUpMm), skinMm: raw.numberOr('skinMm', hardened ? usualSkinMm : 0), growthPercent: raw.numberOr('growthPercent', 0, mostPercent),
    allowanceMm: raw.numberOr('allowanceMm', null), stages: raw.has('stages') ? raw.list('stages', readStage, mostStages) : usualStages, sparkOut: raw.countOr('sparkOut', usualSparkOut),
    row, hardened, wheel: raw.objectOr('wheel', (object) => readWheel(object, row), null),
  }
}

/** The first stage takes what remains, whatever it says; the others have to say. */
const readStage = (raw: RawObject): GrindStage =>
  ({ infeedUm: raw.number('infeedUm', longestUm), takesUm: raw.path.endsWith('[0]') ? raw.numberOr('takesUm', 0, longestUm) : raw.number('takesUm', longestUm) })

/** Crossfeed and table speed as the book has them for the work, the slow end. */
function readWheel(raw: RawObject, row: GrindingRow | null): Wheel {
  const widthMm = raw.number('widthMm')
  return {
    widthMm, crossfeedMm: row === null ? raw.number('crossfeedMm') : raw.numberOr('crossfeedMm', row.crossfeedShare * widthMm), tableMPerMin: row === null ? raw.number('tableMPerMin') : raw.numberOr('tableMPerMin', row.tableMPerMin[0]),
    overrunMm: raw.numberOr('overrunMm', 25), gapMm: raw.numberOr('gapMm', 5), diameterMm: raw.numberOr('diameterMm', null), rpm: raw.numberOr('rpm', null, mostRpm), markedRpm: raw.numberOr('markedRpm', null, mostRpm),
  }
}

/** @throws Refusal `size-not-positive`, `wish-negative`, `too-few-bars`, `too-few-stages`, `too-many` (bars, spark-out, passes), `wheel-above-marked` */
export function refuseGrind(question: GrindQuestion): void {
  const { heightMm, thicknessMm, lengthMm, bars, stages, sparkOut, wheel, bowMm, cleanUpMm, skinMm, allowanceMm } = question
  for (const [field, given] of Object.entries({ heightMm, thicknessMm, lengthMm })) refuseNotPositive(given, field)
  for (const [k, { infeedUm }] of stages.entries()) if (infeedUm < leastUm) throw new Refusal('size-not-positive', { field: `stages[${k}].infeedUm`, given: infeedUm, needed: { above: 0 } })
  const wishes = [...Object.entries({ bowMm, cleanUpMm, skinMm, allowanceMm }), ...stages.map(({ takesUm }, k) => [`stages[${k}].takesUm`, takesUm] as const)]
  for (const [field, given] of wishes) if (given !== null && given < 0) throw new Refusal('wish-negative', { field, given, needed: 0 })
  if (bars < 1) throw new Refusal('too-few-bars', { field: 'bars', given: bars, needed: 1 })
  if (stages.length === 0) throw new Refusal('too-few-stages', { field: 'stages', given: 0, needed: 1 })
  for (const [field, given, most] of [['bars', bars, mostBars], ['sparkOut', sparkOut, mostSparkOut]] as const) if (given > most) throw new Refusal('too-many', { field, given, needed: most })
  const finestUm = Math.min(...stages.map(({ infeedUm }) => infeedUm)), passes = Math.ceil(removalOf({ ...question, sizeMm: Math.max(heightMm, thicknessMm) }).neededUm / finestUm)
  if (passes > mostPasses) throw new Refusal('too-many', { field: 'stages', given: passes, needed: mostPasses })
  if (wheel !== null) refuseWheel(wheel)
}

function refuseWheel({ gapMm, overrunMm, rpm, markedRpm, ...sizes }: Wheel): void {
  for (const [key, given] of Object.entries({ ...sizes, rpm, markedRpm })) if (given !== null) refuseNotPositive(given, `wheel.${key}`)
  for (const [key, given] of Object.entries({ gapMm, overrunMm })) if (given < 0) throw new Refusal('wish-negative', { field: `wheel.${key}`, given, needed: 0 })
  if (rpm !== null && markedRpm !== null && rpm > markedRpm) throw new Refusal('wheel-above-marked', { field: 'wheel.rpm', given: rpm, needed: { most: markedRpm } })
}
