import type { Cited } from '#model/cited.ts'

export const stockKinds = ['bright flat', 'ground flat', 'ground flat with allowance'] as const
/** Cold drawn flat bar; precision ground flat stock of the size ordered; the same with something left to machine. */
export type StockKind = (typeof stockKinds)[number]

/** `low carbon`: C up to 0.20 %, and free-cutting steels of low carbon. `other`: all the rest. */
export type SteelClass = 'low carbon' | 'other'

/** How far stock as delivered may be from a size over `overMm`, up to `toMm`. */
export type DeliveredLimits = Cited & {
  readonly stock: StockKind
  readonly size: 'width' | 'thickness' | 'length'
  /** Null: whatever the steel. */
  readonly steels: SteelClass | null
  readonly overMm: number
  readonly toMm: number
  readonly upperMm: number
  readonly lowerMm: number
}

type Under = readonly [overMm: number, toMm: number, lowerMm: number]

/** h11; up to 18 mm one band. */
const widths: readonly Under[] = [[0, 18, -0.11], [18, 30, -0.13], [30, 50, -0.16], [50, 80, -0.19], [80, 100, -0.22]]
const wideWidths: readonly (readonly [overMm: number, toMm: number, offMm: number])[] = [[100, 150, 0.5], [150, 200, 1], [200, 300, 2], [300, 400, 2.5]]
/** h11 up to 60 mm, h12 above. */
const lowCarbon: readonly Under[] = [
  [1, 3, -0.06], [3, 6, -0.075], [6, 10, -0.09], [10, 18, -0.11], [18, 30, -0.13], [30, 50, -0.16], [50, 60, -0.19], [60, 80, -0.3], [80, 100, -0.35],
]
/** Twice that. */
const others: readonly Under[] = [[3, 6, -0.15], [6, 10, -0.18], [10, 18, -0.22], [18, 30, -0.26], [30, 50, -0.32], [50, 60, -0.38], [60, 80, -0.6], [80, 100, -0.7]]

const bright = (size: 'width' | 'thickness', steels: SteelClass | null) => ([overMm, toMm, lowerMm]: Under): DeliveredLimits =>
  ({ stock: 'bright flat', size, steels, overMm, toMm, upperMm: 0, lowerMm, source: 'EN-10278', standing: 'published' })

const ground = (stock: StockKind, size: DeliveredLimits['size'], overMm: number, toMm: number, upperMm: number): DeliveredLimits =>
  ({ stock, size, steels: null, overMm, toMm, upperMm, lowerMm: 0, source: 'DIN-59350', standing: 'published' })

/** @source EN-10278 DIN-59350 */
export const deliveredLimits: readonly DeliveredLimits[] = [
  ...widths.map(bright('width', null)),
  ...wideWidths.map(([overMm, toMm, offMm]): DeliveredLimits => ({ ...bright('width', null)([overMm, toMm, -offMm]), upperMm: offMm })),
  ...lowCarbon.map(bright('thickness', 'low carbon')),
  ...others.map(bright('thickness', 'other')),
  ground('ground flat', 'thickness', 0, 100, 0.05), ground('ground flat', 'width', 0, 500, 0.2), ground('ground flat', 'length', 0, 1030, 5),
  ground('ground flat with allowance', 'thickness', 0, 100, 0.2), ground('ground flat with allowance', 'width', 0, 500, 0.2), ground('ground flat with allowance', 'length', 0, 1030, 5),
]

/** The limits for one nominal size; null where the table has none. */
export const deliveredWithin = (stock: StockKind, size: DeliveredLimits['size'], steels: SteelClass, nominalMm: number): DeliveredLimits | null =>
  deliveredLimits.find((row) => row.stock === stock && row.size === size && (row.steels === null || row.steels === steels) && nominalMm > row.overMm && nominalMm <= row.toMm) ?? null
