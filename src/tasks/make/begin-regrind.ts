import { plannedWithOf } from '#engine/make/job/planned-with.ts'
import { regrindJob } from '#engine/make/regrind/regrind-job.ts'
import { barsFrom } from '#engine/rack/bar-from.ts'
import { firstChange } from '#model/record-fields.ts'
import type { Use } from '#model/wishes.ts'
import { applyChanges } from '#store/changes.ts'
import { recordsOf } from '#store/records.ts'
import { inTransaction, type Store } from '#store/store.ts'
import type { Maker } from '#tasks/maker.ts'
import { rackFactsOf } from '#tasks/rack/rack-facts.ts'
import { type RegrindAsked, regrindTyped } from '#tasks/rack/work-of-rack.ts'
import { listOf } from '#words/wording.ts'

/** `name` left out: the names of the bars; `use`: what they are to be good for afterwards. */
export type RegrindJobAsked = RegrindAsked & { readonly use: Use; readonly name?: string }

/** Keeps the regrinding of bars of the rack as a job, and answers its id. @throws Refusal `bar-not-known`, as `regrindJob` */
export function beginRegrind(store: Store, { use, name = '', ...asked }: RegrindJobAsked, by: Maker): Promise<string> {
  return inTransaction(store, async (tx) => {
    const facts = await rackFactsOf(tx), { ids, typed, low } = await regrindTyped(tx, asked), { shop, bars } = facts
    const called = listOf(ids.map((id) => { const bar = bars.find((one) => one.id === id)!; return bar.name || bar.code }))
    const fields = regrindJob(ids, { records: bars, rack: barsFrom(facts, { viseId: null }), jobs: await recordsOf(tx, 'job') }, {
      typed, low, use, name: name.trim() || called, units: shop.units, planned: plannedWithOf({ shop, machines: await recordsOf(tx, 'machine'), stock: [] }, null, by.atIso.slice(0, 10)),
    }), id = by.newId()
    await applyChanges(tx, [firstChange('job', id, fields, by)])
    return id
  })
}
