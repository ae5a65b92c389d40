/** What has to come off each side, and why. */
export type Removal = { readonly bowUm: number; readonly cleanUpUm: number; readonly skinUm: number; readonly shrinkUm: number; readonly neededUm: number }

/**
 * Ground free, not pulled flat, the first side loses the bow at its high places and the second loses it again; then what cleans it up and
 * the skin without carbon. Shrinkage is left on, half on each side; growth is never counted as stock.
 *
 * @param growthPercent  of the size, negative where it shrinks
 * @source GRIND-RULES
 */
export function removalOf({ bowMm, cleanUpMm, skinMm, sizeMm, growthPercent }: { readonly bowMm: number; readonly cleanUpMm: number; readonly skinMm: number; readonly sizeMm: number; readonly growthPercent: number }): Removal {
  const bowUm = 1000 * bowMm, cleanUpUm = 1000 * cleanUpMm, skinUm = 1000 * skinMm, shrinkUm = (10 * Math.max(0, -growthPercent) * sizeMm) / 2
  return { bowUm, cleanUpUm, skinUm, shrinkUm, neededUm: bowUm + cleanUpUm + skinUm + shrinkUm }
}
