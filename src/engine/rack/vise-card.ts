import { barsFrom, type RackFacts } from '#engine/rack/bar-from.ts'
import { calledFrom, markedHeights } from '#engine/rack/marked-height.ts'
import { matesTogether } from '#engine/rack/mates-together.ts'
import { fittedJaws, viseFrom } from '#engine/rack/vise-from.ts'
import { type CardRow, viseCardOf } from '#engine/setup/card.ts'
import { formDefaults } from '#engine/setup/form-wishes.ts'
import { holeRunThroughMm } from '#engine/setup/read-cut.ts'
import type { MatesRecord, SlotRecord } from '#model/bar-record.ts'
import type { ShopRecord } from '#model/shop-record.ts'
import type { ViseRecord } from '#model/vise-record.ts'

/** What goes on the card of a vise: every pair that may be used, with what the figures rest on. */
export type ViseCard = {
  readonly vise: ViseRecord; readonly shop: ShopRecord
  /** Name of the fitted jaws, and the height that the cutter has to clear. */
  readonly jaws: string; readonly jawHeightMm: number; readonly openingMm: number
  readonly airMm: number; readonly bedAirMm: number; readonly runThroughMm: number
  readonly rows: readonly (CardRow & { readonly calledMm: number })[]
}

type Facts = Omit<RackFacts, 'shop'> & { readonly shop: ShopRecord; readonly mates: readonly MatesRecord[]; readonly slots: readonly SlotRecord[] }

/**
 * The card of one vise with its fitted jaws, from the bars that are mates now; of four alike one line, at the mean of their
 * heights. Air above jaws and bed are those a form starts from in the shop's unit.
 */
export function viseCardFrom(vise: ViseRecord, facts: Facts): ViseCard {
  const { shop } = facts, { airMm, bedAirMm } = formDefaults[shop.units.length], sizes = viseFrom(vise)
  const records = new Map(facts.bars.map((bar) => [bar.id, bar])), names = nameById(facts.mates), slots = nameById(facts.slots), marked = markedHeights(facts.checks)
  const pairs = matesTogether(barsFrom(facts, { viseId: null })).map((bars) => {
    const { id, heightMm } = bars[0], record = records.get(id)!
    return {
      name: names.get(record.matesId ?? '') ?? '', slot: slots.get(record.slotId ?? '') ?? null,
      heightMm: bars.reduce((sum, bar) => sum + bar.heightMm, 0) / bars.length, calledMm: calledFrom(heightMm, marked.get(id) ?? null),
    }
  })
  return {
    vise, shop, jaws: fittedJaws(vise).name, jawHeightMm: sizes.jawHeightMm, openingMm: sizes.openingMm, airMm, bedAirMm, runThroughMm: holeRunThroughMm,
    rows: viseCardOf({ vise: sizes, pairs, wishes: { airMm, bedAirMm } }),
  }
}

const nameById = (records: readonly { readonly id: string; readonly name: string }[]): ReadonlyMap<string, string> => new Map(records.map(({ id, name }) => [id, name]))
