import { Refusal } from '#model/refusal.ts'
import { passesOf } from '#engine/rack/regrind/passes.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** A bar with its local heights over the chuck face. */
export type WornBar = {
  readonly id: string
  readonly heightsMm: readonly number[]
  /** So much lower than the others it is to come out, for a vise whose bed stands higher; left out: like the others. */
  readonly lowUm?: number
}

/** `takesUm` of the first stage does not count: it takes what remains. */
export type GrindingStage = { readonly infeedUm: number; readonly takesUm: number }

export type RegrindQuestion = {
  readonly bars: readonly WornBar[]
  /** To come off each face at its lowest point. */
  readonly cleanUpUm: number
  /** The new height goes down to a multiple of it, counted from 0; null: it does not. */
  readonly stepUm: number | null
  readonly faces: 1 | 2
  /** With one face ground: the face that lies on the chuck and is taken as true; null or left out: nobody said which. */
  readonly datumFace?: 'A' | 'B' | null
  /** In the order in which they are ground. */
  readonly stages: readonly GrindingStage[]
  /** Passes without infeed at the end of each face. */
  readonly sparkOut: number
  /** Windows to be looked at, in mm; null: none. */
  readonly windowsMm: readonly (readonly [lowMm: number, highMm: number])[] | null
}

export type Regrind = {
  readonly newHeightMm: number
  /** `newHeightMm` where some come out lower than others. */
  readonly bars: readonly { readonly id: string; readonly removalHighestUm: number; readonly removalLowestUm: number; readonly newHeightMm?: number }[]
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
  readonly datumFace?: 'A' | 'B'
}

/** A picometre is the least that counts: a millionth of a micrometre. */
const pmPerMm = 1e9, pmPerUm = 1e6

/**
 * Worn bars brought to one new height in one setting: the lowest reading of all less the clean-up of each face, never back to what
 * they are marked. Bars that are to come out lower are ground on by that much; the lowest of all, so counted, sets the height. The second face takes the clean-up alone, the first all the rest.
 *
 * Counted in whole picometres, so that what is written in decimals comes out in decimals.
 *
 * @throws Refusal `too-few-bars`, `too-few-readings`, `nothing-left` where the new height is not above 0
 * @source REGRIND-RULES
 */
export function regrindOf({ bars, cleanUpUm, stepUm, faces, datumFace = null, stages, sparkOut, windowsMm }: RegrindQuestion): Regrind {
  if (bars.length === 0) throw new Refusal('too-few-bars', { field: 'bars', given: 0, needed: 1 })
  bars.forEach(({ heightsMm }, k) => {
    if (heightsMm.length === 0) throw new Refusal('too-few-readings', { field: `bars[${k}].heightsMm`, given: 0, needed: 1 })
  })
  const ends = bars.map(({ id, heightsMm, lowUm = 0 }) => ({ id, lowPm: Math.round(lowUm * pmPerUm), lowestPm: least(heightsMm), highestPm: most(heightsMm) }))
  // where all come out lower, lower than their own lowest is meant
  const allLower = ends.every((bar) => bar.lowPm > 0), lowestPm = Math.min(...ends.map((bar) => bar.lowestPm + (allLower ? 0 : bar.lowPm))), cleanUpPm = Math.round(cleanUpUm * pmPerUm)
  const newPm = downTo(lowestPm - faces * cleanUpPm, stepUm === null ? 1 : Math.round(stepUm * pmPerUm))
  if (newPm <= Math.max(...ends.map((bar) => bar.lowPm))) throw new Refusal('nothing-left', { field: 'cleanUpUm', given: cleanUpUm, needed: { lessMm: lowestPm / pmPerMm / faces } })
  const totalPm = Math.max(...ends.map((bar) => bar.highestPm + bar.lowPm)) - newPm, newHeightMm = newPm / pmPerMm
  const ground = stages.map((stage) => ({ infeedPm: Math.round(stage.infeedUm * pmPerUm), takesPm: Math.round(stage.takesUm * pmPerUm) }))
  const byFace = (faces === 1 ? [totalPm] : [totalPm - cleanUpPm, cleanUpPm]).map((removalPm) => passesOf(ground, removalPm))
  const passes = stages.map((_, stage) => byFace.reduce((sum, face) => sum + face[stage]!, 0))
  return {
    newHeightMm,
    bars: ends.map(({ id, lowPm, lowestPm: leastPm, highestPm }) => ({
      id, removalHighestUm: (highestPm + lowPm - newPm) / pmPerUm, removalLowestUm: (leastPm + lowPm - newPm) / pmPerUm, ...(ends.some((bar) => bar.lowPm > 0) ? { newHeightMm: (newPm - lowPm) / pmPerMm } : {}),
    })),
    totalUm: totalPm / pmPerUm,
    passes, passesTotal: passes.reduce((sum, count) => sum + count, 0) + faces * sparkOut,
    ...(faces === 2 ? { passesByFace: byFace } : { note: 'datum face taken as true', ...(datumFace === null ? {} : { datumFace }) }),
    ...(windowsMm === null ? {} : { servesWindows: windowsMm.flatMap(([lowMm, highMm], k) => (newHeightMm >= lowMm - touchMm && newHeightMm <= highMm + touchMm ? [k] : [])) }),
  }
}

const least = (heightsMm: readonly number[]): number => heightsMm.reduce((pm, mm) => Math.min(pm, Math.round(mm * pmPerMm)), Infinity)
const most = (heightsMm: readonly number[]): number => heightsMm.reduce((pm, mm) => Math.max(pm, Math.round(mm * pmPerMm)), -Infinity)
const downTo = (pm: number, stepPm: number): number => Math.floor(pm / stepPm) * stepPm
