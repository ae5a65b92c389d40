import type { Check } from '#model/check.ts'
import { barReadingsOf } from '#engine/inspect/check-readings.ts'
import { checkUncertainty, type CheckUncertainty } from '#engine/inspect/check-uncertainty.ts'
import { repeatabilityOf } from '#engine/inspect/shape.ts'

/**
 * Measuring uncertainty of one bar of a check, with the scatter of its own repeats, so that it is the same whatever else lay
 * on the plate.
 *
 * @param of  the height that is meant: the mean over all readings, or that of a single place
 * @returns   null where the check does not say what it was taken with
 */
export function barUncertainty(check: Pick<Check, 'took' | 'closing' | 'readings' | 'zero'>, bar: string, lengthMm: number | null, heightMm: number, of: 'mean' | 'place' = 'mean'): CheckUncertainty | null {
  if (!check.took) return null
  const own = check.readings.filter((reading) => reading.bar === bar), lines = barReadingsOf({ ...check, readings: own }, bar, lengthMm)?.lines ?? []
  const scatter = repeatabilityOf(lines), perPlace = lines.length === 0 ? 1 : Math.min(...lines.flat().map((repeats) => repeats.length))
  return checkUncertainty(check.took.readWith, {
    heightMm, repeatabilityUm: scatter.sdUm, repeatabilityDof: scatter.dof, readings: of === 'mean' ? own.length : perPlace, perPlace, driftUm: check.closing?.um ?? null,
  })
}
