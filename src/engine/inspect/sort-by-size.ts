import type { ReadWith } from '#model/read-with.ts'
import type { UseLimits } from '#engine/inspect/uses-proved.ts'
import { type BoxBar, type BoxRules, sortBox, type SortedBox } from '#engine/inspect/used-box.ts'

/** A bar out of the box with its other sizes. */
export type SizedBoxBar = BoxBar & { readonly thicknessMm: number; readonly lengthMm: number }

/** mm. Bars that differ more in thickness or in length make no pair. Common practice, no source. */
const likeThicknessMm = 0.5, likeLengthMm = 5

/**
 * A box of bars of several sizes: each lot of like thickness and length is sorted by itself, what comes out stands together.
 *
 * @throws Refusal as `sortBox`
 */
export function sortBySize(bars: readonly SizedBoxBar[], limitsUm: UseLimits, readWith: ReadWith | null, rules?: BoxRules): SortedBox {
  const lots = lotsOf(bars, ({ thicknessMm }) => thicknessMm, likeThicknessMm).flatMap((lot) => lotsOf(lot, ({ lengthMm }) => lengthMm, likeLengthMm))
  const sorted = (lots.length === 0 ? [[]] : lots).map((lot) => sortBox(lot, limitsUm, readWith, rules))
  return {
    pairs: sorted.flatMap(({ pairs }) => pairs).toSorted((a, b) => a.worstUm - b.worstUm),
    regrind: sorted.flatMap(({ regrind }) => regrind),
    drillBars: sorted.flatMap(({ drillBars }) => drillBars),
    scrap: sorted.flatMap(({ scrap }) => scrap),
    findings: [...new Map(sorted.flatMap(({ findings }) => findings).map((finding) => [JSON.stringify(finding), finding])).values()],
  }
}

/** Runs of bars none of which is further from the first of its run. */
function lotsOf(bars: readonly SizedBoxBar[], sizeMm: (bar: SizedBoxBar) => number, likeMm: number): readonly (readonly SizedBoxBar[])[] {
  const lots: SizedBoxBar[][] = []
  for (const bar of bars.toSorted((a, b) => sizeMm(a) - sizeMm(b))) {
    const lot = lots.at(-1)
    if (lot && sizeMm(bar) - sizeMm(lot[0]!) <= likeMm) lot.push(bar)
    else lots.push([bar])
  }
  return lots
}
