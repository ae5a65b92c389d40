import { barsFrom, conditionsOf } from '#engine/rack/bar-from.ts'
import { outcomeOf } from '#engine/rack/check-outcome.ts'
import type { Condition } from '#engine/rack/condition.ts'
import { calledFrom } from '#engine/rack/marked-height.ts'
import { isOrphan } from '#engine/rack/mates-now.ts'
import { standingEvents } from '#engine/rack/trust-from.ts'
import { isOverdue } from '#engine/rack/who-has-what.ts'
import type { BarEvent, BarEventKind } from '#model/bar-event.ts'
import { isFinished, type Standing, type Trust } from '#model/bar.ts'
import type { Check } from '#model/check.ts'
import type { BarRecord, MatesRecord, SlotRecord } from '#model/bar-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { holderName } from '#web/rack/say-where.ts'
import { namesOf } from '#web/setup/view/rack-names.ts'
import { today } from '#web/today.ts'

/** A bar with all that the rack says about it. */
export type RackBar = {
  readonly record: BarRecord
  /** Null: its height has not arrived on this device. */
  readonly heightMm: number | null
  /** The height people call it by: what is marked on it as long as it is that, else what was measured, to a hundredth. */
  readonly calledMm: number | null
  readonly standing: Standing
  readonly trust: Trust
  /** Why it is to be looked at first, when that falls due again, and whether it is magnetised. */
  readonly condition: Condition
  readonly mates: MatesRecord | null
  readonly slot: SlotRecord | null
  /** Who has it, or the name of the vise it is in; null: in its slot. */
  readonly elsewhere: string | null
  /** Should have been back by now. */
  readonly overdue: boolean
  /** Its mates are written down, and are gone, in work or changed: it is an odd bar now. */
  readonly orphan: boolean
  /** What happened to it last that bears on its trust and was not taken back. */
  readonly latest: BarEvent | null
  /** Its latest check that proved a use or failed, where that came after what happened last. */
  readonly checked: { readonly check: Check; readonly failed: boolean } | null
}

/** Bars that are used together, or one odd bar: one row of the rack. */
export type RackGroup = { readonly key: string; readonly bars: readonly [RackBar, ...RackBar[]] }

/** Worse comes later: the state of a group is that of its worst bar. */
const byTrust: readonly Trust[] = ['trusted', 'look first', 'drill bar', 'in work', 'gone']

/** Events that move a bar or name it and say nothing of its faces. */
const moves: ReadonlySet<BarEventKind> = new Set(['signed out', 'back', 'on the chuck', 'demagnetised', 'marked anew'])

/** Every bar of the shop, lowest first; mates stand together at the height of the first, an orphan by itself. */
export function rackGroups(shop: ShopSnapshot): readonly RackGroup[] {
  const byMates = new Map<string, [RackBar, ...RackBar[]]>()
  for (const one of rackBars(shop)) {
    const key = groupKey(one), group = byMates.get(key)
    if (group) group.push(one)
    else byMates.set(key, [one])
  }
  return [...byMates].map(([key, bars]) => ({ key, bars }))
}

function groupKey({ record: { id, matesId }, trust, orphan }: RackBar): string {
  if (matesId === null || orphan) return id
  return isFinished(trust) ? matesId : `${matesId} ${trust}`
}

export function worstTrust(group: RackGroup): Trust {
  return group.bars.map(({ trust }) => trust).reduce((worst, trust) => (byTrust.indexOf(trust) > byTrust.indexOf(worst) ? trust : worst))
}

function rackBars(shop: ShopSnapshot): RackBar[] {
  const day = today(), facts = { ...shop, today: day }, known = byId(barsFrom(facts, { viseId: null })), conditions = conditionsOf(facts), mates = byId(shop.mates), slots = byId(shop.slots)
  const { markedMm } = namesOf(shop)
  const checked = latestChecks(shop.checks)
  const eventsOf = new Map<string, BarEvent[]>(shop.bars.map(({ id }) => [id, []]))
  for (const event of shop.events) eventsOf.get(event.bar)?.push(event)
  return shop.bars.map((record) => {
    const events = eventsOf.get(record.id)!, latest = standingEvents(events).findLast(({ kind }) => !moves.has(kind)) ?? null, check = checked.get(record.id), bar = known.get(record.id), condition = conditions.get(record.id)!, { where } = record
    return {
      record, heightMm: bar?.heightMm ?? null, calledMm: bar ? calledFrom(bar.heightMm, markedMm(record.id)) : null, standing: bar?.standing ?? 'marked', trust: condition.trust, condition,
      mates: (record.matesId !== null && mates.get(record.matesId)) || null,
      slot: (record.slotId !== null && slots.get(record.slotId)) || null,
      elsewhere: where.at === 'slot' ? null : holderName(where, shop), overdue: isOverdue(where, day),
      orphan: bar !== undefined && isOrphan(bar, record.matesId), latest, checked: check === undefined || (latest !== null && latest.atIso > check.atIso) ? null : toldBy(check, record, shop.shop),
    }
  }).sort((a, b) => (a.calledMm ?? 0) - (b.calledMm ?? 0) || a.record.thicknessMm - b.record.thicknessMm || order(a.record.name, b.record.name))
}

/** Of each bar the latest check that read or tried it and that no other replaces. */
function latestChecks(checks: readonly Check[]): ReadonlyMap<string, Check> {
  const replaced = new Set(checks.map(({ replaces }) => replaces)), latest = new Map<string, Check>()
  for (const check of checks) {
    if (check.method === 'stated' || replaced.has(check.id)) continue
    for (const { bar } of [...check.readings, ...check.looks]) if (check.atIso >= (latest.get(bar)?.atIso ?? '')) latest.set(bar, check)
  }
  return latest
}

/** Null where the check neither proved a use, nor failed, nor saw a burr. */
function toldBy(check: Check, { id, lengthMm }: BarRecord, { limitsUm }: ShopSnapshot['shop']): RackBar['checked'] {
  const { uses, failed, burrs } = outcomeOf(check, id, lengthMm, limitsUm)
  return failed || uses.length > 0 || burrs.length > 0 ? { check, failed } : null
}

function byId<R extends { readonly id: string }>(records: readonly R[]): ReadonlyMap<string, R> {
  return new Map(records.map((record) => [record.id, record]))
}

function order(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1
}
