/**
 * Four indicator readings across the top of one ground block, moving side less fixed side: as it is; with the bars exchanged;
 * with the block turned end for end on the bars as they were first; as first, but tightened. `uUm`: standard uncertainty of
 * each reading, which hang together in nothing; null where nobody knows it.
 */
export type GuiltyQuestion = {
  readonly y1Um: number
  readonly y2Um: number
  readonly y3Um: number
  /** Null where the vise has not been tightened yet. */
  readonly y4Um: number | null
  readonly uUm: number | null
  /** Between the two places read, across; null where nobody measured it. */
  readonly overMm: number | null
}

export const suspects = ['bars', 'block', 'bed', 'closing'] as const
export type Suspect = (typeof suspects)[number]

/** What one suspect puts into the readings. `shown`: more than twice its uncertainty; null where that is not known. */
export type Share = { readonly shareUm: number; readonly uUm: number | null; readonly umPerMm: number | null; readonly shown: boolean | null }

export type Guilty = { readonly [suspect in Exclude<Suspect, 'closing'>]: Share } & {
  /** What lift and lean of the jaws add on tightening; null without the fourth reading. */
  readonly closing: Share | null
  /** The largest first, of equals in the order of the list. */
  readonly order: readonly Suspect[]
}

/** A share more than twice its standard uncertainty is taken as shown: about 95 %. @source GUM */
const coverage = 2

/**
 * Who is guilty: bars, block, bed, or the closing of the jaws.
 *
 * Exchanging the bars turns the sign of their share alone, turning the block that of the block: halves of sums and
 * differences keep them apart. The bed, and whatever else stays put, is what neither turns.
 *
 * @source REVERSAL GUM
 */
export function guiltyOf({ y1Um, y2Um, y3Um, y4Um, uUm, overMm }: GuiltyQuestion): Guilty {
  // two readings with independent errors: their sum or difference has √2 of the uncertainty of one
  const half = (um: number) => shareOf(um / 2, uUm === null ? null : uUm * Math.SQRT1_2, overMm)
  const bars = half(y1Um - y2Um), block = half(y1Um - y3Um), bed = half(y2Um + y3Um)
  const closing = y4Um === null ? null : shareOf(y4Um - y1Um, uUm === null ? null : uUm * Math.SQRT2, overMm)
  const shares = { bars, block, bed, closing }
  return {
    ...shares,
    order: suspects.filter((one) => shares[one] !== null).toSorted((a, b) => Math.abs(shares[b]!.shareUm) - Math.abs(shares[a]!.shareUm)),
  }
}

const shareOf = (shareUm: number, uUm: number | null, overMm: number | null): Share =>
  ({ shareUm, uUm, umPerMm: overMm === null ? null : shareUm / overMm, shown: uUm === null ? null : Math.abs(shareUm) > coverage * uUm })
