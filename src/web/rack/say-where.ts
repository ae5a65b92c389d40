import type { Where } from '#model/bar-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'

/** Where a bar is, as a phrase: `in its slot`, `in Mill 1`, `out with KM`. */
export function sayWhere(where: Where, shop: Pick<ShopSnapshot, 'vises'> | null): string {
  if (where.at === 'slot') return 'in its slot'
  if (where.at === 'vise') return `in ${viseName(where.viseId, shop)}`
  return where.to === 'machine' ? `at ${where.who}` : `out with ${where.who}`
}

/** Who or what has it, by name alone. */
export const holderName = (where: Exclude<Where, { at: 'slot' }>, shop: Pick<ShopSnapshot, 'vises'>): string => (where.at === 'vise' ? viseName(where.viseId, shop) : where.who)

const viseName = (id: string, shop: Pick<ShopSnapshot, 'vises'> | null): string => shop?.vises.find((vise) => vise.id === id)?.name ?? '?'
