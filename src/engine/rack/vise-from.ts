import type { Vise } from '#model/vise.ts'
import type { JawSet, ViseRecord } from '#model/vise-record.ts'

/** The jaws on a vise now; the store lets no vise name a set it does not have. */
export function fittedJaws({ jawSets, fittedJawSetId }: Pick<ViseRecord, 'jawSets' | 'fittedJawSetId'>): JawSet {
  return jawSets.find(({ id }) => id === fittedJawSetId) ?? jawSets[0]!
}

/** Of jaws of two heights the lower one: it limits the grip, and bars have to stay under it. */
export const lowerJawMm = ({ fixedHeightMm, movingHeightMm }: Pick<JawSet, 'fixedHeightMm' | 'movingHeightMm'>): number => Math.min(fixedHeightMm, movingHeightMm)

/** A vise as the setup sees it with its fitted jaws: the cutter has to clear the higher one, the lower one limits the grip. */
export function viseFrom(record: Pick<ViseRecord, 'jawSets' | 'fittedJawSetId' | 'jawWidthMm' | 'openingMm'>): Vise {
  const jaws = fittedJaws(record), higher = Math.max(jaws.fixedHeightMm, jaws.movingHeightMm), lower = lowerJawMm(jaws)
  return { jawHeightMm: higher, ...(lower < higher ? { lowerJawHeightMm: lower } : {}), jawWidthMm: record.jawWidthMm, openingMm: record.openingMm }
}
