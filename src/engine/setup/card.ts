import type { Vise } from '#model/vise.ts'
import type { Wishes } from '#model/wishes.ts'
import { commonPointDeg, holeRunThroughMm } from '#engine/setup/read-cut.ts'
import { touchMm } from '#engine/setup/tolerance.ts'
import { grippingJawMm } from '#engine/setup/window.ts'

export type CardPair = { readonly name: string; readonly slot: string | null; readonly heightMm: number }

/** One pair on the card of a vise. */
export type CardRow = CardPair & {
  /** The lowest finished part that stands as far above the jaws as the air that is wished. */
  readonly worksFromMm: number
  /** Of a part that is at least so high. */
  readonly gripMm: number
  /** The largest drill whose tip stays clear of the bed; null where none does. */
  readonly largestDrillMm: number | null
}

/**
 * What each pair is good for in one vise, lowest first; equals by name. A pair that stands as high as the lower jaw
 * leaves nothing to grip and is left out.
 *
 * The drill is a common one (118°) with the common run-through.
 *
 * @source SETUP-RULES GEOMETRY
 */
export function viseCardOf<Pair extends CardPair>(
  { vise, pairs, wishes }: { readonly vise: Vise; readonly pairs: readonly Pair[]; readonly wishes: Pick<Wishes, 'airMm' | 'bedAirMm'> },
): readonly (Pair & CardRow)[] {
  const diameterPerDepth = 2 * Math.tan((commonPointDeg * Math.PI) / 360)
  return pairs
    .filter((pair) => pair.heightMm < grippingJawMm(vise) - touchMm)
    .map((pair) => {
      const tipMm = pair.heightMm - holeRunThroughMm - wishes.bedAirMm
      return {
        ...pair,
        worksFromMm: vise.jawHeightMm + wishes.airMm - pair.heightMm,
        gripMm: grippingJawMm(vise) - pair.heightMm,
        largestDrillMm: tipMm > touchMm ? diameterPerDepth * tipMm : null,
      }
    })
    .toSorted((a, b) => a.heightMm - b.heightMm || (a.name < b.name ? -1 : a.name > b.name ? 1 : 0))
}
