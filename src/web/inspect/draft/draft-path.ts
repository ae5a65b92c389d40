import type { CheckForm, DraftRecord } from '#model/check-draft.ts'

/** What kind of visit a half-done check is, by its form. */
export function draftKind({ method, asFound, stations, lines, repeats, bars }: CheckForm): 'box' | 'quick' | 'check' {
  if (method !== 'micrometer' || lines > 1 || repeats > 1 || bars.length === 0) return 'check'
  if (asFound && bars.every(({ isNew }) => isNew)) return 'box'
  return stations === 2 && bars.every(({ isNew }) => !isNew) ? 'quick' : 'check'
}

/** Where a half-done check goes on. */
export const draftPath = ({ id, form }: Pick<DraftRecord, 'id' | 'form'>): string => `/inspect/${draftKind(form)}/${id}`
