import type { Bar } from '#model/bar.ts'
import { Refusal } from '#model/refusal.ts'
import type { Sum } from '#model/sum.ts'
import { coverageOf, type Share } from '#engine/rack/coverage/coverage.ts'
import type { CoverageQuestion } from '#engine/rack/coverage/coverage-question.ts'
import { wantsOf } from '#engine/rack/coverage/wants.ts'
import { regrindSums } from '#engine/rack/regrind/answer-regrind.ts'
import { type Regrind, regrindOf, type RegrindQuestion, type WornBar } from '#engine/rack/regrind/regrind.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** How the bars are to be ground; `lowUm`: by the id of a bar, how much lower than the others it is to come out. */
export type RegrindWish = Omit<RegrindQuestion, 'bars' | 'windowsMm'> & { readonly lowUm: { readonly [bar: string]: number } }

export type RegrindOfShop = {
  readonly regrind: Regrind
  readonly sum: readonly Sum[]
  /** Setups of the shop whose heights that work hold the new height of some of the bars. */
  readonly fits: number
  /** What the rack serves with the bars as they are, and with them ground, measured and trusted. */
  readonly now: Share
  readonly after: Share
}

/**
 * Bars of the shop brought to one new height, from their last profile, and what the rack will serve then.
 *
 * @param work  of the shop, as coverage asks it
 * @throws Refusal `bar-not-known`, `height-not-measured`, and as `regrindOf`
 */
export function regrindOfShop(ids: readonly string[], rack: readonly Bar[], work: CoverageQuestion, wish: RegrindWish): RegrindOfShop {
  const byId = new Map(rack.map((bar) => [bar.id, bar]))
  const { lowUm, ...how } = wish, question: RegrindQuestion = { ...how, windowsMm: null, bars: ids.map((id, k) => wornFrom(byId.get(id), id, k, lowUm[id] ?? 0)) }
  const regrind = regrindOf(question)
  const heights = new Map(regrind.bars.map(({ id, newHeightMm = regrind.newHeightMm }) => [id, newHeightMm]))
  const ground = rack.map((bar): Bar => {
    const heightMm = heights.get(bar.id)
    return heightMm === undefined ? bar : { ...bar, heightMm, standing: 'measured', trust: 'trusted' }
  })
  const none = { ...work, next: { ...work.next, most: 0 } }, share = ({ setups, served, share: of }: Share): Share => ({ setups, served, share: of })
  return {
    regrind, sum: regrindSums(question, regrind), now: share(coverageOf(none, indexRack(rack))), after: share(coverageOf(none, indexRack(ground))),
    fits: work.setups.reduce((sum, setup, k) => sum + (wantsOf(work, setup, k).some((want) => typeof want !== 'string' && [...heights.values()].some((mm) => mm >= want.lowMm - touchMm && mm <= want.highMm + touchMm)) ? setup.times : 0), 0),
  }
}

/**
 * A bar of the rack as the grinder finds it: its local heights where their places are known, else the mean that stands for all of them.
 *
 * @throws Refusal `bar-not-known`, `height-not-measured`
 */
export function wornFrom(bar: Bar | undefined, id: string, k: number, lowUm: number): WornBar {
  if (!bar) throw new Refusal('bar-not-known', { field: `bars[${k}]`, given: id.slice(0, 60) })
  if (bar.standing !== 'measured') throw new Refusal('height-not-measured', { field: `bars[${k}]`, given: bar.heightMm })
  const heightsMm = (bar.heightsUm ?? []).map(([, um]) => bar.heightMm + um / 1000)
  return { id, heightsMm: heightsMm.length > 0 ? heightsMm : [bar.heightMm], lowUm }
}
