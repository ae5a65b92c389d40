import type { Cited } from '#model/cited.ts'

/** `mild`: C below 0.25 %. `alloy`: C above it, alloyed, quenched and tempered. `tool`: stainless, bearing and tool steels. */
export type StraightnessClass = 'mild' | 'alloy' | 'tool'

/** How crooked a cold drawn flat may be, in mm for each metre, by its width and width over thickness. An even arc falls with the square of the length. */
export type Straightness = Cited & {
  readonly steels: StraightnessClass
  readonly fromWidthMm: number
  readonly belowWidthMm: number | null
  readonly fromRatio: number
  readonly belowRatio: number | null
  /** Bent in the direction of its width, and of its thickness. */
  readonly acrossWidthMmPerM: number
  readonly acrossThicknessMmPerM: number
}

type Row = readonly [steels: StraightnessClass, narrow: readonly [number, number], wide: readonly [number, number], wideThin: readonly [number, number]]

const rows: readonly Row[] = [
  ['mild', [1.5, 1.5], [1.5, 2], [2, 2.5]],
  ['alloy', [1.5, 2], [2, 2.5], [2.5, 3]],
  ['tool', [1.5, 2], [2, 2.5], [2.5, 3]],
]

const limits = ([acrossWidthMmPerM, acrossThicknessMmPerM]: readonly [number, number]) => ({ acrossWidthMmPerM, acrossThicknessMmPerM, source: 'EN-10278', standing: 'published' as const })

/** @source EN-10278 */
export const straightness: readonly Straightness[] = rows.flatMap(([steels, narrow, wide, wideThin]) => [
  { steels, fromWidthMm: 0, belowWidthMm: 120, fromRatio: 0, belowRatio: null, ...limits(narrow) },
  { steels, fromWidthMm: 120, belowWidthMm: null, fromRatio: 0, belowRatio: 10, ...limits(wide) },
  { steels, fromWidthMm: 120, belowWidthMm: null, fromRatio: 10, belowRatio: null, ...limits(wideThin) },
])

/** The row of one flat. */
export const straightnessOf = (steels: StraightnessClass, widthMm: number, thicknessMm: number): Straightness =>
  straightness.find((row) => row.steels === steels && widthMm >= row.fromWidthMm && widthMm < (row.belowWidthMm ?? Infinity) && widthMm / thicknessMm >= row.fromRatio && widthMm / thicknessMm < (row.belowRatio ?? Infinity))!
