import type { ShopSnapshot } from '#model/snapshot.ts'
import type { RackPair } from '#web/setup/beside/rack-here.ts'

/** Two mates that may go into a vise of the row, both measured here. */
export type MeasuredPair = RackPair & { readonly matchUm: number }

/** Pairs of nearly one height, lowest first. */
export type HeightClass = { readonly meanMm: number; readonly pairs: readonly MeasuredPair[] }

/** mm. Pairs further apart than this are no pairs of one setup. Common practice, no source. */
const oneHeightMm = 0.1

/**
 * The pairs of the rack that a row may use, by height: also those in a vise now, not those that are signed out, no drill bars.
 *
 * @param pairs  lowest first
 * @returns      also how many pairs were left out because a height of theirs is only marked
 */
export function measuredPairs({ bars: records }: Pick<ShopSnapshot, 'bars'>, pairs: readonly RackPair[]): { readonly classes: readonly HeightClass[]; readonly notMeasured: number } {
  const signedOut = new Set(records.flatMap(({ id, where }) => (where.at === 'out' ? [id] : [])))
  const usable = pairs.filter(({ bars }) => bars.every(({ id, trust }) => trust !== 'drill bar' && !signedOut.has(id)))
  const measured = usable.filter(({ bars }) => bars.every(({ standing }) => standing === 'measured'))
  const classes: MeasuredPair[][] = []
  for (const pair of measured) {
    const last = classes.at(-1), one = { ...pair, matchUm: 1000 * Math.abs(pair.bars[0].heightMm - pair.bars[1].heightMm) }
    if (last !== undefined && pair.heightMm - last.at(-1)!.heightMm <= oneHeightMm) last.push(one)
    else classes.push([one])
  }
  return { classes: classes.map((of) => ({ meanMm: of[0]!.heightMm, pairs: of })), notMeasured: usable.length - measured.length }
}
