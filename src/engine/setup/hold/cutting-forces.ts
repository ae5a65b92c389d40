/** An end or face mill in its cut. */
export type MillingCut = {
  readonly kc11MPa: number
  readonly mc: number
  readonly depthMm: number
  readonly widthMm: number
  readonly diameterMm: number
  readonly teeth: number
  readonly feedPerToothMm: number
  readonly helixDeg: number
}

/** Across the edge, and along the axis, up out of the vise for a right-hand helix. */
export type MillingForce = { readonly forceN: number; readonly pullN: number; readonly toothN: number; readonly teethInCut: number; readonly chipMm: number }

/** Below it the edge rubs and the power law overstates. Common practice, no source. @source CUTTING-FORCE */
const leastChipMm = 0.01

/**
 * The largest force of a cut: every tooth that may be in it at its thickest chip, sharp.
 *
 * @param cut  widthMm at most the diameter
 * @source CUTTING-FORCE
 */
export function millingForce({ kc11MPa, mc, depthMm, widthMm, diameterMm, teeth, feedPerToothMm, helixDeg }: MillingCut): MillingForce {
  const part = widthMm / diameterMm, arc = Math.acos(1 - 2 * part), chipMm = part < 0.5 ? 2 * feedPerToothMm * Math.sqrt(part * (1 - part)) : feedPerToothMm
  const toothN = kc11MPa * depthMm * chipMm * Math.max(chipMm, leastChipMm) ** -mc, teethInCut = Math.max(1, Math.ceil((teeth * arc) / (2 * Math.PI)))
  const forceN = teethInCut * toothN
  return { forceN, pullN: forceN * Math.tan((helixDeg * Math.PI) / 180), toothN, teethInCut, chipMm }
}

/** A drill; `kd` of the material, `wear` 1.3 for a dull one. */
export type Drilling = { readonly diameterMm: number; readonly feedMm: number; readonly kd: number; readonly wear: number; readonly splitPoint: boolean }

/**
 * Thrust and torque of a drill: T = 0.05 Kd Ff FT B W + 0.007 Kd D² J W, M = 0.000025 Kd Ff FM A W. The handbook's tables of
 * Ff, FT and FM are f^0.8, D^0.8 and D^1.8.
 *
 * @source DRILL-FORCE
 */
export function drillingForce({ diameterMm, feedMm, kd, wear, splitPoint }: Drilling): { readonly thrustN: number; readonly torqueNm: number } {
  const [a, b, j] = splitPoint ? [1, 1.1, 0.001] as const : [1.085, 1.355, 0.03] as const, feed = feedMm ** 0.8
  return {
    thrustN: 0.05 * kd * feed * diameterMm ** 0.8 * b * wear + 0.007 * kd * diameterMm ** 2 * j * wear,
    torqueNm: 0.000_025 * kd * feed * diameterMm ** 1.8 * a * wear,
  }
}
