import type { DrillFactor } from '#model/cutting-data.ts'

/** Kd of the handbook's drilling formulas. Of its table of materials only this row is known, and it from memory; the shop gives others. @source DRILL-FORCE */
export const drillFactors: readonly DrillFactor[] = [{ what: 'steel at 200 HB', kd: 24_000, source: 'DRILL-FORCE', standing: 'memory' }]
