import type { GrindingAllowance } from '#model/grinding-allowance.ts'

type Row = readonly [overLengthMm: number, toLengthMm: number, thinFaceMm: readonly [number, number], thickFaceMm: readonly [number, number], edgeMm: readonly [number, number]]

const rows: readonly Row[] = [
  [0, 100, [0.2, 0.3], [0.15, 0.25], [0.2, 0.3]], [100, 160, [0.25, 0.4], [0.2, 0.3], [0.25, 0.4]],
  [160, 250, [0.35, 0.5], [0.25, 0.4], [0.35, 0.5]], [250, 300, [0.45, 0.6], [0.35, 0.5], [0.4, 0.6]],
]

/** No handbook table was found; until the shop has a history of its own. @source SHOP-PRACTICE */
export const grindingAllowances: readonly GrindingAllowance[] = rows
  .map(([overLengthMm, toLengthMm, thinFaceMm, thickFaceMm, edgeMm]) => ({ overLengthMm, toLengthMm, thinFaceMm, thickFaceMm, edgeMm, source: 'SHOP-PRACTICE', standing: 'common practice' }))
