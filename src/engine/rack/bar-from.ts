import { type Height, heightFrom } from '#engine/rack/height-from.ts'
import { outcomeOf } from '#engine/rack/check-outcome.ts'
import { type DatedOutcome, provedUses, standingEvents, trustFrom } from '#engine/rack/trust-from.ts'
import type { Bar, Whereabouts } from '#model/bar.ts'
import type { BarEvent } from '#model/bar-event.ts'
import type { BarRecord } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'
import type { ShopFields } from '#model/shop-record.ts'
import type { Use } from '#model/wishes.ts'

/** For which vise the bar is looked at; null: for none, so that no bar is `here`. */
export type ForVise = { readonly viseId: string | null }

/** What is written down about bars: the facts a screen or a task hands in, all of them or those that matter. */
export type RackFacts = {
  readonly bars: readonly BarRecord[]
  readonly checks: readonly Check[]
  readonly events: readonly BarEvent[]
  /** Its limits say what a check proves. */
  readonly shop: Pick<ShopFields, 'limitsUm'>
}

/**
 * A bar as the setup computes with it, out of what is written down.
 *
 * A bar that stands in another vise counts as out: someone has to fetch it.
 *
 * @param checks  in any order; `events` those of this bar
 * @returns       null without any check: a bar whose height has not arrived yet is not in the rack
 */
export function barFrom(record: BarRecord, checks: readonly Check[], events: readonly BarEvent[], { viseId }: ForVise, shop: RackFacts['shop']): Bar | null {
  const height = heightFrom(record.id, checks, standingEvents(events), record.lengthMm)
  if (!height) return null
  return {
    id: record.id,
    heightMm: height.heightMm,
    thicknessMm: record.thicknessMm,
    lengthMm: record.lengthMm,
    ...(record.matesId === null ? {} : { mates: record.matesId }),
    trust: trustFrom(events, outcomesOf(record, checks, shop)),
    standing: height.standing,
    thicknessStanding: record.thicknessStanding,
    where: whereOf(record, viseId),
    ...(height.standing === 'marked' || height.uUm === null || height.uAloneUm === null ? {} : { known: { check: height.check, uUm: height.uUm, uAloneUm: height.uAloneUm } }),
    ...(height.heightsUm.length === 0 ? {} : { heightsUm: height.heightsUm }),
  }
}

/**
 * The uses a bar is proved for today: by a check at the plate, or for drilling and milling by a quick look.
 *
 * @param checks  in any order; those without this bar are passed over
 */
export function provedUsesFrom(record: BarRecord, checks: readonly Check[], events: readonly BarEvent[], shop: RackFacts['shop']): readonly Use[] {
  return provedUses(events, outcomesOf(record, checks, shop))
}

/** What each check of a bar says of it, those replaced by another left out. */
function outcomesOf({ id, lengthMm }: BarRecord, checks: readonly Check[], { limitsUm }: RackFacts['shop']): readonly DatedOutcome[] {
  const replaced = new Set(checks.map((check) => check.replaces))
  return checks.filter((check) => !replaced.has(check.id)).map((check) => ({ id: check.id, atIso: check.atIso, ...outcomeOf(check, id, lengthMm, limitsUm) }))
}

/** All bars of a rack that have a height, in the order of the records. */
export function barsFrom(facts: RackFacts, forVise: ForVise): Bar[] {
  const { checksOf, eventsOf } = byBar(facts)
  return facts.bars.flatMap((record) => barFrom(record, checksOf(record.id), eventsOf(record.id), forVise, facts.shop) ?? [])
}

/** The height of each bar by its id, worked out when it is first asked for; null of a bar without any, and of no bar of the rack. */
export function heightsOf(facts: Omit<RackFacts, 'shop'>): (bar: string) => Height | null {
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
function byBar({ checks, events }: Omit<RackFacts, 'shop'>): { readonly checksOf: (bar: string) => readonly Check[]; readonly eventsOf: (bar: string) => readonly BarEvent[] } {
  const checksOf = grouped(checks.flatMap((check) => {
    const readings = grouped(check.readings.map((reading) => ({ bar: reading.bar, one: reading })))
    const bars = new Set([...readings.keys(), ...check.looks.map(({ bar }) => bar)])
    return [...bars].map((bar) => ({ bar, one: { ...check, readings: readings.get(bar) ?? [] } }))
  }))
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
