import type { CheckForm } from '#model/check-draft.ts'
import type { InstrumentIs } from '#model/instrument-record.ts'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import type { ReadCell } from '#engine/inspect/read-cell.ts'
import { unitSlipOf } from '#engine/inspect/unit-slip.ts'

/** µm. Around zero readings differ by large factors; nearer to a neighbour than this none is asked about. Common practice, no source. */
const slipToldUm = 2

/** mm. A spindle travels so far beyond what its range is called. Common practice, no source. */
const beyondRangeMm = 0.2

/** Asks about readings of an indicator that are a slip of the unit away from the others of their bar and face. */
export function askReadings(cells: readonly ReadCell[]): readonly ReadCell[] {
  return cells.map((one) => {
    if (one.um === null || one.asks) return one
    const value = one.um, others = cells.flatMap((other) => (other === one || other.cell.bar !== one.cell.bar || other.cell.face !== one.cell.face || other.asks ? [] : other.um ?? []))
    const factor = unitSlipOf(value, others)
    if (factor === null || Math.min(...others.map((other) => Math.abs(other - value))) < slipToldUm) return one
    const meantUm = value / factor
    return { ...one, asks: { code: 'reading-unit-slip', facts: { readingUm: value, factor, meantUm, meant: `${meantUm > 0 ? '+' : ''}${shown(meantUm)} µm` } } }
  })
}

/** Asks about heights that are a slip of the unit away from what their bar was taken to have, or else from the other readings; and about those no such micrometer reads. */
export function askHeights(cells: readonly ReadCell[], gauge: InstrumentIs | null, heights: InspectFacts['heights'], unit: CheckForm['unit']): readonly ReadCell[] {
  return cells.map((one) => {
    if (one.heightMm === null) return one
    const heightMm = one.heightMm, known = heights(one.cell.bar)?.heightMm
    const others = cells.flatMap((other) => (other === one || other.cell.bar !== one.cell.bar ? [] : other.heightMm ?? []))
    const factor = unitSlipOf(heightMm, known === undefined ? others : [known])
    if (factor !== null) {
      const meantMm = heightMm / factor
      return { ...one, asks: { code: 'height-unit-slip', facts: { heightMm, factor, meantMm, meant: unit === 'mm' ? `${shown(meantMm)} mm` : `${shown(meantMm / 25.4)} in` } } }
    }
    if (gauge?.is !== 'micrometer' || (heightMm >= gauge.fromMm - beyondRangeMm && heightMm <= gauge.toMm + beyondRangeMm)) return one
    return { ...one, asks: { code: 'outside-instrument-range', facts: { heightMm, fromMm: gauge.fromMm, toMm: gauge.toMm } } }
  })
}

const shown = (value: number): string => String(Math.round(value * 1e4) / 1e4)
