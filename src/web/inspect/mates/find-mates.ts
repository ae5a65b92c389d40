import { readOrFinding } from '#engine/inspect/read-or-finding.ts'
import { matesBySize, type SizedMeasuredBar } from '#engine/inspect/mates-by-size.ts'
import type { MatesOfRack, MatesWish } from '#engine/inspect/mates-of-rack.ts'
import type { UseLimits } from '#engine/inspect/uses-proved.ts'
import type { RackFacts } from '#engine/rack/bar-from.ts'
import { measuredBarsOf } from '#engine/rack/measured-bars.ts'
import type { Finding } from '#model/finding.ts'

/** `facts` with those bars alone that are to be looked at. */
export type MatesAsked = { readonly facts: RackFacts; readonly wish: MatesWish; readonly limitsUm: UseLimits }
/** The bars as their checks leave them stand beside what was found among them. */
export type MatesFound = { readonly found: MatesOfRack; readonly bars: readonly SizedMeasuredBar[] } | { readonly refused: Finding }
/** What the worker says: how far it is, then what it found. */
export type MatesSaid = { readonly lots: readonly [done: number, of: number] } | MatesFound

export function findMates({ facts, wish, limitsUm }: MatesAsked, onLot?: (done: number, of: number) => void): MatesFound {
  const thickness = new Map(facts.bars.map(({ id, thicknessMm }) => [id, thicknessMm]))
  const bars = measuredBarsOf(facts).map((bar) => ({ ...bar, thicknessMm: thickness.get(bar.id)! }))
  const [found, refused] = readOrFinding(() => matesBySize(bars, wish, limitsUm, onLot))
  return refused ? { refused } : { found, bars }
}
