import { heightFrom } from '#engine/rack/height-from.ts'
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
  const height = heightFrom(record.id, checks, standingEvents(events))
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
export function barsFrom({ bars, checks, events }: RackFacts, forVise: ForVise): Bar[] {
  const checksOf = grouped(checks.flatMap((check) =>
    [...grouped(check.readings.map((reading) => ({ bar: reading.bar, one: reading })))].map(([bar, readings]) => ({ bar, one: { ...check, readings } }))))
  const eventsOf = grouped(events.map((event) => ({ bar: event.bar, one: event })))
  return bars.flatMap((record) => barFrom(record, checksOf.get(record.id) ?? [], eventsOf.get(record.id) ?? [], forVise) ?? [])
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
