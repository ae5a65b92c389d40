import { randomBytes } from 'node:crypto'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { revisionOf } from '#store/revision.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { snapshotOf } from '#tasks/shop/snapshot.ts'

export type News = {
  /** Differs whenever the shop does. */
  readonly revision: () => Promise<string>
  /** `ShopNews` as JSON: what became of the shop since a revision, or the whole where that is not known any more. */
  readonly since: (revision: string) => Promise<string>
}

type List = keyof ShopSnapshot
type Texts = ReadonlyMap<List, ReadonlyMap<string, string>>
type Kept = { readonly revision: string; readonly texts: Texts; whole?: string }
type Touched = ReadonlyMap<List, ReadonlySet<string>>

/** How many revisions back somebody may have been away and still be told the difference. */
const mostRevisions = 500

/**
 * Reads the shop once for each revision, however many ask, and tells each what it has not heard. The snapshots themselves
 * are compared, so that the news say what a fresh snapshot would.
 */
export function newsOf(store: Store): News {
  // Revisions count from the opening of the database: those of an earlier run are none of this one's.
  const run = randomBytes(6).toString('hex')
  const revision = async (from: Store = store) => `${run}-${await revisionOf(from)}`
  let kept: Kept | null = null, queue: Promise<unknown> = Promise.resolve()
  /** What was touched on the way to each revision, the oldest first; `from`: the one before it. */
  const steps: { readonly from: string; readonly touched: Touched }[] = []

  async function now(): Promise<Kept> {
    if (kept !== null && kept.revision === await revision()) return kept
    const next = await atOneMoment(store, async (tx) => ({ revision: await revision(tx), texts: textsOf(await snapshotOf(tx)) }))
    if (kept !== null) steps.push({ from: kept.revision, touched: touchedBetween(kept.texts, next.texts) })
    if (steps.length > mostRevisions) steps.shift()
    return kept = next
  }

  return {
    revision: () => revision(),
    async since(heard) {
      // One after the other: what was written before somebody asked is in the answer, and only the first has to read.
      const turn = queue.then(now)
      queue = turn.catch(() => undefined)
      const current = await turn, first = steps.findIndex(({ from }) => from === heard)
      if (heard === current.revision) return `{"revision":"${heard}","put":{},"gone":{}}`
      return first < 0 ? current.whole ??= wholeOf(current) : differenceOf(current, steps.slice(first).map(({ touched }) => touched))
    },
  }
}

function textsOf({ shop, ...lists }: ShopSnapshot): Texts {
  const records: readonly (readonly [string, readonly { readonly id: string }[]])[] = [['shop', [shop]], ...Object.entries(lists)]
  return new Map(records.map(([list, all]) => [list as List, new Map(all.map((record) => [record.id, JSON.stringify(record)]))]))
}

function touchedBetween(before: Texts, after: Texts): Touched {
  return new Map([...after].map(([list, texts]) => {
    const old = before.get(list)!
    return [list, new Set([...texts.keys(), ...old.keys()].filter((id) => texts.get(id) !== old.get(id)))]
  }))
}

function wholeOf({ revision, texts }: Kept): string {
  const lists = [...texts].map(([list, records]) => `"${list}":${list === 'shop' ? [...records.values()][0]! : listed(records.values())}`)
  return `{"revision":"${revision}","whole":{${lists.join(',')}}}`
}

function differenceOf({ revision, texts }: Kept, steps: readonly Touched[]): string {
  const put: string[] = [], gone: { [list: string]: readonly string[] } = {}
  for (const [list, records] of texts) {
    const ids = [...new Set(steps.flatMap((touched) => [...touched.get(list) ?? []]))], there = ids.flatMap((id) => records.get(id) ?? []), left = ids.filter((id) => !records.has(id))
    if (there.length > 0) put.push(`"${list}":${list === 'shop' ? there[0]! : listed(there)}`)
    if (left.length > 0) gone[list] = left
  }
  return `{"revision":"${revision}","put":{${put.join(',')}},"gone":${JSON.stringify(gone)}}`
}

const listed = (texts: Iterable<string>): string => `[${[...texts].join(',')}]`
