import { type ViseCard, viseCardFrom } from '#engine/rack/vise-card.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { rackFactsOf } from '#tasks/rack/rack-facts.ts'

/** The card of one vise with its fitted jaws. @throws Refusal `unknown-record` for the vise */
export function cardOfVise(store: Store, viseId: string): Promise<ViseCard> {
  return atOneMoment(store, async (tx) => viseCardFrom(await recordOf(tx, 'vise', viseId, 'viseId'), { ...await rackFactsOf(tx), mates: await recordsOf(tx, 'mates'), slots: await recordsOf(tx, 'slot') }))
}
