import { byTime, standingEvents } from '#engine/rack/trust-from.ts'
import { type Bar, isFinished } from '#model/bar.ts'
import type { BarEvent } from '#model/bar-event.ts'
import type { Check } from '#model/check.ts'

type FactsOf = (bar: string) => { readonly checks: readonly Check[]; readonly events: readonly BarEvent[] }

/**
 * Under what each bar still has mates. One whose mates are all gone, in work or reground without it is an orphan and not named; mates
 * reground at the same time stay mates.
 *
 * Once a reground bar is measured its height is known, and whether it still matches is for the limits to say.
 *
 * @param bars  with the mates that are written down
 */
export function matesNow(bars: readonly Bar[], factsOf: FactsOf): ReadonlyMap<string, string> {
  const groups = new Map<string, Map<string, string[]>>()
  for (const { id, mates, trust } of bars) {
    if (mates === undefined || !isFinished(trust)) continue
    const group = groups.get(mates) ?? new Map<string, string[]>(), since = groundSince(id, factsOf(id))
    group.set(since, [...(group.get(since) ?? []), id])
    groups.set(mates, group)
  }
  const now = new Map<string, string>()
  for (const [mates, group] of groups) {
    const together = [...group.values()].filter((ids) => ids.length > 1)
    together.forEach((ids, k) => { for (const id of ids) now.set(id, k === 0 ? mates : `${mates}~${k + 1}`) })
  }
  return now
}

/** Whether mates are written down for a finished bar, and none is left. */
export const isOrphan = (bar: Pick<Bar, 'mates' | 'trust'>, matesId: string | null): boolean => matesId !== null && bar.mates === undefined && isFinished(bar.trust)

/** When it was reground since it was last measured; empty for most bars. */
function groundSince(bar: string, { checks, events }: ReturnType<FactsOf>): string {
  const ground = standingEvents(events).filter(({ kind }) => kind === 'reground')
  if (ground.length === 0) return ''
  const replaced = new Set(checks.map((check) => check.replaces))
  const measured = checks.filter((check) => check.method !== 'stated' && !replaced.has(check.id) && check.readings.some((reading) => reading.bar === bar)).toSorted(byTime).at(-1)
  return ground.filter((event) => measured === undefined || byTime(event, measured) > 0).map(({ atIso }) => atIso).join(' ')
}
