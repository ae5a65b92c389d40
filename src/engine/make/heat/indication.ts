import type { Cited } from '#model/cited.ts'
import type { HardnessRow } from '#model/heat-table.ts'

/** A hardness on other scales: an indication only, never to be printed in the place of what was measured. */
export type Indication = Cited & { readonly hrc: number; readonly hv: number; readonly rmMPa: number | null }

/** Straight between two rows; null beyond the table. The tensile strength is null where a row beside it has none. */
export function indicationOf(rows: readonly HardnessRow[], hrc: number): Indication | null {
  const rising = rows.toSorted((a, b) => a.hrc - b.hrc), above = rising.findIndex((row) => row.hrc >= hrc), high = rising[above], low = high?.hrc === hrc ? high : rising[above - 1]
  if (low === undefined || high === undefined) return null
  const share = low === high ? 0 : (hrc - low.hrc) / (high.hrc - low.hrc)
  return {
    hrc, hv: low.hv + share * (high.hv - low.hv), rmMPa: low.rmMPa === null || high.rmMPa === null ? null : low.rmMPa + share * (high.rmMPa - low.rmMPa),
    source: high.source, standing: high.standing,
  }
}
