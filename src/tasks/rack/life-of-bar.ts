import { type Condition, conditionOf } from '#engine/rack/condition.ts'
import { heightChangeOf, heightsOverYears, type HeightChange } from '#engine/rack/heights-over-years.ts'
import type { Height } from '#engine/rack/height-from.ts'
import { type LifeFacts, type LifeLine, lifeTogether, lineOfLife } from '#engine/rack/line-of-life.ts'
import type { BarRecord } from '#model/bar-record.ts'
import { historyOf } from '#store/history.ts'
import { recordsOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { barNamed } from '#tasks/rack/bar-named.ts'
import { rackFactsOf } from '#tasks/rack/rack-facts.ts'

/** The life of a bar and of its mates beside it; of each how it is today and what heights it was found to have. */
export type LifeOfBars = {
  readonly lines: readonly LifeLine[]
  readonly bars: readonly { readonly record: BarRecord; readonly condition: Condition; readonly heights: readonly Height[]; readonly change: HeightChange | null }[]
}

/** @param idOrCode  of a bar. @throws Refusal `bar-not-known` */
export function lifeOfBar(store: Store, idOrCode: string, { withMates = false }: { readonly withMates?: boolean } = {}): Promise<LifeOfBars> {
  return atOneMoment(store, async (tx) => {
    const bar = await barNamed(tx, idOrCode), facts = await rackFactsOf(tx), names = await namesIn(tx)
    const records = withMates && bar.matesId !== null ? [bar, ...facts.bars.filter(({ id, matesId }) => id !== bar.id && matesId === bar.matesId)] : [bar]
    const lives = [], bars = []
    for (const record of records) {
      const checks = facts.checks.filter(({ readings, looks }) => [...readings, ...looks].some((one) => one.bar === record.id)), events = facts.events.filter((event) => event.bar === record.id), heights = heightsOverYears(record, checks)
      lives.push(lineOfLife(record, await historyOf(tx, 'bar', record.id), { setups: facts.setups, shop: facts.shop, nameOf: names }))
      const usedAtIso = facts.setups.filter((setup) => setup.bars.includes(record.id)).map((setup) => setup.usedAtIso)
      bars.push({ record, condition: conditionOf(record, checks, events, facts.shop, { usedAtIso, today: facts.today }), heights, change: heightChangeOf(heights, events) })
    }
    return { lines: lifeTogether(lives), bars }
  })
}

async function namesIn(tx: Store): Promise<LifeFacts['nameOf']> {
  const names = new Map<string, string>()
  for (const kind of ['slot', 'vise', 'mates'] as const) for (const { id, name } of await recordsOf(tx, kind)) names.set(`${kind} ${id}`, name)
  return (kind, id) => names.get(`${kind} ${id}`) ?? ''
}
