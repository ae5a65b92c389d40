import { compressionOf } from '#engine/setup/hold/strength.ts'
import { pointsOn, type Support } from '#engine/setup/seat/support.ts'
import type { Spring } from '#engine/setup/seat-elastic/springs.ts'

/** Stiffness of bars and part; the height of the part left out: it counts as rigid. */
export type Stiffness = { readonly barMPa: number; readonly partMPa: number; readonly partHeightMm: number | null }

/**
 * Each station as a spring: the piece of bar that belongs to it, half way to its neighbours, in series with the part above it.
 *
 * @source STRENGTH
 */
export function springsOn(support: Support, { barMPa, partMPa, partHeightMm }: Stiffness): readonly (Spring & { readonly bar: number })[] {
  const points = pointsOn(support)
  return support.bars.flatMap((bar, b) => {
    const own = points.filter((point) => point.bar === b)
    return own.map((point, k) => {
      const pieceMm = ((own[k + 1]?.xMm ?? point.xMm) - (own[k - 1]?.xMm ?? point.xMm)) / 2, piece = { thicknessMm: bar.thicknessMm, lengthMm: pieceMm, forceN: 0 }
      const below = compressionOf({ ...piece, heightMm: bar.heightMm, eMPa: barMPa }).stiffnessNPerUm
      const above = partHeightMm === null ? Infinity : compressionOf({ ...piece, heightMm: partHeightMm, eMPa: partMPa }).stiffnessNPerUm
      return { ...point, nPerUm: 1 / (1 / below + 1 / above) }
    })
  })
}
