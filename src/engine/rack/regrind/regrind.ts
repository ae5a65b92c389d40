import { Refusal } from '#model/refusal.ts'
import { passesOf } from '#engine/rack/regrind/passes.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** A bar with its local heights over the chuck face. */
export type WornBar = { readonly id: string; readonly heightsMm: readonly number[] }

/** `takesUm` of the first stage does not count: it takes what remains. */
export type GrindingStage = { readonly infeedUm: number; readonly takesUm: number }

export type RegrindQuestion = {
  readonly bars: readonly WornBar[]
  /** To come off each face at its lowest point. */
  readonly cleanUpUm: number
  /** The new height goes down to a multiple of it, counted from 0; null: it does not. */
  readonly stepUm: number | null
  readonly faces: 1 | 2
  /** In the order in which they are ground. */
  readonly stages: readonly GrindingStage[]
  /** Passes without infeed at the end of each face. */
  readonly sparkOut: number
  /** Windows to be looked at, in mm; null: none. */
  readonly windowsMm: readonly (readonly [lowMm: number, highMm: number])[] | null
}

export type Regrind = {
  readonly newHeightMm: number
  readonly bars: readonly { readonly id: string; readonly removalHighestUm: number; readonly removalLowestUm: number }[]
  /** From the highest reading of all, where the wheel starts. */
  readonly totalUm: number
  /** Of each stage, both faces together. */
  readonly passes: readonly number[]
  readonly passesTotal: number
  /** With two faces: of the first and of the second. */
  readonly passesByFace?: readonly (readonly number[])[]
  readonly servesWindows?: readonly number[]
  /** With one face. */
  readonly note?: 'datum face taken as true'
}

/** A picometre is the least that counts: a millionth of a micrometre. */
const pmPerMm = 1e9, pmPerUm = 1e6

/**
 * Worn bars brought to one new height in one setting: the lowest reading of all less the clean-up of each face, never back to what
 * they are marked. The second face takes the clean-up alone, the first all the rest.
 *
 * Counted in whole picometres, so that what is written in decimals comes out in decimals.
 *
 * @throws Refusal `too-few-bars`, `too-few-readings`, `nothing-left` where the new height is not above 0
 * @source REGRIND-RULES
 */
export function regrindOf({ bars, cleanUpUm, stepUm, faces, stages, sparkOut, windowsMm }: RegrindQuestion): Regrind {
  if (bars.length === 0) throw new Refusal('too-few-bars', { field: 'bars', given: 0, needed: 1 })
  bars.forEach(({ heightsMm }, k) => {
    if (heightsMm.length === 0) throw new Refusal('too-few-readings', { field: `bars[${k}].heightsMm`, given: 0, needed: 1 })
  })
  const ends = bars.map(({ id, heightsMm }) => ({ id, lowestPm: least(heightsMm), highestPm: most(heightsMm) }))
  const lowestPm = Math.min(...ends.map((bar) => bar.lowestPm)), cleanUpPm = Math.round(cleanUpUm * pmPerUm)
  const newPm = downTo(lowestPm - faces * cleanUpPm, stepUm === null ? 1 : Math.round(stepUm * pmPerUm))
  if (newPm <= 0) throw new Refusal('nothing-left', { field: 'cleanUpUm', given: cleanUpUm, needed: { lessMm: lowestPm / pmPerMm / faces } })
  const totalPm = Math.max(...ends.map((bar) => bar.highestPm)) - newPm, newHeightMm = newPm / pmPerMm
  const ground = stages.map((stage) => ({ infeedPm: Math.round(stage.infeedUm * pmPerUm), takesPm: Math.round(stage.takesUm * pmPerUm) }))
  const byFace = (faces === 1 ? [totalPm] : [totalPm - cleanUpPm, cleanUpPm]).map((removalPm) => passesOf(ground, removalPm))
  const passes = stages.map((_, stage) => byFace.reduce((sum, face) => sum + face[stage]!, 0))
  return {
    newHeightMm,
    bars: ends.map((bar) => ({ id: bar.id, removalHighestUm: (bar.highestPm - newPm) / pmPerUm, removalLowestUm: (bar.lowestPm - newPm) / pmPerUm })),
    totalUm: totalPm / pmPerUm,
    passes, passesTotal: passes.reduce((sum, count) => sum + count, 0) + faces * sparkOut,
    ...(faces === 2 ? { passesByFace: byFace } : { note: 'datum face taken as true' }),
    ...(windowsMm === null ? {} : { servesWindows: windowsMm.flatMap(([lowMm, highMm], k) => (newHeightMm >= lowMm - touchMm && newHeightMm <= highMm + touchMm ? [k] : [])) }),
  }
}

const least = (heightsMm: readonly number[]): number => heightsMm.reduce((pm, mm) => Math.min(pm, Math.round(mm * pmPerMm)), Infinity)
const most = (heightsMm: readonly number[]): number => heightsMm.reduce((pm, mm) => Math.max(pm, Math.round(mm * pmPerMm)), -Infinity)
const downTo = (pm: number, stepPm: number): number => Math.floor(pm / stepPm) * stepPm
