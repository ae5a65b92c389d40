import { outcomeOf } from '#engine/rack/check-outcome.ts'
import { type Due, dueFrom, type Used } from '#engine/rack/due.ts'
import { remembered } from '#engine/rack/remembered.ts'
import { byTime, type DatedOutcome, type Reliance, relianceFrom, standingEvents } from '#engine/rack/trust-from.ts'
import type { BarEvent } from '#model/bar-event.ts'
import type { BarRecord } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'
import type { ShopFields } from '#model/shop-record.ts'

/** How a bar is, out of all that is written down about it. `due` null: the shop does not count, or nobody has looked at it yet. */
export type Condition = Reliance & { readonly magnetised: true | null; readonly due: Due | null }

type Limits = Pick<ShopFields, 'limitsUm'> & Partial<Pick<ShopFields, 'due'>>

/**
 * How far a bar may be relied on, with why; one that fell due is to be looked at first like any other.
 *
 * @param checks  in any order; `events` those of this bar
 */
export function conditionOf(record: Pick<BarRecord, 'id' | 'lengthMm'>, checks: readonly Check[], events: readonly BarEvent[], shop: Limits, used: Used): Condition {
  const outcomes = outcomesOf(record, checks, shop), reliance = relianceFrom(events, outcomes)
  const looked = [...standingEvents(events).filter(({ kind }) => kind === 'looked over'), ...outcomes.filter(({ uses, failed }) => !failed && uses.length > 0)].sort(byTime).at(-1)
  const due = looked === undefined ? null : dueFrom(looked.atIso, shop.due, used), isDue = due?.isDue === true && (reliance.trust === 'trusted' || reliance.trust === 'look first')
  return { ...(isDue ? { trust: 'look first', open: [...reliance.open, 'due'] } : reliance), magnetised: magnetisedNow(record.id, checks, events), due }
}

/** What each check of a bar says of it, those replaced by another left out. */
export function outcomesOf({ id, lengthMm }: Pick<BarRecord, 'id' | 'lengthMm'>, checks: readonly Check[], { limitsUm }: Limits): readonly DatedOutcome[] {
  const replaced = new Set(checks.map((check) => check.replaces))
  return checks.filter((check) => !replaced.has(check.id)).map((check) => ({ id: check.id, atIso: check.atIso, ...outcomeOnce(check, id, lengthMm, limitsUm) }))
}

const outcomeOnce = remembered(outcomeOf)

/** By what was told last: the chuck or a look that saw it, against demagnetising. */
function magnetisedNow(bar: string, checks: readonly Check[], events: readonly BarEvent[]): true | null {
  const told = [
    ...standingEvents(events).flatMap(({ id, atIso, kind }) => (kind === 'on the chuck' || kind === 'demagnetised' ? [{ id, atIso, is: kind === 'on the chuck' }] : [])),
    ...checks.flatMap(({ id, atIso, looks }) => (looks.some((look) => look.bar === bar && look.seen.includes('magnetised')) ? [{ id, atIso, is: true }] : [])),
  ].sort(byTime).at(-1)
  return told?.is === true ? true : null
}
