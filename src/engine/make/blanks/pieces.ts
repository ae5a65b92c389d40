import type { BarSize } from '#model/bar-size.ts'
import type { StockLengthFields } from '#model/stock-length.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** One piece of stock being used up. `take` says whether so many blanks of a size still come out of it, and if so takes them. */
export type Piece = { readonly take: (size: BarSize, count: number) => boolean }

/** Blanks one behind the other, a cut between them, none at the end. */
export function lengthPiece(lengthMm: number, kerfMm: number): Piece {
  let usedMm = 0
  return {
    take: ({ lengthMm: longMm }, count) => {
      const neededMm = usedMm + (usedMm > 0 ? kerfMm : 0) + count * longMm + (count - 1) * kerfMm
      if (neededMm > lengthMm + touchMm) return false
      usedMm = neededMm
      return true
    },
  }
}

/** mm. A blank may come out of a strip that is so much higher; the rest is trimmed off. */
const mostTrimmedMm = 3

type Strip = { readonly heightMm: number; readonly usedMm: number }

/** Strips across the width, a cut between them; in each strip blanks side by side. All of the blanks come out of one plate, or none. */
export function platePiece(acrossMm: number, alongMm: number, kerfMm: number): Piece {
  let strips: readonly Strip[] = []
  const placed = (before: readonly Strip[], { heightMm, lengthMm }: BarSize): readonly Strip[] | null => {
    const at = before.findIndex((strip) => strip.heightMm >= heightMm - touchMm && strip.heightMm <= heightMm + mostTrimmedMm && strip.usedMm + kerfMm + lengthMm <= acrossMm + touchMm)
    if (at >= 0) return before.map((strip, k) => (k === at ? { ...strip, usedMm: strip.usedMm + kerfMm + lengthMm } : strip))
    const alongUsedMm = before.reduce((sum, strip) => sum + strip.heightMm + kerfMm, 0)
    return lengthMm > acrossMm + touchMm || alongUsedMm + heightMm > alongMm + touchMm ? null : [...before, { heightMm, usedMm: lengthMm }]
  }
  return {
    take: (size, count) => {
      let tried: readonly Strip[] | null = strips
      for (let k = 0; k < count && tried !== null; k += 1) tried = placed(tried, size)
      if (tried === null) return false
      strips = tried
      return true
    },
  }
}

/** Which way round a plate loses less of its width to blanks of one length. */
export function turnedFor({ widthMm, lengthMm }: Pick<StockLengthFields, 'widthMm' | 'lengthMm'>, longMm: number, kerfMm: number): { readonly acrossMm: number; readonly alongMm: number } {
  const used = (mm: number) => (Math.floor((mm + kerfMm + touchMm) / (longMm + kerfMm)) * longMm) / mm
  return used(lengthMm) > used(widthMm) + 1e-9 ? { acrossMm: lengthMm, alongMm: widthMm } : { acrossMm: widthMm, alongMm: lengthMm }
}
