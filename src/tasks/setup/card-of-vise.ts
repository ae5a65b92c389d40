import { viseFrom } from '#engine/rack/vise-from.ts'
import { type CardPair, type CardRow, viseCardOf } from '#engine/setup/card.ts'
import { formDefaults } from '#engine/setup/form-wishes.ts'
import type { ShopRecord } from '#model/shop-record.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import { recordOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { listRack, type RackLine } from '#tasks/rack/list-rack.ts'

/** What goes on the card of a vise: every pair that may be used, with what the figures rest on. */
export type ViseCard = { readonly vise: ViseRecord; readonly shop: ShopRecord; readonly airMm: number; readonly bedAirMm: number; readonly rows: readonly CardRow[] }

/**
 * The card of one vise with its fitted jaws, from the mates of the rack that are neither gone nor being made; of four alike
 * one line. Air above jaws and bed are those a form starts from in the shop's unit.
 *
 * @throws Refusal `unknown-record` for the vise
 */
export function cardOfVise(store: Store, viseId: string): Promise<ViseCard> {
  return atOneMoment(store, async (tx) => {
    const vise = await recordOf(tx, 'vise', viseId, 'viseId'), shop = await recordOf(tx, 'shop', 'shop')
    const { airMm, bedAirMm } = formDefaults[shop.units.length]
    const pairs = pairsOf((await listRack(tx)).filter((line) => line.trust !== 'in work'))
    return { vise, shop, airMm, bedAirMm, rows: viseCardOf({ vise: viseFrom(vise), pairs, wishes: { airMm, bedAirMm } }) }
  })
}

function pairsOf(lines: readonly RackLine[]): CardPair[] {
  const byMates = new Map<string, RackLine[]>()
  for (const line of lines) if (line.matesId !== null) byMates.set(line.matesId, [...byMates.get(line.matesId) ?? [], line])
  return [...byMates.values()].filter((mates) => mates.length >= 2).map((mates) => ({
    name: mates[0]!.mates ?? '', slot: mates[0]!.slot, heightMm: mates.reduce((sum, line) => sum + line.heightMm, 0) / mates.length,
  }))
}
