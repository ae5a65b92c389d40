import { fitLine } from '#engine/numeric/line-fit.ts'
import { studentQuantile } from '#engine/numeric/student-t.ts'

/** One station that stands out above the rest of its line. */
export type LoneReading = { readonly station: number; readonly aboveUm: number }

/** µm. A high reading is worth a stone and a wipe from here on. Common practice, no source. */
const leastUm = 2
/** One-sided: how seldom a good bar would show such a reading at a place. */
const share = 0.975

/**
 * The station that a burr or a chip may have lifted: higher above the line through all others than their own scatter
 * explains. Null below four stations (three cannot tell a chip from a crown) and where nothing stands out.
 */
export function loneHighReading(xs: readonly number[], ys: readonly number[]): LoneReading | null {
  if (xs.length < 4) return null
  const seldom = studentQuantile(share, xs.length - 3)
  const high = xs.flatMap((x, station) => {
    const rest = fitLine(xs.toSpliced(station, 1), ys.toSpliced(station, 1))
    const aboveUm = ys[station]! - rest.yMean - rest.slope * (x - rest.xMean)
    const scatterUm = rest.residualSd! * Math.sqrt(1 + 1 / (xs.length - 1) + (x - rest.xMean) ** 2 / rest.xSquares)
    return aboveUm >= leastUm && aboveUm > seldom * scatterUm ? [{ station, aboveUm }] : []
  })
  return high.reduce<LoneReading | null>((most, one) => (most && most.aboveUm >= one.aboveUm ? most : one), null)
}
