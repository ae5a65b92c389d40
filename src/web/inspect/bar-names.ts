import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import type { DraftBar } from '#model/check-draft.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { barCalled } from '#words/say-bar.ts'
import type { NameOf } from '#words/wording.ts'

/** How the bars of one check are called: height and name; those of one name are told apart by the begin of their codes. */
export function barNamer(ids: readonly string[], { bars, mates, checks }: Pick<ShopSnapshot, 'bars' | 'mates' | 'checks'>, { heights }: Pick<InspectFacts, 'heights'>, units: Units, typed: readonly DraftBar[] = []): NameOf {
  const marked = new Map(checks.flatMap(({ method, readings }) => (method === 'stated' ? readings.flatMap(({ bar, heightMm }) => (ids.includes(bar) ? [[bar, heightMm] as const] : [])) : [])))
  const called = new Map(ids.map((id, at) => {
    const record = bars.find((bar) => bar.id === id), heightMm = calledFrom(heights(id)?.heightMm, marked.get(id))
    const name = record?.name ?? typed.find(({ bar }) => bar === id)?.name ?? '', group = mates.find((one) => one.id === record?.matesId)?.name ?? null
    const own = heightMm === undefined ? name || (group ?? '') : barCalled({ heightMm, name, mates: group }, units)
    return [id, { own: own || `bar ${at + 1}`, code: record?.code ?? '' }] as const
  }))
  return (id) => {
    const one = called.get(id)
    if (one === undefined) return '?'
    const alone = [...called.values()].filter(({ own }) => own === one.own).length === 1
    return alone || one.code === '' ? one.own : `${one.own} ${one.code.slice(0, 4)}`
  }
}

/** As in the rack: what is marked on it as long as it is that, else what was measured. */
function calledFrom(heightMm: number | undefined, marked: number | undefined): number | undefined {
  return heightMm !== undefined && marked !== undefined && Math.abs(marked - heightMm) <= stillMarkedMm ? marked : heightMm
}

const stillMarkedMm = 0.1
