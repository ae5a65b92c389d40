import type { Check } from '#model/check.ts'

/** The latest height stated for each bar: what is marked on it or its box. */
export function markedHeights(checks: readonly Check[]): ReadonlyMap<string, number> {
  const stated = checks.filter(({ method }) => method === 'stated').toSorted((a, b) => (a.atIso < b.atIso ? -1 : a.atIso > b.atIso ? 1 : 0))
  return new Map(stated.flatMap(({ readings }) => readings.map(({ bar, heightMm }) => [bar, heightMm] as const)))
}

/** Further from its mark than this a bar is called by what it measures. */
const stillMarkedMm = 0.1

/** The height people call a bar by: what is marked on it as long as it is that, else what was measured, to a hundredth. */
export const calledFrom = (heightMm: number, markedMm: number | null): number =>
  (markedMm !== null && Math.abs(markedMm - heightMm) <= stillMarkedMm ? markedMm : Math.round(heightMm * 100) / 100)
