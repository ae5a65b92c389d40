import type { Obstacles } from '#engine/setup/obstacles.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** Where a bar's left end may be, in mm along from the part's left end; `wantedMm` has the bar in the middle along. */
export type Travel = { readonly fromMm: number; readonly toMm: number; readonly wantedMm: number }

/**
 * How far a bar may be moved along: a bar not shorter than the part stays centred, a shorter one stays under the part,
 * and every bar ends inside the new face of an end cut. While the part's length is unknown the bar is centred, and 0
 * stands for that.
 *
 * @returns null for a bar that an end cut leaves no place (`bar-in-cut`)
 * @source SETUP-RULES
 */
export function travelOf({ part, leftMm, rightMm }: Pick<Obstacles, 'part' | 'leftMm' | 'rightMm'>, lengthMm: number): Travel | null {
  if (part.alongJawsMm === null) return { fromMm: 0, toMm: 0, wantedMm: 0 }
  const spareMm = part.alongJawsMm - lengthMm, wantedMm = spareMm / 2, longer = spareMm <= touchMm
  const fromMm = Math.max(longer ? wantedMm : 0, leftMm)
  const toMm = Math.min(longer ? wantedMm : spareMm, rightMm - lengthMm)
  if (fromMm > toMm + touchMm) return null
  return { fromMm, toMm: Math.max(fromMm, toMm), wantedMm }
}

/** Whether an end cut leaves a bar of this length no place at all. */
export const isInEndCut = (obstacles: Obstacles, lengthMm: number): boolean => travelOf(obstacles, lengthMm) === null

/** The allowed place nearest to the middle along, whatever is in the way. */
export const plainXMm = ({ fromMm, toMm, wantedMm }: Travel): number => Math.min(Math.max(wantedMm, fromMm), toMm)
