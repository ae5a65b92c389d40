import { barsFrom } from '#engine/rack/bar-from.ts'
import { fittedJaws } from '#engine/rack/vise-from.ts'
import { indexRack, type RackIndex } from '#engine/setup/index-rack.ts'
import type { Bar } from '#model/bar.ts'
import type { ShopRecord } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { JawSet, ViseRecord } from '#model/vise-record.ts'
import { namesOf, type RackNames } from '#web/setup/view/rack-names.ts'

/** One vise with its fitted jaws, and the rack as it is seen from there: indexed once, asked at every key. */
export type Bench = {
  readonly settings: ShopRecord
  readonly vise: ViseRecord
  readonly jaws: JawSet
  readonly bars: ReadonlyMap<string, Bar>
  readonly rack: RackIndex
  readonly names: RackNames
}

export type BenchFacts = Pick<ShopSnapshot, 'shop' | 'vises' | 'bars' | 'checks' | 'events' | 'mates' | 'slots'>

/** Null where the shop has no such vise. */
export function benchFrom(facts: BenchFacts, viseId: string | null): Bench | null {
  const vise = facts.vises.find(({ id }) => id === viseId)
  if (!vise) return null
  const bars = barsFrom(facts, { viseId: vise.id })
  return { settings: facts.shop, vise, jaws: fittedJaws(vise), bars: new Map(bars.map((bar) => [bar.id, bar])), rack: indexRack(bars), names: namesOf(facts) }
}
