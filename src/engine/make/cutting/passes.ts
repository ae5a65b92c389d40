export type PassKind = 'rough' | 'finish' | 'spring'
/** `widthMm`: how much further in than the pass before the cutter is set. */
export type PassPlan = { readonly kind: PassKind; readonly widthMm: number; readonly direction: 'conventional' | 'climb' }

/** Two widths nearer than this are equal: rounding alone starts no pass. */
const sameMm = 1e-9

/**
 * Widths to take from a wall: as many equal roughing passes as are needed, none wider than told, then the finishing pass. They add
 * to the stock. Stock that the finishing pass takes alone gets no other.
 */
export function passWidths(stockMm: number, roughMm: number, finishMm: number): readonly PassPlan[] {
  const lastMm = Math.min(finishMm, stockMm), roughStockMm = stockMm - lastMm, count = roughStockMm <= sameMm ? 0 : Math.ceil(roughStockMm / roughMm - sameMm)
  return [
    ...Array.from({ length: count }, () => ({ kind: 'rough' as const, widthMm: roughStockMm / count, direction: 'conventional' as const })),
    { kind: 'finish', widthMm: lastMm, direction: 'conventional' },
  ]
}

/** Once more at the same setting. Common practice, no source. */
export const springPass: PassPlan = { kind: 'spring', widthMm: 0, direction: 'climb' }
