import type { BarRecord } from '#model/bar-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { Edit } from '#web/write.ts'

/** What taking some groups of bars as mates changes, and how it was. */
export type Accepting = {
  readonly edits: readonly Edit[]
  readonly undo: readonly Edit[]
  /** Bars that leave mates of theirs behind, with those mates; said beforehand. */
  readonly leaves: readonly { readonly bar: string; readonly behind: readonly string[] }[]
  /** Left behind alone: no pair any more. */
  readonly orphans: readonly string[]
}

/**
 * Makes each group mates. Mates a bar leaves stay mates as long as two are left; one alone is an odd bar again. Groups that
 * are mates already change nothing.
 *
 * @param groups  no bar in two of them
 */
export function acceptMates(groups: readonly (readonly string[])[], { bars }: Pick<ShopSnapshot, 'bars'>, newId: () => string): Accepting {
  const records = new Map(bars.map((bar) => [bar.id, bar])), next = new Map<string, string | null>(), made: Edit[] = []
  for (const group of groups.filter((one) => !areMates(one, bars))) {
    const id = newId()
    made.push({ kind: 'mates', record: id, fields: { name: sharedName(group.flatMap((bar) => records.get(bar) ?? [])), note: '' } })
    for (const bar of group) next.set(bar, id)
  }
  const before = new Set([...next.keys()].flatMap((bar) => records.get(bar)?.matesId ?? []))
  const staying = (matesId: string): readonly string[] => bars.flatMap(({ id, matesId: own }) => (own === matesId && !next.has(id) ? [id] : []))
  const orphans = [...before].flatMap((matesId) => { const left = staying(matesId); return left.length === 1 ? left : [] })
  const leaves = [...next.keys()].flatMap((bar) => {
    const matesId = records.get(bar)?.matesId ?? null, group = groups.find((one) => one.includes(bar))!
    const behind = matesId === null ? [] : bars.flatMap(({ id, matesId: own }) => (own === matesId && !group.includes(id) ? [id] : []))
    return behind.length > 0 ? [{ bar, behind }] : []
  })
  for (const orphan of orphans) next.set(orphan, null)
  const edit = (bar: string, matesId: string | null): Edit => ({ kind: 'bar', record: bar, fields: { matesId } })
  return {
    edits: [...made, ...[...next].map(([bar, matesId]) => edit(bar, matesId))],
    undo: [...next.keys()].map((bar) => edit(bar, records.get(bar)?.matesId ?? null)), leaves, orphans,
  }
}

/** Whether these bars are mates already, alone or with others. */
export function areMates(group: readonly string[], bars: readonly BarRecord[]): boolean {
  const mates = new Set(group.map((id) => bars.find((bar) => bar.id === id)?.matesId ?? null))
  return mates.size === 1 && !mates.has(null)
}

/** What their own names have in common before a number; else none. */
function sharedName(group: readonly BarRecord[]): string {
  const stems = new Set(group.map(({ name }) => name.replace(/ ?\d+$/, '')))
  return stems.size === 1 ? [...stems][0]! : ''
}
