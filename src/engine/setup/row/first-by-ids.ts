import { byText } from '#engine/setup/by-id.ts'
import type { Optimum } from '#engine/setup/row/drawn-together.ts'
import { nearestTo } from '#engine/setup/row/nearest-to.ts'
import { sameUm, type RowPair } from '#engine/setup/row/row-question.ts'
import { topUm, type Tops } from '#engine/setup/row/tops.ts'

/** An optimum with some vises given their pairs: what these add to the sum of squares about its mean. */
type Open = { readonly optimum: Optimum; readonly um2: number }

/**
 * Of all ways that are best the first by ids: the first vise takes the pair with the first id with which the rest can
 * still be as good, and so on.
 *
 * @returns for each vise, in the order given, the index of its pair
 */
export function firstByIds(tops: Tops, pairs: readonly RowPair[], optima: readonly Optimum[]): readonly number[] {
  const limitUm2 = Math.min(...optima.map(({ um2 }) => um2)) + sameUm
  const inOrder = [...tops.pair.keys()].sort((a, b) => byText(pairs[tops.pair[a]!]!.id, pairs[tops.pair[b]!]!.id))
  const places = [...tops.vise.keys()].sort((a, b) => tops.vise[a]! - tops.vise[b]!), free = new Set(tops.bedsUm.keys()), taken = new Set<number>()
  let open: readonly Open[] = optima.map((optimum) => ({ optimum, um2: 0 }))
  return places.map((k) => {
    free.delete(k)
    const rest = [...free], failed = new Set<number>(), restUm2 = open.map(({ optimum }) => restOf(tops, optimum, rest, taken))
    for (const i of inOrder) {
      if (taken.has(i) || failed.has(tops.meansUm[i]!)) continue
      taken.add(i)
      const still = open.flatMap((one, at): Open[] => {
        const um2 = one.um2 + squareOf(tops, one.optimum, k, i)
        // what the rest needs with this pair left to it as well is a bound that saves most of the searches
        return um2 + restUm2[at]! <= limitUm2 && um2 + restOf(tops, one.optimum, rest, taken) <= limitUm2 ? [{ optimum: one.optimum, um2 }] : []
      })
      if (still.length > 0) { open = still; return tops.pair[i]! }
      taken.delete(i)
      failed.add(tops.meansUm[i]!)
    }
    throw new Error('a way that is best was lost on the way to the first by ids')
  })
}

/** What a pair in a vise adds to the sum of squares; Infinity outside the window. */
function squareOf(tops: Tops, { window, centreUm }: Optimum, k: number, i: number): number {
  return i < window.from[k]! || i > window.to[k]! ? Infinity : (topUm(tops, k, i) - window.lowUm - centreUm) ** 2
}

/** The least the vises that are still free add; Infinity where the pairs left do not go round. */
const restOf = (tops: Tops, { window, centreUm }: Optimum, rest: readonly number[], taken: ReadonlySet<number>): number =>
  rest.length === 0 ? 0 : (nearestTo(tops, window, rest, taken, centreUm)?.um2 ?? Infinity)
