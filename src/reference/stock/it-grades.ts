import type { Cited } from '#model/cited.ts'

/** Standard tolerance grades for sizes over `overMm` up to and including `toMm`: `um[0]` is IT1, `um[13]` IT14. */
export type ItGrades = Cited & { readonly overMm: number; readonly toMm: number; readonly um: readonly number[] }

type Row = readonly [overMm: number, toMm: number, ...um: readonly number[]]

const rows: readonly Row[] = [
  [0, 3, 0.8, 1.2, 2, 3, 4, 6, 10, 14, 25, 40, 60, 100, 140, 250],
  [3, 6, 1, 1.5, 2.5, 4, 5, 8, 12, 18, 30, 48, 75, 120, 180, 300],
  [6, 10, 1, 1.5, 2.5, 4, 6, 9, 15, 22, 36, 58, 90, 150, 220, 360],
  [10, 18, 1.2, 2, 3, 5, 8, 11, 18, 27, 43, 70, 110, 180, 270, 430],
  [18, 30, 1.5, 2.5, 4, 6, 9, 13, 21, 33, 52, 84, 130, 210, 330, 520],
  [30, 50, 1.5, 2.5, 4, 7, 11, 16, 25, 39, 62, 100, 160, 250, 390, 620],
  [50, 80, 2, 3, 5, 8, 13, 19, 30, 46, 74, 120, 190, 300, 460, 740],
  [80, 120, 2.5, 4, 6, 10, 15, 22, 35, 54, 87, 140, 220, 350, 540, 870],
  [120, 180, 3.5, 5, 8, 12, 18, 25, 40, 63, 100, 160, 250, 400, 630, 1000],
  [180, 250, 4.5, 7, 10, 14, 20, 29, 46, 72, 115, 185, 290, 460, 720, 1150],
]

/** The table, not the formula behind it: below 10 mm it was rounded up. @source ISO-286 */
export const itGrades: readonly ItGrades[] = rows.map(([overMm, toMm, ...um]) => ({ overMm, toMm, um, source: 'ISO-286', standing: 'published' }))

/** Width of grade 1 to 14 for a size; null beyond the table. */
export const itUm = (grade: number, sizeMm: number): number | null => itGrades.find(({ overMm, toMm }) => sizeMm > overMm && sizeMm <= toMm)?.um[grade - 1] ?? null
