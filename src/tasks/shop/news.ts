import { randomBytes } from 'node:crypto'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { revisionOf } from '#store/revision.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { cameSince, tipsOf, type Tips } from '#store/tips.ts'
import { oneLook } from '#tasks/shop/one-look.ts'
import { snapshotOf, someOfSnapshot } from '#tasks/shop/snapshot.ts'

export type News = {
  /** Differs whenever the shop does. */
  readonly revision: () => Promise<string>
  /** `ShopNews` as JSON: what became of the shop since a revision, or the whole where that is not known any more. */
  readonly since: (revision: string) => Promise<string>
}

type List = keyof ShopSnapshot
type Shown = { readonly id: string; readonly atIso?: string }
/** A record as JSON, and when it came about where its list is in the order of time. */
type Text = { readonly json: string; readonly atIso: string }
type Texts = ReadonlyMap<List, ReadonlyMap<string, Text>>
type Kept = { readonly revision: string; readonly tips: Tips | null; readonly texts: Texts; readonly told: Map<string, string> }
type Touched = ReadonlyMap<List, ReadonlySet<string>>

/** How many revisions back somebody may have been away and still be told the difference. */
const mostRevisions = 500

/**
 * Reads what is new once for each revision, however many ask, and tells each what it has not heard: what a fresh snapshot
 * would show. Where the database does not say what came last, snapshots themselves are compared.
 */
export function newsOf(store: Store): News {
  // Revisions count from the opening of the database: those of an earlier run are none of this one's.
  const run = randomBytes(6).toString('hex')
  const revision = async (from: Store = store) => `${run}-${await revisionOf(from)}`
  let kept: Kept | null = null
  /** What was touched on the way to each revision, the oldest first; `from`: the one before it. */
  const steps: { readonly from: string; readonly touched: Touched }[] = []

  async function now(): Promise<Kept> {
    if (kept !== null && kept.revision === await revision()) return kept
    const before = kept, next = await atOneMoment(store, async (tx) => ({ revision: await revision(tx), tips: await tipsOf(tx), texts: await textsAfter(tx, before), told: new Map<string, string>() }))
    if (before !== null) steps.push({ from: before.revision, touched: touchedBetween(before.texts, next.texts) })
    if (steps.length > mostRevisions) steps.shift()
    return kept = next
  }

  const look = oneLook(now)
  return {
    revision: oneLook(() => revision()),
    async since(heard) {
      const current = await look(), first = steps.findIndex(({ from }) => from === heard), from = first < 0 ? 'none' : heard
      if (heard === current.revision) return `{"revision":"${heard}","put":{},"gone":{}}`
      const answer = current.told.get(from) ?? (first < 0 ? wholeOf(current) : differenceOf(current, steps.slice(first).map(({ touched }) => touched)))
      current.told.set(from, answer)
      return answer
    },
  }
}

/** The texts of the shop as it is: those before with what came since, where that is known; a list that nothing came into is the same as before. */
async function textsAfter(tx: Store, before: Kept | null): Promise<Texts> {
  const came = before?.tips ? await cameSince(tx, before.tips) : null
  if (before === null || came === null) return textsOf(await snapshotOf(tx))
  const texts = new Map(before.texts)
  for (const { list, ids, shown } of await someOfSnapshot(tx, came)) {
    const all = new Map(texts.get(list))
    for (const id of ids) all.delete(id)
    for (const record of shown) all.set(record.id, textOf(record))
    texts.set(list, all)
  }
  return texts
}

function textsOf({ shop, ...lists }: ShopSnapshot): Texts {
  const records: readonly (readonly [string, readonly Shown[]])[] = [['shop', [shop]], ...Object.entries(lists)]
  return new Map(records.map(([list, all]) => [list as List, new Map(all.map((record) => [record.id, textOf(record)]))]))
}

const textOf = (record: Shown): Text => ({ json: JSON.stringify(record), atIso: record.atIso ?? '' })

function touchedBetween(before: Texts, after: Texts): Touched {
  return new Map([...after].map(([list, texts]) => {
    const old = before.get(list)!
    return [list, new Set(old === texts ? [] : [...texts.keys(), ...old.keys()].filter((id) => texts.get(id)?.json !== old.get(id)?.json))]
  }))
}

function wholeOf({ revision, texts }: Kept): string {
  const lists = [...texts].map(([list, records]) => `"${list}":${list === 'shop' ? records.get('shop')!.json : listed(inOrder(records))}`)
  return `{"revision":"${revision}","whole":{${lists.join(',')}}}`
}

/** As the store lists them: in the order of time where they have one, then of ids. */
function inOrder(records: ReadonlyMap<string, Text>): Text[] {
  return [...records].sort(([a, { atIso: aIso }], [b, { atIso: bIso }]) => (aIso === bIso ? (a < b ? -1 : 1) : aIso < bIso ? -1 : 1)).map(([, text]) => text)
}

function differenceOf({ revision, texts }: Kept, steps: readonly Touched[]): string {
  const put: string[] = [], gone: { [list: string]: readonly string[] } = {}
  for (const [list, records] of texts) {
    const ids = [...new Set(steps.flatMap((touched) => [...touched.get(list) ?? []]))], there = ids.flatMap((id) => records.get(id) ?? []), left = ids.filter((id) => !records.has(id))
    if (there.length > 0) put.push(`"${list}":${list === 'shop' ? there[0]!.json : listed(there)}`)
    if (left.length > 0) gone[list] = left
  }
  return `{"revision":"${revision}","put":{${put.join(',')}},"gone":${JSON.stringify(gone)}}`
}

const listed = (texts: readonly Text[]): string => `[${texts.map(({ json }) => json).join(',')}]`
