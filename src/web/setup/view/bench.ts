import { barsFrom, provedUsesFrom } from '#engine/rack/bar-from.ts'
import { fittedJaws } from '#engine/rack/vise-from.ts'
import { indexRack, type RackIndex } from '#engine/setup/index-rack.ts'
import type { Bar } from '#model/bar.ts'
import type { ShopRecord } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { Use } from '#model/wishes.ts'
import type { JawSet, ViseRecord } from '#model/vise-record.ts'
import { namesOf, type RackNames } from '#web/setup/view/rack-names.ts'
import { today } from '#web/today.ts'

/** One vise with its fitted jaws, and the rack as it is seen from there: indexed once, asked at every key. */
export type Bench = {
  readonly settings: ShopRecord
  readonly vise: ViseRecord
  readonly jaws: JawSet
  readonly bars: ReadonlyMap<string, Bar>
  readonly rack: RackIndex
  readonly names: RackNames
  /** What a bar is proved for today. */
  readonly provedOf: (bar: string) => readonly Use[]
}

export type BenchFacts = Pick<ShopSnapshot, 'shop' | 'vises' | 'bars' | 'checks' | 'events' | 'mates' | 'slots' | 'setups'>

/** Null where the shop has no such vise. */
export function benchFrom(facts: BenchFacts, viseId: string | null): Bench | null {
  const vise = facts.vises.find(({ id }) => id === viseId)
  if (!vise) return null
  const bars = barsFrom({ ...facts, today: today() }, { viseId: vise.id })
  return {
    settings: facts.shop, vise, jaws: fittedJaws(vise),
    bars: new Map(bars.map((bar) => [bar.id, bar])), rack: indexRack(bars), names: namesOf(facts), provedOf: provedOf(facts),
  }
}

/** Worked out for the few bars that are asked about. */
function provedOf({ bars, checks, events, shop }: BenchFacts): Bench['provedOf'] {
  return (id) => {
    const record = bars.find((bar) => bar.id === id)
    if (record === undefined) return []
    const isOfBar = ({ bar }: { readonly bar: string }) => bar === id
    return provedUsesFrom(record, checks.filter(({ readings, looks }) => readings.some(isOfBar) || looks.some(isOfBar)), events.filter(isOfBar), shop)
  }
}
