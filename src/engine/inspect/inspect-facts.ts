import type { BarRecord } from '#model/bar-record.ts'
import type { InstrumentRecord } from '#model/instrument-record.ts'
import type { ShopFields } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { heightsOf } from '#engine/rack/bar-from.ts'
import type { Height } from '#engine/rack/height-from.ts'

/** What the books say about plates and gauge blocks, by grade; null where they have no such row. */
export type InspectTables = {
  /** Overall flatness, highest to lowest. */
  readonly plateFlatnessUm: (grade: string, lengthMm: number, widthMm: number) => number | null
  /** Limit deviation ± of a block of this nominal height. */
  readonly blockLimitUm: (grade: string, heightMm: number) => number | null
}

/** What a check is read against. */
export type InspectFacts = {
  readonly bars: readonly BarRecord[]
  /** The height a bar is taken to have, by its id; null: none yet. */
  readonly heights: (bar: string) => Height | null
  readonly instruments: readonly InstrumentRecord[]
  readonly limitsUm: ShopFields['limitsUm']
  /** `2027-03-31` */
  readonly today: string
  readonly tables: InspectTables
}

/** The same out of all that is known of a shop. */
export function inspectFactsFrom(shop: Pick<ShopSnapshot, 'bars' | 'checks' | 'events' | 'instruments' | 'shop'>, today: string, tables: InspectTables): InspectFacts {
  return { bars: shop.bars, heights: heightsOf(shop), instruments: shop.instruments, limitsUm: shop.shop.limitsUm, today, tables }
}
