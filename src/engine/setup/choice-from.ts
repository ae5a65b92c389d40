import { trusts, whereabouts } from '#model/bar.ts'
import type { Choice } from '#model/setup.ts'
import { becauseOf } from '#engine/setup/because.ts'
import { findingsOf } from '#engine/setup/choice-findings.ts'
import type { Found } from '#engine/setup/found.ts'
import { higherOf, matchUmOf, matchUUmOf } from '#engine/setup/match.ts'
import { furthestBelowMm } from '#engine/setup/reach.ts'
import type { Search } from '#engine/setup/search.ts'

/** Its place in the order: the rank, and what comes next in it; `only`: nothing else serves. */
export type Ranked = { readonly found: Found; readonly rank: number; readonly next: Found | null; readonly only: boolean }

/** Everything an answer says about one choice. */
export function choiceFrom(search: Search, { found, rank, next, only }: Ranked): Choice {
  const { question: { cuts, part } } = search, { stand, bars, stacked, seatMm, places } = found, atSeat = search.atSeat(seatMm)
  const matchUUm = matchUUmOf(found)
  const belowMm = furthestBelowMm(cuts, part.heightMm)
  return {
    bars: bars.map((bar) => bar.id), stand, ...(stacked === null ? {} : { stacked }),
    seatMm, gripMm: atSeat.gripMm, stickOutMm: atSeat.stickOutMm, airMm: atSeat.airMm,
    bedAirMm: belowMm === null ? null : seatMm - belowMm,
    matchUm: matchUmOf(found), ...(matchUUm === null ? {} : { matchUUm }), higher: higherOf(found),
    status: places.status, places: places.places, fouledHoles: places.fouledHoles, base: places.base,
    trust: trusts[found.trust]!, where: whereabouts[found.where]!, rank,
    because: becauseOf(search, found, next, only), findings: findingsOf(search, found, atSeat),
  }
}
