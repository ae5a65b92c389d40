import type { YieldRow } from '#model/yield-row.ts'

/** Both sheets call their figures approximate. Of 1.2842, C45U and 42CrMo4 hardened none was found. @source STEEL-12510-E STEEL-12379-E */
export const yieldRows: readonly YieldRow[] = [
  ...rowsOf('1.2510', 'STEEL-12510-E', [[50, 1350], [55, 1800], [60, 2150], [62, 2200]]),
  ...rowsOf('1.2379', 'STEEL-12379-E', [[50, 1650], [55, 1900], [60, 2150], [62, 2200]]),
]

function rowsOf(steel: string, source: string, rows: readonly (readonly [hrc: number, yieldMPa: number])[]): readonly YieldRow[] {
  return rows.map(([hrc, yieldMPa]) => ({ steel, hrc, yieldMPa, source, standing: 'published' }))
}
