/** What a slip of the decimal mark, of inch for millimetre or of millimetre for micrometre multiplies a value by. */
const slipFactors = [10, 25.4, 1000]

/** Neighbours that differ by more than this give no scale to judge by. */
const mostSpread = 3
/** How far beyond its neighbours a value may lie and still be one of them. Both common practice, no source. */
const room = 1.5

/**
 * By what factor a value looks too large (10, 25.4, 1000) or too small (their reciprocals) beside its neighbours.
 *
 * Null where it fits, where no factor explains it, and where the neighbours give no scale: around zero, or far apart.
 */
export function unitSlipOf(value: number, neighbours: readonly number[]): number | null {
  const sizes = neighbours.map((one) => one * Math.sign(value)), least = Math.min(...sizes), most = Math.max(...sizes)
  if (sizes.length === 0 || !(least > 0) || most / least > mostSpread) return null
  const fits = (size: number): boolean => size >= least / room && size <= most * room
  if (fits(Math.abs(value))) return null
  return [...slipFactors, ...slipFactors.map((factor) => 1 / factor)].find((factor) => fits(Math.abs(value) / factor)) ?? null
}
