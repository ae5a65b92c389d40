import type { MatesProposal } from '#engine/inspect/mates-of-rack.ts'
import type { MeasuredBar } from '#engine/inspect/measured-bar.ts'
import type { ProfileSeries } from '#drafting/inspect/profile.ts'
import type { PairMatchData } from '#drafting/inspect/pair-match.ts'
import { wordLength, wordNumber } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { NameOf } from '#words/wording.ts'

/** What the drawing of a pair shows: both profiles at the places of the first, above the lower of the two; null where one has none. */
export function pairPicture([a, b]: readonly [MeasuredBar, MeasuredBar], proposal: MatesProposal, nameOf: NameOf, units: Units): PairMatchData | null {
  if (a.profile.length < 2 || b.profile.length < 2) return null
  const zeroMm = Math.round(Math.min(a.heightMm, b.heightMm) * 1000) / 1000, shares = a.profile.map(([x]) => x / a.lengthMm), both = a.check === b.check
  const series = (bar: MeasuredBar): ProfileSeries => ({
    label: nameOf(bar.id),
    points: shares.map((share) => { const u = both ? bar.uAloneUm : bar.uUm; return { xMm: share * a.lengthMm, um: (heightAt(bar, share * bar.lengthMm) - zeroMm) * 1000, uUm: u === null ? null : 2 * u } }),
  })
  const first = series(a), second = series(b), says = (turned: boolean) => {
    const worst = Math.max(...first.points.map(({ um }, at) => Math.abs(um! - second.points[turned ? shares.length - 1 - at : at]!.um!)))
    return `Worst difference ${wordNumber(worst, units.decimalMark, null, 1)} µm.`
  }
  const exact = { decimals: units.length === 'mm' ? 3 : 5 }
  return {
    title: `${nameOf(a.id)} and ${nameOf(b.id)}`, lengthMm: a.lengthMm, first, second,
    description: `Heights of ${nameOf(a.id)} and ${nameOf(b.id)} along their length, marked ends together and with the second turned end for end. ${proposal.turnOne ? 'Turned is better.' : 'Marked ends together is better.'}`,
    zero: `0 = ${wordLength(zeroMm, units, exact)}`, whiskers: first.points[0]!.uUm === null ? '' : '± 2 u',
    asLaid: { heading: 'marked ends together', says: says(false) }, turned: { heading: 'second turned end for end', says: says(true) },
  }
}

/** On the straight line between the readings on either side; beyond the last as it was there. */
function heightAt({ profile }: MeasuredBar, xMm: number): number {
  const after = profile.findIndex(([x]) => x >= xMm - 1e-9)
  if (after <= 0) return (after === 0 ? profile[0]! : profile.at(-1)!)[1]
  const [x0, z0] = profile[after - 1]!, [x1, z1] = profile[after]!
  return z0 + ((z1 - z0) * (xMm - x0)) / (x1 - x0)
}
