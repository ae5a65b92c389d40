import type { StockLimit } from '#model/stock-limit.ts'

type Under = readonly [overMm: number, toMm: number, lowerMm: number, grade: string | null]

/** h11; up to 18 mm one band. */
const widths: readonly Under[] = [[0, 18, -0.11, 'h11'], [18, 30, -0.13, 'h11'], [30, 50, -0.16, 'h11'], [50, 80, -0.19, 'h11'], [80, 100, -0.22, 'h11']]
const wideWidths: readonly (readonly [overMm: number, toMm: number, offMm: number])[] = [[100, 150, 0.5], [150, 200, 1], [200, 300, 2], [300, 400, 2.5]]
/** Up to 0.20 % carbon, free-cutting steels among them. */
const lowCarbon: readonly Under[] = [
  [1, 3, -0.06, 'h11'], [3, 6, -0.075, 'h11'], [6, 10, -0.09, 'h11'], [10, 18, -0.11, 'h11'], [18, 30, -0.13, 'h11'], [30, 50, -0.16, 'h11'], [50, 60, -0.19, 'h11'],
  [60, 80, -0.3, 'h12'], [80, 100, -0.35, 'h12'],
]
/** All other steels: twice that. */
const others: readonly Under[] = [
  [3, 6, -0.15, null], [6, 10, -0.18, null], [10, 18, -0.22, null], [18, 30, -0.26, null], [30, 50, -0.32, null], [50, 60, -0.38, null], [60, 80, -0.6, null], [80, 100, -0.7, null],
]

const lowCarbonPercent = 0.2
/** Whatever the steel. */
const anyCarbon = { carbonOverPercent: 0, carbonToPercent: 100 }

const drawn = (dimension: StockLimit['dimension'], carbon: Pick<StockLimit, 'carbonOverPercent' | 'carbonToPercent'>) => ([overMm, toMm, lowerMm, grade]: Under): StockLimit =>
  ({ condition: 'drawn', dimension, ...carbon, overMm, toMm, lowerMm, upperMm: 0, grade, source: 'EN-10278', standing: 'published' })

const ground = (dimension: StockLimit['dimension'], toMm: number, upperMm: number): StockLimit =>
  ({ condition: 'ground flat', dimension, ...anyCarbon, overMm: 0, toMm, lowerMm: 0, upperMm, grade: null, source: 'DIN-59350', standing: 'published' })

/** How far cold drawn flats and ground flat stock may be from their sizes as delivered. @source EN-10278 DIN-59350 */
export const deliveredLimits: readonly StockLimit[] = [
  ...widths.map(drawn('width', anyCarbon)),
  ...wideWidths.map(([overMm, toMm, offMm]): StockLimit => ({ ...drawn('width', anyCarbon)([overMm, toMm, -offMm, null]), upperMm: offMm })),
  ...lowCarbon.map(drawn('thickness', { carbonOverPercent: 0, carbonToPercent: lowCarbonPercent })),
  ...others.map(drawn('thickness', { carbonOverPercent: lowCarbonPercent, carbonToPercent: 100 })),
  ground('thickness', 100, 0.05), ground('width', 500, 0.2),
]

/** The limits for one nominal size; null where the table has none. */
export const deliveredWithin = (condition: StockLimit['condition'], dimension: StockLimit['dimension'], carbonPercent: number, nominalMm: number): StockLimit | null =>
  deliveredLimits.find((row) => row.condition === condition && row.dimension === dimension && carbonPercent > row.carbonOverPercent && carbonPercent <= row.carbonToPercent && nominalMm > row.overMm && nominalMm <= row.toMm) ?? null
