import type { BarRecord, Where } from '#model/bar-record.ts'

/** What one vise, person, machine or other shop has, and which of it is overdue: due back before today. */
export type Holding = {
  readonly where: Exclude<Where, { at: 'slot' }>
  /** Those longest away first. `sinceIso` null: an earlier program wrote it. */
  readonly bars: readonly { readonly id: string; readonly sinceIso: string | null; readonly dueOn: string | null; readonly isOverdue: boolean }[]
  readonly overdue: number
}

/** Who has what now; those with something overdue first, then by name. `today`: `2026-03-31`. */
export function whoHasWhat(bars: readonly Pick<BarRecord, 'id' | 'where'>[], today: string): readonly Holding[] {
  const holdings = new Map<string, { readonly where: Holding['where']; readonly bars: Holding['bars'][number][] }>()
  for (const { id, where } of bars) {
    if (where.at === 'slot') continue
    const key = holderKey(where), holding = holdings.get(key) ?? { where, bars: [] }, dueOn = where.dueOn ?? null
    holding.bars.push({ id, sinceIso: where.sinceIso ?? null, dueOn, isOverdue: isOverdue(where, today) })
    holdings.set(key, holding)
  }
  return [...holdings].map(([key, { where, bars: held }]) => ({
    key, where, bars: held.toSorted((a, b) => inWords(a.sinceIso ?? '', b.sinceIso ?? '') || inWords(a.id, b.id)), overdue: held.filter((bar) => bar.isOverdue).length,
  })).sort((a, b) => Math.sign(b.overdue) - Math.sign(a.overdue) || inWords(a.key, b.key)).map(({ key: _key, ...holding }) => holding)
}

/** Whether bars should have been back by now. The day they are due they still may be out. */
export const isOverdue = (where: Where, today: string): boolean => where.at !== 'slot' && where.dueOn !== undefined && where.dueOn < today

const holderKey = (where: Holding['where']): string => (where.at === 'vise' ? `vise ${where.viseId}` : `${where.to ?? 'person'} ${where.who.trim().toUpperCase()}`)
const inWords = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1)
