import type { Vise } from '#model/vise.ts'
import type { JawSet, ViseRecord } from '#model/vise-record.ts'

/** The jaws on a vise now; the store lets no vise name a set it does not have. */
export function fittedJaws({ jawSets, fittedJawSetId }: Pick<ViseRecord, 'jawSets' | 'fittedJawSetId'>): JawSet {
  return jawSets.find(({ id }) => id === fittedJawSetId) ?? jawSets[0]!
}

/** A vise as the setup sees it with its fitted jaws: the cutter has to clear the higher one, the lower one limits the grip. */
export function viseFrom(record: Pick<ViseRecord, 'jawSets' | 'fittedJawSetId' | 'jawWidthMm' | 'openingMm'>): Vise {
  const { fixedHeightMm, movingHeightMm } = fittedJaws(record)
  const higher = Math.max(fixedHeightMm, movingHeightMm), lower = Math.min(fixedHeightMm, movingHeightMm)
  return { jawHeightMm: higher, ...(lower < higher ? { lowerJawHeightMm: lower } : {}), jawWidthMm: record.jawWidthMm, openingMm: record.openingMm }
}
