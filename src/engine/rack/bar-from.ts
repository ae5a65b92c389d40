import { type Height, heightFrom } from '#engine/rack/height-from.ts'
import { standingEvents, trustFrom } from '#engine/rack/trust-from.ts'
import type { Bar, Whereabouts } from '#model/bar.ts'
import type { BarEvent } from '#model/bar-event.ts'
import type { BarRecord } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'

/** For which vise the bar is looked at; null: for none, so that no bar is `here`. */
export type ForVise = { readonly viseId: string | null }

/** What is written down about bars: the facts a screen or a task hands in, all of them or those that matter. */
export type RackFacts = { readonly bars: readonly BarRecord[]; readonly checks: readonly Check[]; readonly events: readonly BarEvent[] }

/**
 * A bar as the setup computes with it, out of what is written down.
 *
 * A bar that stands in another vise counts as out: someone has to fetch it.
 *
 * @param checks  in any order; `events` those of this bar
 * @returns       null without any check: a bar whose height has not arrived yet is not in the rack
 */
export function barFrom(record: BarRecord, checks: readonly Check[], events: readonly BarEvent[], { viseId }: ForVise): Bar | null {
  const height = heightFrom(record.id, checks, standingEvents(events), record.lengthMm)
  if (!height) return null
  return {
    id: record.id,
    heightMm: height.heightMm,
    thicknessMm: record.thicknessMm,
    lengthMm: record.lengthMm,
    ...(record.matesId === null ? {} : { mates: record.matesId }),
    trust: trustFrom(events),
    standing: height.standing,
    thicknessStanding: record.thicknessStanding,
    where: whereOf(record, viseId),
    ...(height.heightsUm.length === 0 ? {} : { heightsUm: height.heightsUm }),
  }
}

/** All bars of a rack that have a height, in the order of the records. */
export function barsFrom(facts: RackFacts, forVise: ForVise): Bar[] {
  const { checksOf, eventsOf } = byBar(facts)
  return facts.bars.flatMap((record) => barFrom(record, checksOf(record.id), eventsOf(record.id), forVise) ?? [])
}

/** The height of each bar by its id, worked out when it is first asked for; null of a bar without any, and of no bar of the rack. */
export function heightsOf(facts: RackFacts): (bar: string) => Height | null {
  const { checksOf, eventsOf } = byBar(facts), known = new Map<string, Height | null>()
  const lengths = new Map(facts.bars.map(({ id, lengthMm }) => [id, lengthMm]))
  return (bar) => {
    const lengthMm = lengths.get(bar)
    if (lengthMm === undefined) return null
    if (!known.has(bar)) known.set(bar, heightFrom(bar, checksOf(bar), standingEvents(eventsOf(bar)), lengthMm))
    return known.get(bar)!
  }
}

/** Checks with the readings of the one bar alone, and the events of each bar. */
function byBar({ checks, events }: RackFacts): { readonly checksOf: (bar: string) => readonly Check[]; readonly eventsOf: (bar: string) => readonly BarEvent[] } {
  const checksOf = grouped(checks.flatMap((check) =>
    [...grouped(check.readings.map((reading) => ({ bar: reading.bar, one: reading })))].map(([bar, readings]) => ({ bar, one: { ...check, readings } }))))
  const eventsOf = grouped(events.map((event) => ({ bar: event.bar, one: event })))
  return { checksOf: (bar) => checksOf.get(bar) ?? [], eventsOf: (bar) => eventsOf.get(bar) ?? [] }
}

function whereOf({ where }: BarRecord, viseId: string | null): Whereabouts {
  if (where.at === 'vise') return where.viseId === viseId ? 'here' : 'out'
  return where.at
}

function grouped<One>(pairs: readonly { readonly bar: string; readonly one: One }[]): ReadonlyMap<string, One[]> {
  const groups = new Map<string, One[]>()
  for (const { bar, one } of pairs) {
    const group = groups.get(bar)
    if (group) group.push(one)
    else groups.set(bar, [one])
  }
  return groups
}
