import type { YieldRow } from '#model/yield-row.ts'

/**
 * What is published of the yield stress of a steel at a hardness, straight between two rows; null beyond them and for other steels. Of compression: where
 * bending begins to stay is for the supplier's sheet and the press to say.
 */
export function yieldIndication(rows: readonly YieldRow[], steel: string, hrc: number): YieldRow | null {
  const rising = rows.filter((row) => row.steel === steel).toSorted((a, b) => a.hrc - b.hrc), above = rising.findIndex((row) => row.hrc >= hrc), high = rising[above], low = high?.hrc === hrc ? high : rising[above - 1]
  if (low === undefined || high === undefined) return null
  const share = low === high ? 0 : (hrc - low.hrc) / (high.hrc - low.hrc)
  return { ...high, hrc, yieldMPa: low.yieldMPa + share * (high.yieldMPa - low.yieldMPa) }
}
