import { conditionsOf } from '#engine/rack/bar-from.ts'
import type { Condition } from '#engine/rack/condition.ts'
import { finderOf } from '#engine/rack/find.ts'
import { isOverdue } from '#engine/rack/who-has-what.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { listRack, type RackLine } from '#tasks/rack/list-rack.ts'
import { rackFactsOf } from '#tasks/rack/rack-facts.ts'

/** Bars as hands ask for them, in the order of the list: `30-32 t8`, `35`, `A3`, `look first`, the text of a label. Gone ones where they are asked for. */
export function findInRack(store: Store, typed: string): Promise<readonly RackLine[]> {
  return atOneMoment(store, async (tx) => {
    const { units } = await recordOf(tx, 'shop', 'shop'), vises = new Map((await recordsOf(tx, 'vise')).map(({ id, name }) => [id, name]))
    const lines = await listRack(tx, { gone: /\b(gone|retired)\b/i.test(typed) }), facts = await rackFactsOf(tx), conditions = conditionsOf(facts)
    const find = finderOf(lines.map(({ where, ...line }) => ({
      ...line, calledMm: null, elsewhere: where.at === 'slot' ? null : where.at === 'vise' ? vises.get(where.viseId) ?? '' : where.who,
      more: [...(isOverdue(where, facts.today) ? ['overdue'] : []), ...(line.trust === 'gone' ? ['retired'] : []), ...(line.orphan ? ['orphan'] : []), ...(where.at === 'slot' ? [] : ['out']), ...toldOf(conditions.get(line.id))],
    })), units)
    return find(typed).map((k) => lines[k]!)
  })
}

const toldOf = (condition: Condition | undefined): readonly string[] => [...(condition?.open ?? []), ...(condition?.magnetised ? ['magnetised'] : [])]
