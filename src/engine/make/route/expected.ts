import type { Band, Expected, Experience, RouteKind } from '#model/route.ts'
import { type Use, uses } from '#model/wishes.ts'
import type { Bought, Making } from '#model/making.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** So many own values stand for themselves; fewer are only shown. Common practice, no source. */
const enoughChecks = 5

type Row = { readonly match: readonly [Band, Band | null]; readonly parallel: readonly [Band, Band | null] }

const band = (fromUm: number | null, toUm: number | null): Band => ({ fromUm, toUm, source: 'MAKE-RULES', standing: 'common practice' })
const notKnown = band(null, null)

/** What one may count on, and what careful work reaches. Over 150 mm. Common practice, no source; never guaranteed. */
const usual: { readonly [route in Exclude<RouteKind, 'bought'>]: Row } = {
  'as drawn': { match: [band(20, 50), null], parallel: [band(30, 80), band(0, 5)] },
  'as delivered': { match: [notKnown, null], parallel: [notKnown, null] },
  'milled': { match: [band(10, 20), band(0, 6)], parallel: [band(20, 30), band(0, 6)] },
  'rubbed': { match: [band(10, 20), band(0, 1)], parallel: [band(20, 30), band(0, 6)] },
  'milled prehardened': { match: [band(10, 20), null], parallel: [band(20, 30), null] },
  'hard milled': { match: [band(10, 20), null], parallel: [band(20, 30), null] },
  'ground': { match: [band(2, 5), band(0, 1)], parallel: [band(3, 6), null] },
}
/** Of prehardened flats ground on all sides, along a piece; neighbours out of one piece differ no more. Common practice, no source. */
const prehardenedGround: Row = { match: [notKnown, band(0, 4)], parallel: [notKnown, band(0, 4)] }

/** @param fromUm what two bars of one delivery may differ by, for bars as delivered; null: not known */
export function expectedOf(route: RouteKind, { bought, experience }: Pick<Making, 'bought' | 'experience'>, stock: { readonly isPrehardenedGround: boolean; readonly apart: Band | null }): Expected {
  const own = ownOf(route, experience), row = route === 'bought' ? certified(bought) : route === 'as delivered' && stock.isPrehardenedGround ? prehardenedGround : usual[route]
  const [match, carefulMatch] = row.match, [parallel, carefulParallel] = row.parallel
  const ownMatch = bandOf(own.matchUm), ownParallel = bandOf(own.parallelUm)
  return {
    match: ownMatch === null ? { countOn: route === 'as delivered' ? (stock.apart ?? match) : match, careful: carefulMatch } : { countOn: ownMatch, careful: null },
    parallel: ownParallel === null ? { countOn: parallel, careful: carefulParallel } : { countOn: ownParallel, careful: null },
    checks: Math.max(own.matchUm.length, own.parallelUm.length),
  }
}

function certified(bought: Bought | null): Row {
  const by = (um: number | null | undefined): readonly [Band, null] => [um === null || um === undefined ? notKnown : { fromUm: 0, toUm: um, source: 'SHOP', standing: 'shop' }, null]
  return { match: by(bought?.matchUm), parallel: by(bought?.parallelUm) }
}

function ownOf(route: RouteKind, experience: readonly Experience[]): Pick<Experience, 'matchUm' | 'parallelUm'> {
  const own = experience.filter((one) => one.route === route)
  return { matchUm: own.flatMap(({ matchUm }) => matchUm), parallelUm: own.flatMap(({ parallelUm }) => parallelUm) }
}

const bandOf = (values: readonly number[]): Band | null =>
  values.length < enoughChecks ? null : { fromUm: values.reduce((a, b) => Math.min(a, b)), toUm: values.reduce((a, b) => Math.max(a, b)), source: 'SHOP', standing: 'shop' }

/** The worse of match and parallelism that one may count on; and with careful work, where nobody says the low end of the range. Null: not known. */
export function worstOf({ match, parallel }: Expected): { readonly countOnUm: number | null; readonly carefulUm: number | null } {
  const careful = ({ countOn, careful: reached }: Expected['match']) => (reached === null ? (countOn.standing === 'shop' ? countOn.toUm : countOn.fromUm) : reached.toUm)
  return { countOnUm: larger(match.countOn.toUm, parallel.countOn.toUm), carefulUm: larger(careful(match), careful(parallel)) }
}

const larger = (a: number | null, b: number | null): number | null => (a === null || b === null ? null : Math.max(a, b))

/** The finest use whose limit is kept; null: none, or not known. */
export function useFor(um: number | null, limitsUm: Making['limitsUm']): Use | null {
  return um === null ? null : (uses.filter((use) => um <= limitsUm[use] + touchMm).toSorted((a, b) => limitsUm[a] - limitsUm[b])[0] ?? null)
}
