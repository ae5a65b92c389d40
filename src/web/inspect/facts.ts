import { useMemo } from 'react'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import { heightsOf } from '#engine/rack/bar-from.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { inspectTables } from '#reference/inspect-tables.ts'
import { today } from '#web/today.ts'

type Known = Pick<ShopSnapshot, 'shop' | 'bars' | 'checks' | 'events' | 'instruments'>

/** What a check is read against on this device. */
export function inspectFactsOf({ shop, bars, checks, events, instruments }: Known, day: string): InspectFacts {
  return { bars, heights: heightsOf({ bars, checks, events }), instruments, limitsUm: shop.limitsUm, today: day, tables: inspectTables }
}

export function useInspectFacts({ shop, bars, checks, events, instruments }: ShopSnapshot): InspectFacts {
  const day = today()
  return useMemo(() => inspectFactsOf({ shop, bars, checks, events, instruments }, day), [shop, bars, checks, events, instruments, day])
}
