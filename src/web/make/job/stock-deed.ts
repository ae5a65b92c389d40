import type { JobRecord } from '#model/job-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { Edit } from '#web/write.ts'

/** So many of one stock, by its record. */
export type StockCount = { readonly id: string; readonly name: string; readonly count: number }

const prefix = 'stock.'

/** What the cut list begins of stock that is counted, as far as it is there. */
export function stockBegun({ stock }: Pick<ShopSnapshot, 'stock'>, begun: readonly { readonly stockId: string; readonly count: number }[]): readonly StockCount[] {
  return begun.flatMap(({ stockId, count }) => {
    const now = stock.find(({ id }) => id === stockId), taken = Math.min(count, now?.count ?? 0)
    return now && taken > 0 ? [{ id: stockId, name: now.name, count: taken }] : []
  })
}

/** What a job took from the stock when it was sawn: kept in it by `stock.` and the record, so that it can be given back. */
export function stockTaken({ tools }: Pick<JobRecord, 'tools'>, { stock }: Pick<ShopSnapshot, 'stock'>): readonly StockCount[] {
  return stock.flatMap(({ id, name }) => {
    const count = Number(tools[prefix + id] ?? 0)
    return count > 0 ? [{ id, name, count }] : []
  })
}

/** Takes from the counts of the stock, or gives back; what has no count any more keeps none. */
export function stockEdits({ stock }: Pick<ShopSnapshot, 'stock'>, counts: readonly StockCount[], way: 'take' | 'give back'): Edit[] {
  return counts.flatMap(({ id, count }): Edit[] => {
    const now = stock.find((one) => one.id === id)?.count ?? null
    return now === null ? [] : [{ kind: 'stock', record: id, fields: { count: Math.max(0, now + (way === 'take' ? -count : count)) } }]
  })
}

/** The fields of a job with what it took, or with nothing taken. */
export function toolsWith({ tools }: Pick<JobRecord, 'tools'>, taken: readonly StockCount[]): JobRecord['tools'] {
  const others = Object.entries(tools).filter(([key]) => !key.startsWith(prefix))
  return Object.fromEntries([...others, ...taken.map(({ id, count }) => [prefix + id, String(count)] as const)])
}
