import { type Bar, isFinished } from '#model/bar.ts'
import type { Part } from '#model/part.ts'
import { byText } from '#engine/setup/by-id.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

export const travels = ['along', 'across'] as const
/** Which way the table goes under the wheel or cutter. */
export type Travel = (typeof travels)[number]

export const sides = ['left', 'right', 'front', 'back'] as const
/** Of the part in the plan: left is x = 0, front y = 0. */
export type Side = (typeof sides)[number]

export type ChuckQuestion = { readonly part: Part; readonly bars: readonly Bar[]; readonly travel: Travel }

/** Bars lying flat around a part: how high they may stand, which of the rack do, and which sides to cover first. */
export type Chuck = {
  readonly lowMm: number
  readonly highMm: number
  readonly serve: readonly string[]
  readonly order: readonly Side[]
  readonly holdingForce: 'not computed'
}

/** mm. A blocking-in bar stays this much below the part's top; common practice, no source. @source SETUP-RULES */
export const belowTopMm = 0.5

/**
 * A part on a magnetic chuck, blocked in by bars that lie flat: at least half as high as the part, lower than its top, the
 * ends in the direction of travel first. How hard a chuck pulls on the part is not known here.
 *
 * @source SETUP-RULES
 */
export function chuckOf({ part, bars, travel }: ChuckQuestion): Chuck {
  const lowMm = part.heightMm / 2, highMm = part.heightMm - belowTopMm
  const serves = ({ thicknessMm, trust }: Bar) => isFinished(trust) && thicknessMm >= lowMm - touchMm && thicknessMm <= highMm + touchMm
  const ends: readonly Side[] = travel === 'along' ? ['left', 'right'] : ['front', 'back']
  return {
    lowMm, highMm,
    serve: bars.filter(serves).map((bar) => bar.id).sort(byText),
    order: [...ends, ...sides.filter((side) => !ends.includes(side))],
    holdingForce: 'not computed',
  }
}
