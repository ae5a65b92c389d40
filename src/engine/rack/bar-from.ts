import { type Condition, conditionOf, outcomesOf } from '#engine/rack/condition.ts'
import type { Used } from '#engine/rack/due.ts'
import { type Height, heightFrom } from '#engine/rack/height-from.ts'
import { matesNow } from '#engine/rack/mates-now.ts'
import { remembered } from '#engine/rack/remembered.ts'
import { provedUses, standingEvents } from '#engine/rack/trust-from.ts'
import type { Bar, Whereabouts } from '#model/bar.ts'
import type { BarEvent } from '#model/bar-event.ts'
import type { BarRecord } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'
import type { SetupRecord } from '#model/setup-record.ts'
import type { ShopFields } from '#model/shop-record.ts'
import type { Use } from '#model/wishes.ts'

/** For which vise the bar is looked at; null: for none, so that no bar is `here`. */
export type ForVise = { readonly viseId: string | null }

/** What is written down about bars: the facts a screen or a task hands in, all of them or those that matter. */
export type RackFacts = {
  readonly bars: readonly BarRecord[]
  readonly checks: readonly Check[]
  readonly events: readonly BarEvent[]
  /** Its limits say what a check proves, and whether bars fall due. */
  readonly shop: Pick<ShopFields, 'limitsUm'> & Partial<Pick<ShopFields, 'due'>>
  /** Counted where the shop lets bars fall due after so many. */
  readonly setups?: readonly Pick<SetupRecord, 'bars' | 'usedAtIso'>[]
  /** What day it is, `2026-03-31`; left out: bars do not fall due by days. */
  readonly today?: string
}

/** A bar that nobody counts. */
const notCounted: Used = { usedAtIso: [], today: null }

/**
 * A bar as the setup computes with it, out of what is written down.
 *
 * A bar that stands in another vise counts as out: someone has to fetch it.
 *
 * @param checks  in any order; `events` those of this bar
 * @returns       null without any check: a bar whose height has not arrived yet is not in the rack
 */
export function barFrom(record: BarRecord, checks: readonly Check[], events: readonly BarEvent[], { viseId }: ForVise, shop: RackFacts['shop'], used: Used = notCounted): Bar | null {
  const height = heightFrom(record.id, checks, standingEvents(events), record.lengthMm)
  if (!height) return null
  const { trust, magnetised } = conditionOf(record, checks, events, shop, used)
  return {
    id: record.id,
    heightMm: height.heightMm,
    thicknessMm: record.thicknessMm,
    lengthMm: record.lengthMm,
    ...(record.matesId === null ? {} : { mates: record.matesId }),
    trust,
    standing: height.standing,
    thicknessStanding: record.thicknessStanding,
    where: whereOf(record, viseId),
    ...(magnetised ? { magnetised } : {}),
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

/** All bars of a rack that have a height, in the order of the records; mates no longer together are odd bars. */
export function barsFrom(facts: RackFacts, forVise: ForVise): Bar[] {
  const { checksOf, eventsOf, usedOf } = byBar(facts)
  const bars = facts.bars.flatMap((record) => barFrom(record, checksOf(record.id), eventsOf(record.id), forVise, facts.shop, usedOf(record.id)) ?? [])
  const together = matesNow(bars, (bar) => ({ checks: checksOf(bar), events: eventsOf(bar) }))
  return bars.map(({ mates: _mates, ...bar }) => ({ ...bar, ...withMates(together.get(bar.id)) }))
}

const withMates = (mates: string | undefined): Pick<Bar, 'mates'> => (mates === undefined ? {} : { mates })

/** Why each bar stands as it does, by its id: also of a bar without a height. */
export function conditionsOf(facts: RackFacts): ReadonlyMap<string, Condition> {
  const { checksOf, eventsOf, usedOf } = byBar(facts)
  return new Map(facts.bars.map((record) => [record.id, conditionOf(record, checksOf(record.id), eventsOf(record.id), facts.shop, usedOf(record.id))]))
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

type ByBar = { readonly checksOf: (bar: string) => readonly Check[]; readonly eventsOf: (bar: string) => readonly BarEvent[]; readonly usedOf: (bar: string) => Used }

/** Checks with the readings of the one bar alone, the events of each bar, and when it was set up. */
function byBar({ checks, events, setups = [], today = null }: Omit<RackFacts, 'shop' | 'today'> & { readonly today?: string | null }): ByBar {
  const checksOf = grouped(checks.flatMap((check) => ofEachBar(check)))
  const eventsOf = grouped(events.map((event) => ({ bar: event.bar, one: event })))
  const usedOf = grouped(setups.flatMap(({ bars, usedAtIso }) => bars.map((bar) => ({ bar, one: usedAtIso }))))
  return { checksOf: (bar) => checksOf.get(bar) ?? [], eventsOf: (bar) => eventsOf.get(bar) ?? [], usedOf: (bar) => ({ usedAtIso: usedOf.get(bar) ?? [], today }) }
}

/** A check once for each of its bars, with the readings of that bar alone. */
const ofEachBar = remembered((check: Check): readonly { readonly bar: string; readonly one: Check }[] => {
  const readings = grouped(check.readings.map((reading) => ({ bar: reading.bar, one: reading })))
  const bars = new Set([...readings.keys(), ...check.looks.map(({ bar }) => bar)])
  return [...bars].map((bar) => ({ bar, one: { ...check, readings: readings.get(bar) ?? [] } }))
})

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
