import type { ShopFields } from '#model/shop-record.ts'
import type { Use } from '#model/wishes.ts'

/** The shop's limits by use, in µm. */
export const useLimits = ({ drilling, milling, fineMilling, grinding }: ShopFields['limitsUm']): { readonly [use in Use]: number } => ({ drilling, milling, 'fine milling': fineMilling, grinding })
