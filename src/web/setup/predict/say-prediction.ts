import type { Contribution, Foretold, Prediction, WayForetold } from '#engine/setup/prediction/prediction.ts'
import type { Finding } from '#model/finding.ts'
import type { Units } from '#model/shop-record.ts'
import { contributorText } from '#words/findings/seat.ts'
import { capital, type NameOf, type Wording, wordingFor } from '#words/wording.ts'

/** `About 3 µm out of parallel, in 95 of 100 cases at most 8 µm`; where nobody knows the side at the jaw, both ways. Null: nothing is foretold. */
export function sayComesOut(prediction: Prediction, units: Units): string | null {
  if (prediction.status !== 'foretold') return null
  const w = wordingFor(units), several = prediction.ways.length > 1
  return capital(prediction.ways.map((way) => `${several ? (way.held ? 'squared by the jaw ' : 'free ') : ''}${sayWay(way, w)}`).join('; '))
}

function sayWay({ coming }: WayForetold, w: Wording): string {
  if (coming.status !== 'predicted') return 'not to be foretold, see below'
  const { overall: { medianUm, q95Um }, chanceWithin } = coming
  return `about ${w.micrometres(medianUm)} out of parallel, in 95 of 100 cases at most ${w.micrometres(q95Um)}${chanceWithin === null ? '' : `, kept in ${Math.floor(100 * chanceWithin)} of 100`}`
}

/** One row of a list: the least that has to be said, and whether something was never measured. */
export function sayShortly(prediction: Prediction, units: Units): string | null {
  if (prediction.status !== 'foretold') return null
  const w = wordingFor(units), all = prediction.ways.flatMap(({ held, coming }) => (coming.status === 'predicted' ? [{ held, ...coming }] : []))
  if (all.length === 0) return null
  const missed = all.some(({ chanceWithin }) => chanceWithin !== null && chanceWithin < 0.95)
  const within = all.map(({ held, overall: { q95Um } }) => {
    const most = q95Um < 0.05 ? `less than ${w.micrometres(0.1)}` : w.micrometres(q95Um)
    return prediction.ways.length > 1 ? `${most} ${held ? 'squared by the jaw' : 'free'}` : most
  })
  const isPartial = prediction.ways.some(({ notKnown }) => notKnown.length > 0)
  return `comes out within ${within.join(' or ')}${isPartial ? ' as far as was measured' : ''}${missed ? ': may miss the tolerance' : ''}`
}

/** The ways without what is not in any of them: that is said once, after them all. One way alone keeps its own. */
export function notKnownOnce(ways: readonly WayForetold[]): { readonly ways: readonly WayForetold[]; readonly common: readonly Finding[] } {
  const isIn = (findings: readonly Finding[], one: Finding) => findings.some((other) => JSON.stringify(other) === JSON.stringify(one))
  const common = ways.length < 2 ? [] : ways[0]!.notKnown.filter((one) => ways.every(({ notKnown }) => isIn(notKnown, one)))
  return { ways: ways.map((way) => ({ ...way, notKnown: way.notKnown.filter((one) => !isIn(common, one)) })), common }
}

/** Along or across: median, 95 % and what that is for each mm. */
export function sayFigures({ medianUm, lowUm, highUm }: Foretold, overMm: number, units: Units): string {
  const w = wordingFor(units), forEachMm = w.number(Math.round((1000 * medianUm) / overMm) / 1000)
  return `${w.micrometres(medianUm)} over ${w.length(overMm)} (${forEachMm} µm for each mm); 95 of 100 between ${w.micrometres(lowUm)} and ${w.micrometres(highUm)}`
}

/** `35 C: 3 µm of it; 2.5 µm less if measured with the shop’s own instrument`. */
export function sayContribution({ of, bar, shareUm, gainUm }: Contribution, units: Units, nameOf: NameOf): string {
  const w = wordingFor(units, nameOf), said = contributorText({ of, bar }, w)
  return `${capital(said)}: ${w.micrometres(shareUm)} of the 95 %${gainUm === null ? '' : `, ${w.micrometres(Math.max(0, gainUm))} less if measured with the shop’s own instrument`}`
}
