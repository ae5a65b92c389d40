import { type Height, heightFrom } from '#engine/rack/height-from.ts'
import { byTime, standingEvents } from '#engine/rack/trust-from.ts'
import type { BarEvent } from '#model/bar-event.ts'
import type { BarRecord } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'

/** What happened to the height of a bar between two measured heights with nothing ground off: only where it is more than both uncertainties together. */
export type HeightChange = { readonly is: 'wear' | 'growth'; readonly um: number; readonly expandedUm: number; readonly from: Height; readonly to: Height }

/** Doubled standard uncertainty, about 95 %. @source GUM */
const coverageFactor = 2

/** Every height a bar was found to have, oldest first; checks that another replaces left out. */
export function heightsOverYears({ id, lengthMm }: Pick<BarRecord, 'id' | 'lengthMm'>, checks: readonly Check[]): readonly Height[] {
  const replaced = new Set(checks.map((check) => check.replaces))
  return checks.filter((check) => !replaced.has(check.id)).toSorted(byTime).flatMap((check) => heightFrom(id, [check], [], lengthMm) ?? [])
}

/**
 * Whether the heights say that a bar wears or grows: the first measured since it was last ground against the latest; null where there
 * are not two of known uncertainty, or they differ by no more than it.
 */
export function heightChangeOf(heights: readonly Height[], events: readonly BarEvent[]): HeightChange | null {
  const ground = standingEvents(events).findLast(({ kind }) => kind === 'reground')
  const known = heights.filter((height) => height.standing === 'measured' && height.uUm !== null && (ground === undefined || height.atIso > ground.atIso)), from = known[0], to = known.at(-1)
  if (from === undefined || to === undefined || from === to) return null
  const um = (to.heightMm - from.heightMm) * 1000, expandedUm = coverageFactor * Math.hypot(from.uUm!, to.uUm!)
  return Math.abs(um) > expandedUm ? { is: um < 0 ? 'wear' : 'growth', um: Math.abs(um), expandedUm, from, to } : null
}
