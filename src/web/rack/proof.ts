import { checkedOf } from '#engine/inspect/checked.ts'
import { heightsOf, provedUsesFrom } from '#engine/rack/bar-from.ts'
import { outcomeOf } from '#engine/rack/check-outcome.ts'
import type { Height } from '#engine/rack/height-from.ts'
import { byTime, standingEvents } from '#engine/rack/trust-from.ts'
import type { BarEvent, BarEventKind } from '#model/bar-event.ts'
import type { BarRecord } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { type Use, uses } from '#model/wishes.ts'

/** Why a bar is not proved for a use. */
export type WhyNot =
  | { readonly why: 'never read' }
  | { readonly why: 'since then'; readonly event: BarEvent }
  | { readonly why: 'rocks' }
  | { readonly why: 'wants the plate' }
  | { readonly why: 'wants a look' }
  | { readonly why: 'out' | 'not proved'; readonly limitUm: number; readonly provedToUm: number | null }

/** What a bar's height and trust rest on. */
export type Proof = {
  readonly height: Height | null
  /** The latest check that read or tried it; null: none but what is marked. */
  readonly check: Check | null
  readonly uses: readonly { readonly use: Use; readonly whyNot: WhyNot | null }[]
}

export function proofOf(record: BarRecord, shop: Pick<ShopSnapshot, 'bars' | 'checks' | 'events' | 'shop'>): Proof {
  const checks = shop.checks.filter(({ readings, looks }) => [...readings, ...looks].some(({ bar }) => bar === record.id)), events = shop.events.filter(({ bar }) => bar === record.id)
  const replaced = new Set(checks.map((check) => check.replaces))
  const check = checks.filter(({ id, method }) => method !== 'stated' && !replaced.has(id)).toSorted(byTime).at(-1) ?? null
  const proved = provedUsesFrom(record, checks, events, shop.shop), why = whyNotOf(record, check, standingEvents(events), shop)
  return {
    height: heightsOf({ bars: [record], checks, events })(record.id), check,
    uses: uses.map((use) => ({ use, whyNot: proved.includes(use) ? null : why(use) })),
  }
}

/** What spoils a proof, whatever it was. */
const spoils: readonly BarEventKind[] = ['knocked', 'drilled', 'stoned', 'reground', 'to another shop', 'back nicked', 'back drilled', 'back not looked at']

function whyNotOf(record: BarRecord, check: Check | null, events: readonly BarEvent[], { shop }: Pick<ShopSnapshot, 'shop'>): (use: Use) => WhyNot {
  if (check === null) return () => ({ why: 'never read' })
  const event = events.findLast((one) => spoils.includes(one.kind) && byTime(one, check) > 0)
  if (event !== undefined) return () => ({ why: 'since then', event })
  if (check.looks.some(({ bar, rock }) => bar === record.id && rock === 'rocks')) return () => ({ why: 'rocks' })
  const { kind } = outcomeOf(check, record.id, record.lengthMm, shop.limitsUm), said = checkedOf(check, { limitsUm: shop.limitsUm, lengthMmOf: () => record.lengthMm }).bars.find(({ id }) => id === record.id)
  return (use) => {
    const judged = said?.uses.find((one) => one.use === use)
    if (judged?.verdict === 'out') return { why: 'out', limitUm: judged.limitUm, provedToUm: null }
    if (kind !== 'plate check' && (use === 'grinding' || use === 'fine milling')) return { why: 'wants the plate' }
    if (kind === 'no proof') return { why: check.method === 'micrometer' ? 'wants a look' : 'wants the plate' }
    return judged === undefined ? { why: 'wants the plate' } : { why: 'not proved', limitUm: judged.limitUm, provedToUm: said?.provedToUm ?? null }
  }
}
