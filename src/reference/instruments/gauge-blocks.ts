import type { Cited } from '#model/cited.ts'

export const blockGrades = ['K', '00', '0', '1', '2'] as const
export type BlockGrade = (typeof blockGrades)[number]

/** Limits of gauge blocks up to a nominal size: of the length at any point from nominal ±, and how much the length may vary. */
export type BlockLimits = Cited & { readonly grade: BlockGrade; readonly overMm: number; readonly toMm: number; readonly limitUm: number; readonly variationUm: number }

type Row = readonly [toMm: number, limit00: number, variation00: number, limit0: number, variation0: number, limit1: number, variation1: number, limit2: number, variation2: number]

const rows: readonly Row[] = [
  [10, 0.06, 0.05, 0.12, 0.1, 0.2, 0.16, 0.45, 0.3], [25, 0.07, 0.05, 0.14, 0.1, 0.3, 0.16, 0.6, 0.3], [50, 0.1, 0.06, 0.2, 0.1, 0.4, 0.18, 0.8, 0.3],
  [75, 0.12, 0.06, 0.25, 0.12, 0.5, 0.18, 1, 0.35], [100, 0.14, 0.07, 0.3, 0.12, 0.6, 0.2, 1.2, 0.35], [150, 0.2, 0.08, 0.4, 0.14, 0.8, 0.2, 1.6, 0.4],
  [200, 0.25, 0.09, 0.5, 0.16, 1, 0.25, 2, 0.4], [250, 0.3, 0.1, 0.6, 0.16, 1.2, 0.25, 2.4, 0.45], [300, 0.35, 0.1, 0.7, 0.18, 1.4, 0.25, 2.8, 0.5],
  [400, 0.45, 0.12, 0.9, 0.2, 1.8, 0.3, 3.6, 0.5], [500, 0.5, 0.14, 1.1, 0.25, 2.2, 0.35, 4.4, 0.6], [600, 0.6, 0.16, 1.3, 0.25, 2.6, 0.4, 5, 0.7],
  [700, 0.7, 0.18, 1.5, 0.3, 3, 0.45, 6, 0.7], [800, 0.8, 0.2, 1.7, 0.3, 3.4, 0.5, 6.5, 0.8], [900, 0.9, 0.2, 1.9, 0.35, 3.8, 0.5, 7.5, 0.9],
]

const limitsOf = ([toMm, limit00, variation00, limit0, variation0, limit1, variation1, limit2, variation2]: Row, k: number): readonly BlockLimits[] => {
  const size = { overMm: k === 0 ? 0 : rows[k - 1]![0], toMm }
  const row = (grade: BlockGrade, limitUm: number, variationUm: number): BlockLimits => ({ grade, ...size, limitUm, variationUm, source: 'DIN-861', standing: 'published' })
  return [
    // From memory: the limit of grade 1 with the variation of grade 00.
    { ...row('K', limit1, variation00), source: 'ISO-3650', standing: 'memory' },
    row('00', limit00, variation00), row('0', limit0, variation0), row('1', limit1, variation1), row('2', limit2, variation2),
  ]
}

/** Up to 900 mm; the last row of the copies seen has a value out of line and is left out. @source DIN-861 ISO-3650 */
export const gaugeBlocks: readonly BlockLimits[] = rows.flatMap(limitsOf)

/** The limits of one block; null beyond the table. */
export const blockLimits = (grade: BlockGrade, nominalMm: number): BlockLimits | null =>
  gaugeBlocks.find((row) => row.grade === grade && nominalMm > row.overMm && nominalMm <= row.toMm) ?? null
