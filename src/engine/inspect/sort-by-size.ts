import type { ReadWith } from '#model/read-with.ts'
import { lotsOfLikeSize, type OtherSizes } from '#engine/inspect/lots.ts'
import type { UseLimits } from '#engine/inspect/uses-proved.ts'
import { type BoxBar, type BoxRules, sortBox, type SortedBox } from '#engine/inspect/used-box.ts'

/** A bar out of the box with its other sizes. */
export type SizedBoxBar = BoxBar & OtherSizes

/**
 * A box of bars of several sizes: each lot of like thickness and length is sorted by itself, what comes out stands together.
 *
 * @throws Refusal as `sortBox`
 */
export function sortBySize(bars: readonly SizedBoxBar[], limitsUm: UseLimits, readWith: ReadWith | null, rules?: BoxRules): SortedBox {
  const lots = lotsOfLikeSize(bars)
  const sorted = (lots.length === 0 ? [[]] : lots).map((lot) => sortBox(lot, limitsUm, readWith, rules))
  return {
    pairs: sorted.flatMap(({ pairs }) => pairs).toSorted((a, b) => a.worstUm - b.worstUm),
    regrind: sorted.flatMap(({ regrind }) => regrind),
    drillBars: sorted.flatMap(({ drillBars }) => drillBars),
    scrap: sorted.flatMap(({ scrap }) => scrap),
    findings: [...new Map(sorted.flatMap(({ findings }) => findings).map((finding) => [JSON.stringify(finding), finding])).values()],
  }
}
