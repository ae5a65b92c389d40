import type { Finding } from '#model/finding.ts'
import type { MakingSteel } from '#model/making-steel.ts'
import type { StockLengthFields } from '#model/stock-length.ts'
import type { StockLimit } from '#model/stock-limit.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** Sizes within which a delivery of so nominal a size is right. */
export type Delivered = { readonly lowMm: number; readonly highMm: number; readonly limit: StockLimit }

/** What a delivered width or thickness may be; null where no table says. A steel nobody has listed has no carbon to go by. */
export function deliveredOf(stock: Pick<StockLengthFields, 'condition' | 'widthMm' | 'thicknessMm'>, dimension: 'width' | 'thickness', steel: MakingSteel | undefined, limits: readonly StockLimit[]): Delivered | null {
  const nominalMm = dimension === 'width' ? stock.widthMm : stock.thicknessMm
  const limit = limits.find((row) => row.condition === stock.condition && row.dimension === dimension && nominalMm > row.overMm + touchMm && nominalMm <= row.toMm + touchMm
    && steel !== undefined && steel.carbonPercent > row.carbonOverPercent && steel.carbonPercent <= row.carbonToPercent)
  return limit === undefined ? null : { lowMm: nominalMm + limit.lowerMm, highMm: nominalMm + limit.upperMm, limit }
}

/** What a measured size says of the delivery: inside its limits, how much of the band it uses, or outside. */
export function judgeDelivered(stockId: string, measuredMm: number, nominalMm: number, { lowMm, highMm, limit }: Delivered): Finding {
  const isInside = measuredMm >= lowMm - touchMm && measuredMm <= highMm + touchMm
  const sharePercent = (100 * Math.abs(measuredMm - nominalMm)) / Math.max(Math.abs(limit.lowerMm), Math.abs(limit.upperMm))
  return { code: isInside ? 'delivery-inside' : 'delivery-outside', facts: { stock: stockId, measuredMm, nominalMm, lowMm, highMm, grade: limit.grade, sharePercent, source: limit.source } }
}
