import type { Cited } from '#model/cited.ts'
import type { GrindingRow } from '#model/cutting-data.ts'

type Row = readonly [work: GrindingRow['work'], hardened: boolean, roughMostUm: number, finishMostUm: number, crossfeedShare: number, standing: Cited['standing']]

/** Thousandths of an inch, converted: 3 and 2, half and one. The rows of hardened alloy and tool steel are in part from memory. */
const rows: readonly Row[] = [
  ['plain carbon', false, 76, 13, 1 / 4, 'published'], ['plain carbon', true, 76, 13, 1 / 10, 'published'],
  ['alloy', false, 76, 25, 1 / 4, 'published'], ['alloy', true, 76, 13, 1 / 10, 'memory'],
  ['tool steel', false, 50, 13, 1 / 5, 'memory'], ['tool steel', true, 50, 13, 1 / 10, 'memory'],
]

/** The most a stiff machine takes; a small toolroom grinder takes a fifth of it. @source SURFACE-GRINDING */
export const surfaceGrinding: readonly GrindingRow[] = rows.map(([work, hardened, roughMostUm, finishMostUm, crossfeedShare, standing]) =>
  ({ work, hardened, roughMostUm, finishMostUm, crossfeedShare, wheelMPerS: [28, 33], tableMPerMin: [15, 30], source: 'SURFACE-GRINDING', standing }))
