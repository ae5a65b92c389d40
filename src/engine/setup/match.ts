import type { Choice } from '#model/setup.ts'
import type { Found } from '#engine/setup/found.ts'

/** µm. What subtracting two heights in mm loses, and more; nobody measures so finely. */
const rasterUm = 1e-6

const rounded = (um: number): number => Math.round(um / rasterUm) * rasterUm

/** Difference of the two bars or columns; null while a standing size is only marked. */
export const matchUmOf = ({ differUm }: Found): number | null => (Number.isNaN(differUm) ? null : rounded(Math.abs(differUm)))

/**
 * Standard uncertainty of that difference; null where it is not known of every bar. Bars read in one check share plate, zero, block and
 * temperature, which cancel.
 */
export function matchUUmOf({ bars, differUm }: Found): number | null {
  const known = bars.flatMap((bar) => bar.known ?? [])
  if (bars.length < 2 || known.length < bars.length || Number.isNaN(differUm)) return null
  const oneCheck = known.every(({ check }) => check === known[0]!.check)
  return Math.hypot(...known.map(({ uUm, uAloneUm }) => (oneCheck ? uAloneUm : uUm)))
}

/** Which of two bars is the higher as they stand; null where they are equal or unmeasured, or are not two. */
export function higherOf({ bars, differUm }: Found): Choice['higher'] {
  const byUm = rounded(Math.abs(differUm))
  if (bars.length !== 2 || !(byUm > 0)) return null
  return { bar: bars[differUm > 0 ? 0 : 1]!.id, byUm }
}
