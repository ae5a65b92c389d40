import type { BlackBar } from '#model/black-bar.ts'

const widths = [12.7, 25.4, 50.8, 76.2, 101.6] as const
const rows = [
  { overThicknessMm: 0, toThicknessMm: 12.7, faceMm: [0.64, 0.76, 0.89, 1.02], edgeMm: [0.91, 1.12, 1.42, 1.73] },
  { overThicknessMm: 12.7, toThicknessMm: 25.4, faceMm: [1.14, 1.14, 1.27, 1.4], edgeMm: [1.14, 1.32, 1.63, 2.03] },
] as const

/** From an inch table. @source HOT-ROLLED-ALLOWANCE */
export const blackBars: readonly BlackBar[] = rows.flatMap(({ faceMm, edgeMm, ...thickness }) => faceMm.map((face, k) => ({
  ...thickness, overWidthMm: widths[k]!, toWidthMm: widths[k + 1]!, faceMm: face, edgeMm: edgeMm[k]!, source: 'HOT-ROLLED-ALLOWANCE', standing: 'published' as const,
})))
