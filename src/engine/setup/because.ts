import { trusts, whereabouts } from '#model/bar.ts'
import type { Cut } from '#model/cut.ts'
import type { Finding } from '#model/finding.ts'
import type { Facts } from '#model/refusal.ts'
import { keyOf, type Found } from '#engine/setup/found.ts'
import { matchUmOf } from '#engine/setup/match.ts'
import { movesOf, type SetFrom } from '#engine/setup/moves.ts'
import { deciderBetween, type Decider } from '#engine/setup/order.ts'
import type { Search } from '#engine/setup/search.ts'

/**
 * Why a choice stands before the next one (what of the order decided, with both values), and what forced a bar off the
 * place where it belongs, with the spacer that keeps it there.
 */
export function becauseOf(search: Search, found: Found, next: Found | null, only: boolean): readonly Finding[] {
  return [beforeNext(search, found, next, only), ...moved(search, found)]
}

function beforeNext(search: Search, found: Found, next: Found | null, only: boolean): Finding {
  if (next === null) return { code: only ? 'nothing-else-serves' : 'last-that-serves', facts: {} }
  const named = { bars: next.bars.map((bar) => bar.id), stand: next.stand }
  const decider = deciderBetween(keyOf(search, found), keyOf(search, next))
  if (decider === null) return { code: 'next-as-good', facts: named }
  const { code, values } = words[decider](search, found, next)
  return { code, facts: { ...named, ...values } }
}

type Said = { readonly code: string; readonly values: Facts }

const words: { readonly [decider in Decider]: (search: Search, found: Found, next: Found) => Said } = {
  advised: ({ window: { advisedHighMm } }, found, next) => ({ code: 'next-above-advised', values: { seatMm: found.seatMm, nextMm: next.seatMm, advisedHighMm } }),
  trust: (_, found, next) => ({ code: 'next-less-trusted', values: { trust: trusts[found.trust]!, nextTrust: trusts[next.trust]! } }),
  way: (_, found) => ({ code: 'next-stands-otherwise', values: { ownStand: found.stand } }),
  place: (_, found, next) => ({ code: 'next-placed-worse', values: { status: found.places.status, nextStatus: next.places.status } }),
  sunk: ({ atSeat }, found, next) => ({ code: 'next-more-sunk', values: { sunkMm: Math.max(0, -atSeat(found.seatMm).stickOutMm), nextMm: -atSeat(next.seatMm).stickOutMm } }),
  grip: ({ atSeat }, found, next) => ({ code: 'next-less-grip', values: { gripMm: atSeat(found.seatMm).gripMm, nextMm: atSeat(next.seatMm).gripMm } }),
  where: (_, found, next) => ({ code: 'next-further-away', values: { where: whereabouts[found.where]!, nextWhere: whereabouts[next.where]! } }),
  match: (_, found, next) => Number.isNaN(next.differUm)
    ? { code: 'next-not-measured', values: {} }
    : { code: 'next-matched-worse', values: { matchUm: matchUmOf(found), nextUm: matchUmOf(next) } },
  across: (_, found, next) => ({ code: found.stand === 'single' ? 'next-narrower' : 'next-wider', values: { acrossMm: found.acrossMm, nextMm: next.acrossMm } }),
}

/** `acrossMm`: how far across from the same jaw the middle of the first thing in the way is; null for a through cut. `diameterMm`: of all in the way, null where they differ. */
function moved({ question: { cuts }, obstacles }: Search, { bars, inPlan, places }: Found): readonly Finding[] {
  return movesOf(obstacles, inPlan, places).flatMap(({ bar, across, along, holes }) => {
    const id = bars[bar]!.id
    return [
      ...(across === null ? [] : [{ code: 'moved-inboard', facts: { bar: id, ...across, holes, acrossMm: acrossOf(cuts[holes[0] ?? -1], across.from, obstacles.part.betweenJawsMm), diameterMm: sharedDiameterMm(holes.map((k) => cuts[k])) } }]),
      ...(along === null ? [] : [{ code: 'moved-along', facts: { bar: id, ...along, holes } }]),
    ]
  })
}

function acrossOf(cut: Cut | undefined, from: SetFrom, partMm: number | null): number | null {
  if (cut?.kind !== 'hole' || partMm === null) return null
  return from === 'moving jaw' ? partMm - cut.yMm : cut.yMm
}

function sharedDiameterMm(cuts: readonly (Cut | undefined)[]): number | null {
  const diameters = new Set(cuts.map((cut) => (cut?.kind === 'hole' ? cut.diameterMm : null)))
  return diameters.size === 1 ? [...diameters][0]! : null
}
