/** The sizes of a bar beside its height. */
export type OtherSizes = { readonly thicknessMm: number; readonly lengthMm: number }

/** mm. Bars that differ more in thickness or in length make no pair. Common practice, no source. */
const likeThicknessMm = 0.5, likeLengthMm = 5

/** Bars of like thickness and length together, thinner and shorter lots first. */
export function lotsOfLikeSize<Sized extends OtherSizes>(bars: readonly Sized[]): readonly (readonly Sized[])[] {
  return lotsOf(bars, ({ thicknessMm }) => thicknessMm, likeThicknessMm).flatMap((lot) => lotsOf(lot, ({ lengthMm }) => lengthMm, likeLengthMm))
}

/** Runs of bars none of which is further from the first of its run. */
function lotsOf<Sized>(bars: readonly Sized[], sizeMm: (bar: Sized) => number, likeMm: number): readonly (readonly Sized[])[] {
  const lots: Sized[][] = []
  for (const bar of bars.toSorted((a, b) => sizeMm(a) - sizeMm(b))) {
    const lot = lots.at(-1)
    if (lot && sizeMm(bar) - sizeMm(lot[0]!) <= likeMm) lot.push(bar)
    else lots.push([bar])
  }
  return lots
}
