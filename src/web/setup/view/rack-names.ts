import { markedHeights } from '#engine/rack/marked-height.ts'
import type { BarRecord, MatesRecord, SlotRecord } from '#model/bar-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'

/** What bars are called, what is marked on them and where they belong. */
export type RackNames = {
  /** What is engraved on a bar or was painted on it: `C`, `35 left`. */
  readonly nameOf: (bar: string) => string
  /** The mates a bar belongs to; null: an odd one. */
  readonly matesOf: (bar: string) => MatesRecord | null
  /** Slots of some bars, each once; a bar without a slot adds none. */
  readonly slotsOf: (bars: readonly string[]) => readonly string[]
  /** The height marked on a bar or its box; null where none was ever stated. */
  readonly markedMm: (bar: string) => number | null
  readonly recordOf: (bar: string) => BarRecord | undefined
}

export function namesOf({ bars, mates, slots, checks }: Pick<ShopSnapshot, 'bars' | 'mates' | 'slots' | 'checks'>): RackNames {
  const records = byId(bars), groups = byId(mates), places = byId<SlotRecord>(slots), marked = markedHeights(checks)
  const matesOf = (bar: string): MatesRecord | null => groups.get(records.get(bar)?.matesId ?? '') ?? null
  return {
    recordOf: (bar) => records.get(bar),
    matesOf,
    nameOf: (bar) => records.get(bar)?.name || matesOf(bar)?.name || '',
    slotsOf: (some) => [...new Set(some.flatMap((bar) => places.get(records.get(bar)?.slotId ?? '')?.name ?? []))],
    markedMm: (bar) => marked.get(bar) ?? null,
  }
}

const byId = <One extends { readonly id: string }>(list: readonly One[]): ReadonlyMap<string, One> => new Map(list.map((one) => [one.id, one]))
