import { Refusal } from '#model/refusal.ts'
import { lotsOfLikeSize, type OtherSizes } from '#engine/inspect/lots.ts'
import { type MatesOfRack, type MatesWish, proposeMates } from '#engine/inspect/mates-of-rack.ts'
import type { MeasuredBar } from '#engine/inspect/measured-bar.ts'
import type { UseLimits } from '#engine/inspect/uses-proved.ts'

export type SizedMeasuredBar = MeasuredBar & OtherSizes

/**
 * The best mates out of bars of several sizes: only bars of like thickness and length go together, and those read along
 * their length are not brought down to mean heights by those that were not. For a row the lot whose spread is least.
 *
 * @param onLot  told after each lot how many are done
 * @throws Refusal as `proposeMates`; `too-few-bars` where no lot has enough
 */
export function matesBySize(bars: readonly SizedMeasuredBar[], wish: MatesWish, limitsUm: UseLimits, onLot: (done: number, of: number) => void = () => undefined): MatesOfRack {
  const needed = wish.want === 'row' ? 2 * wish.vises : 2
  const lots = [bars.filter(({ profile }) => profile.length > 1), bars.filter(({ profile }) => profile.length < 2)].flatMap((some) => lotsOfLikeSize(some))
  const enough = lots.filter((lot) => lot.length >= needed), alone = lots.filter((lot) => lot.length < needed).flatMap((lot) => lot.map(({ id }) => id))
  if (enough.length === 0) throw new Refusal('too-few-bars', { field: 'bars', given: Math.max(0, ...lots.map((lot) => lot.length)), needed })
  const found = enough.map((lot, at) => { const one = proposeMates(lot, wish, limitsUm); onLot(at + 1, enough.length); return one })
  if (wish.want === 'row') {
    const best = found.reduce((least, one) => ((one.row?.spreadUm ?? Infinity) < (least.row?.spreadUm ?? Infinity) ? one : least)), used = new Set(best.groups.flatMap((group) => group.bars))
    return { ...best, leftOver: bars.flatMap(({ id }) => (used.has(id) ? [] : [id])) }
  }
  return {
    groups: found.flatMap(({ groups }) => groups).toSorted((a, b) => a.worstUm - b.worstUm), row: null,
    leftOver: [...alone, ...found.flatMap(({ leftOver }) => leftOver)], findings: found.flatMap(({ findings }) => findings),
  }
}
