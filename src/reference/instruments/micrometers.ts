import type { Cited } from '#model/cited.ts'

/** Permissible error ± of an external micrometer by its range, and how parallel its anvils are at 10 N. */
export type MicrometerLimits = Cited & { readonly fromMm: number; readonly toMm: number; readonly limitUm: number; readonly anvilsUm: number }

type Row = readonly [fromMm: number, toMm: number, limitUm: number, anvilsUm: number]

const rows: readonly Row[] = [
  [0, 25, 4, 2], [25, 50, 4, 2], [50, 75, 5, 3], [75, 100, 5, 3], [100, 125, 6, 3], [125, 150, 6, 3],
  [150, 175, 7, 4], [175, 200, 7, 4], [200, 225, 8, 4], [225, 250, 8, 4], [250, 275, 9, 5], [275, 300, 9, 5],
]

/** A bench micrometer that reads 1 µm or finer is outside this table: its certificate counts. @source DIN-863 */
export const micrometers: readonly MicrometerLimits[] = rows
  .map(([fromMm, toMm, limitUm, anvilsUm]) => ({ fromMm, toMm, limitUm, anvilsUm, source: 'DIN-863', standing: 'published' }))

/** The micrometer that measures a size, the smaller one where two meet; null where there is none. */
export const micrometerFor = (sizeMm: number): MicrometerLimits | null => micrometers.find(({ fromMm, toMm }) => sizeMm >= fromMm && sizeMm <= toMm) ?? null
