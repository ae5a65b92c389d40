import type { ViseFields } from '#model/vise-record.ts'

/** The height that bars have to stay under: the lower of the jaws fitted now. */
export function fittedJaws({ jawSets, fittedJawSetId }: ViseFields): { readonly heightMm: number } | null {
  const set = jawSets.find(({ id }) => id === fittedJawSetId)
  return set ? { heightMm: Math.min(set.fixedHeightMm, set.movingHeightMm) } : null
}
