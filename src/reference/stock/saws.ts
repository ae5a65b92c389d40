import type { Cited } from '#model/cited.ts'

/** What a saw takes, and what its cut face needs to be milled clean: smallest and largest. */
export type Saw = Cited & { readonly saw: string; readonly kerfMm: readonly [least: number, most: number]; readonly faceMm: readonly [least: number, most: number] }

type Row = readonly [saw: string, kerfMm: readonly [number, number], faceMm: readonly [number, number]]

const rows: readonly Row[] = [
  ['bench band saw, 13 × 0.65', [0.9, 1.1], [1, 2]],
  ['band saw, 20 × 0.9', [1.3, 1.5], [1, 1.5]],
  ['band saw, 27 × 0.9', [1.4, 1.6], [0.8, 1.5]],
  ['band saw, 34 × 1.1', [1.8, 2], [0.8, 1.5]],
  ['cold saw, 250 × 2.0', [2, 2.2], [0.3, 0.8]],
  ['cold saw, 275 × 2.5', [2.5, 2.8], [0.3, 0.8]],
  // Wanders, and its hot skin may be hard.
  ['angle grinder, disc 125 × 1.0', [1.2, 1.5], [1.5, 2]],
  ['angle grinder, disc 230 × 1.9', [2.2, 2.4], [2, 2]],
]

/** @source SHOP-PRACTICE */
export const saws: readonly Saw[] = rows.map(([saw, kerfMm, faceMm]) => ({ saw, kerfMm, faceMm, source: 'SHOP-PRACTICE', standing: 'common practice' }))
