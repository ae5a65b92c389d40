import { heightsOverYears } from '#engine/rack/heights-over-years.ts'
import { type LifeLine, lifeTogether, lineOfLife } from '#engine/rack/line-of-life.ts'
import { standingEvents } from '#engine/rack/trust-from.ts'
import type { HeightOverYears } from '#drafting/rack/height-over-years.ts'
import type { BarEventKind } from '#model/bar-event.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { Histories } from '#web/rack/life/use-histories.ts'
import type { RackBar } from '#web/rack/rack-bars.ts'
import { sayEvent } from '#web/rack/say-bar.ts'

/** All that happened to some bars as lines, oldest first; what happened to several at once is one line. */
export function lifeOf(bars: readonly RackBar[], histories: Histories, shop: ShopSnapshot): readonly LifeLine[] {
  const names = new Map([...shop.slots, ...shop.vises, ...shop.mates].map(({ id, name }) => [id, name]))
  const facts = { setups: shop.setups, shop: shop.shop, nameOf: (_kind: string, id: string) => names.get(id) ?? '?' }
  return lifeTogether(bars.map(({ record }) => lineOfLife(record, histories.get(record.id) ?? [], facts)))
}

/** What is shown beside the heights: whatever changes a bar, not its comings and goings. */
const shown: ReadonlySet<BarEventKind> = new Set(['knocked', 'drilled', 'stoned', 'reground', 'back nicked', 'back drilled', 'marked anew'])

/** The heights a bar was found to have, with twice their standard uncertainty; null below two of them. */
export function yearsOf({ record }: RackBar, histories: Histories): Pick<HeightOverYears, 'heights' | 'events' | 'whiskers'> | null {
  const entries = histories.get(record.id) ?? [], heights = heightsOverYears(record, entries.flatMap((entry) => (entry.what === 'check' ? [entry.check] : [])))
  if (heights.length < 2) return null
  const events = standingEvents(entries.flatMap((entry) => (entry.what === 'event' ? [entry.event] : []))).filter(({ kind }) => shown.has(kind))
  return {
    heights: heights.map(({ atIso, heightMm, uUm }) => ({ day: atIso.slice(0, 10), heightMm, uUm: uUm === null ? null : 2 * uUm })),
    events: events.map(({ atIso, kind }) => ({ day: atIso.slice(0, 10), says: sayEvent(kind) })),
    whiskers: heights.some(({ uUm }) => uUm !== null) ? '± twice the standard uncertainty' : '',
  }
}
