import type { Standing } from '#engine/setup/standing.ts'

/** A stretch across the jaws, from the fixed one. */
export type Across = { readonly fromMm: number; readonly toMm: number }

/** The room between two bars: of a stack between the lower two, or between those that carry the part. Null where there are not just two, their places are not known, or nothing is left between. */
export function betweenBars(standing: readonly Standing<unknown>[], which: 'lower' | 'carrying'): Across | null {
  const heights = standing.map(({ fromMm }) => fromMm), layerMm = which === 'lower' ? Math.min(...heights) : Math.max(...heights)
  const [one, other, ...more] = standing.filter(({ fromMm }) => fromMm === layerMm).flatMap(({ place, acrossMm }) => (place === null ? [] : [{ fromMm: place.yMm, toMm: place.yMm + acrossMm }])).toSorted((a, b) => a.fromMm - b.fromMm)
  return one && other && more.length === 0 && other.fromMm > one.toMm ? { fromMm: one.toMm, toMm: other.fromMm } : null
}
