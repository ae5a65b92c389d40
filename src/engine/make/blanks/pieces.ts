import type { BarSize } from '#model/bar-size.ts'
import type { StockLength } from '#model/stock-length.ts'
import type { StockPlate } from '#model/stock-plate.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** One piece of stock being used up. `take` says whether so many blanks of a size still come out of it, and if so takes them. */
export type Piece = { readonly stockId: string; readonly price: number | null; isBegun: boolean; readonly take: (size: BarSize, count: number) => boolean }

/** Blanks one behind the other, a cut between them, none at the end. */
export function lengthPiece({ id, price, lengthMm }: StockLength, kerfMm: number): Piece {
  let usedMm = 0
  const piece: Piece = {
    stockId: id, price, isBegun: false,
    take: ({ lengthMm: longMm }, count) => {
      const neededMm = usedMm + (usedMm > 0 ? kerfMm : 0) + count * longMm + (count - 1) * kerfMm
      if (neededMm > lengthMm + touchMm) return false
      usedMm = neededMm
      piece.isBegun = true
      return true
    },
  }
  return piece
}

/** mm. A blank may come out of a strip that is so much higher; the rest is trimmed off. */
const mostTrimmedMm = 3

type Strip = { readonly heightMm: number; usedMm: number }

/** Strips across the width, a cut between them; in each strip blanks side by side. All of the blanks come out of one plate, or none. */
export function platePiece({ id, price }: StockPlate, acrossMm: number, alongMm: number, kerfMm: number): Piece {
  let strips: readonly Strip[] = []
  const piece: Piece = {
    stockId: id, price, isBegun: false,
    take: (size, count) => {
      const tried = strips.map((strip) => ({ ...strip }))
      for (let k = 0; k < count; k += 1) if (!placed(tried, size)) return false
      strips = tried
      piece.isBegun = true
      return true
    },
  }
  const placed = (tried: Strip[], { heightMm, lengthMm }: BarSize): boolean => {
    const into = tried.find((strip) => strip.heightMm >= heightMm - touchMm && strip.heightMm <= heightMm + mostTrimmedMm && strip.usedMm + kerfMm + lengthMm <= acrossMm + touchMm)
    if (into !== undefined) into.usedMm += kerfMm + lengthMm
    else {
      const usedMm = tried.reduce((sum, strip) => sum + strip.heightMm + kerfMm, 0)
      if (lengthMm > acrossMm + touchMm || usedMm + heightMm > alongMm + touchMm) return false
      tried.push({ heightMm, usedMm: lengthMm })
    }
    return true
  }
  return piece
}

/** Which way round a plate loses less of its width to blanks of one length. */
export function turnedFor({ widthMm, lengthMm }: Pick<StockPlate, 'widthMm' | 'lengthMm'>, longMm: number, kerfMm: number): { readonly acrossMm: number; readonly alongMm: number } {
  const used = (mm: number) => (Math.floor((mm + kerfMm + touchMm) / (longMm + kerfMm)) * longMm) / mm
  return used(lengthMm) > used(widthMm) + 1e-9 ? { acrossMm: lengthMm, alongMm: widthMm } : { acrossMm: widthMm, alongMm: lengthMm }
}
