import { fittedJaws, viseFrom } from '#engine/rack/vise-from.ts'
import { viseCardOf } from '#engine/setup/card.ts'
import { formDefaults } from '#engine/setup/form-wishes.ts'
import { holeRunThroughMm } from '#engine/setup/read-cut.ts'
import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import type { ViseCardFacts } from '#words/say-vise-card.ts'
import { rackGroups, worstTrust } from '#web/rack/rack-bars.ts'

/** What every pair of the rack that may be used is good for in a vise with the jaws fitted now. */
export function viseCardFacts(shop: ShopSnapshot, vise: ViseRecord, day: string, units: Units): ViseCardFacts {
  const jaws = fittedJaws(vise), size = viseFrom(vise), { airMm, bedAirMm } = formDefaults[units.length]
  const pairs = rackGroups(shop)
    .filter((group) => group.bars.length > 1 && !['gone', 'in work'].includes(worstTrust(group)))
    .flatMap(({ bars: [first] }) => (first.calledMm === null ? [] : [{
      name: `${wordLength(first.calledMm, units)} ${first.mates?.name ?? ''}`.trim(), slot: first.slot?.name ?? null, heightMm: first.calledMm,
    }]))
  return {
    vise: vise.name, jaws: jaws.name, jawHeightMm: size.jawHeightMm, openingMm: size.openingMm, shop: shop.shop.name, day,
    airMm, bedAirMm, runThroughMm: holeRunThroughMm, rows: viseCardOf({ vise: size, pairs, wishes: { airMm, bedAirMm } }),
  }
}
