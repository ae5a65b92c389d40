import { quickUses } from '#engine/rack/check-outcome.ts'
import type { Finding } from '#model/finding.ts'
import type { Use } from '#model/wishes.ts'

/** The bars of a choice that are not proved for a use which wants the plate; a use that a quick look restores asks for none. */
export function plateCheckWanted(bars: readonly string[], use: Use, provedOf: (bar: string) => readonly Use[]): readonly Finding[] {
  if (quickUses.includes(use)) return []
  const open = bars.filter((bar) => !provedOf(bar).includes(use))
  return open.length === 0 ? [] : [{ code: 'plate-check-wanted', facts: { bars: open, use } }]
}
