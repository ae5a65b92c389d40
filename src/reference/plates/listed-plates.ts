import type { Cited } from '#model/cited.ts'

/** A plate that a rule lists by its size; other grades are the same multiples of it as in `plateGrades`. */
export type ListedPlate = Cited & { readonly rule: string; readonly lengthIn: number; readonly widthIn: number; readonly finestUin: number }

type Row = readonly [lengthIn: number, widthIn: number, finestUin: number]

const rows: readonly Row[] = [
  [12, 12, 50], [12, 18, 50], [18, 18, 50], [18, 24, 80], [24, 24, 80], [24, 36, 100], [24, 48, 150], [30, 48, 180], [36, 36, 150], [36, 48, 200],
  [36, 60, 250], [36, 72, 300], [48, 48, 200], [48, 60, 300], [48, 72, 350], [48, 96, 500], [48, 120, 700], [60, 120, 750], [72, 96, 600], [72, 144, 1100],
]

/** Grade AA. The listed values differ from the formula by up to 24 µin and go before it. @source ASME-B89-3-7 */
export const listedPlates: readonly ListedPlate[] = rows
  .map(([lengthIn, widthIn, finestUin]) => ({ rule: 'ASME B89.3.7', lengthIn, widthIn, finestUin, source: 'ASME-B89-3-7', standing: 'published' }))

/** A plate counts as a listed one if neither side is further off. @source ASME-B89-3-7 */
export const listedWithin = { share: 0.05, source: 'ASME-B89-3-7', standing: 'published' } as const
