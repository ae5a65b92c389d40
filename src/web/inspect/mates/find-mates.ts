import { attempt } from '#engine/inspect/attempt.ts'
import { matesBySize, type SizedMeasuredBar } from '#engine/inspect/mates-by-size.ts'
import type { MatesOfRack, MatesWish } from '#engine/inspect/mates-of-rack.ts'
import type { UseLimits } from '#engine/inspect/uses-proved.ts'
import type { Finding } from '#model/finding.ts'

export type MatesAsked = { readonly bars: readonly SizedMeasuredBar[]; readonly wish: MatesWish; readonly limitsUm: UseLimits }
export type MatesFound = { readonly found: MatesOfRack } | { readonly refused: Finding }
/** What the worker says: how far it is, then what it found. */
export type MatesSaid = { readonly lots: readonly [done: number, of: number] } | MatesFound

export function findMates({ bars, wish, limitsUm }: MatesAsked, onLot?: (done: number, of: number) => void): MatesFound {
  const [found, refused] = attempt(() => matesBySize(bars, wish, limitsUm, onLot))
  return refused ? { refused } : { found }
}
