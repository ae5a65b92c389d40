import type { BarSize } from '#model/bar-size.ts'
import type { GrindingAllowance } from '#model/grinding-allowance.ts'
import type { Leave } from '#model/making.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** What is left where the shop has not said otherwise. Common practice, no source. @source MAKE-RULES */
export const usualLeave: Leave = { edgeMm: 0.5, endMm: 0.5, cutEndMm: 1, faceMm: 0.25, rubMm: 0.01, bowMm: 0.1, cleanUpMm: 0.05, skinMm: 0.05 }

/** Of what is left on an edge, the last pass takes so much. Common practice, no source. */
export const finishPassMm = 0.2

/** On a sawn face and for the cut itself, where no saw says. Common practice, no source. */
export const usualSaw = { kerfMm: 1.5, sawnFaceMm: 1 }

/** Left on each side for hard milling. Common practice, no source. */
const hardMillingMm = [0.2, 0.3] as const

/** mm. Up to here a bar is thin, and takes the upper end. Common practice, no source. */
const thinMm = 6

/** mm. Faces of bars up to here are the thin ones of the table. */
const thinFaceMm = 10

/** The row of a table for bars so long; undefined beyond it. */
export const rowFor = (allowances: readonly GrindingAllowance[], lengthMm: number): GrindingAllowance | undefined =>
  allowances.find((row) => lengthMm > row.overLengthMm + touchMm && lengthMm <= row.toLengthMm + touchMm)

/** So much on each side, and where it is from. */
export type Usual = { readonly mm: number; readonly source: string }

/**
 * Usually left on each side of a hardened bar: the lower end of the range for steel that hardens in air; the upper for thin bars of steel
 * that goes into oil or water; the middle for the others. Nothing beyond the table.
 *
 * @source MAKE-RULES
 */
export function usualPerSide(how: 'grind' | 'hard mill', side: 'height' | 'thickness', quench: 'air' | 'oil' | 'water', { lengthMm, thicknessMm }: BarSize, allowances: readonly GrindingAllowance[]): Usual {
  const row = rowFor(allowances, lengthMm)
  if (how === 'grind' && row === undefined) return { mm: 0, source: 'MAKE-RULES' }
  const [low, high] = how === 'hard mill' ? hardMillingMm : side === 'height' ? row!.edgeMm : thicknessMm <= thinFaceMm + touchMm ? row!.thinFaceMm : row!.thickFaceMm
  return { mm: quench === 'air' ? low : thicknessMm <= thinMm + touchMm ? high : (low + high) / 2, source: how === 'hard mill' ? 'MAKE-RULES' : row!.source }
}
