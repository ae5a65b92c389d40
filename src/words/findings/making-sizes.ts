import type { Facts } from '#model/refusal.ts'
import type { Say, Wording } from '#words/wording.ts'

/** What stock, blanks and the sizes read on the way say. */
export const makingSizeWords: { readonly [code: string]: Say } = {
  'pair-is-one-piece': () => 'In the cut list a pair counts as one piece, cut in two afterwards, so that mates come out of one bar.',
  'rolled-skin-comes-off': (facts, w) => `${w.text(facts.stock)}: rolled stock has a skin without carbon, which comes off all sides before anything else; the faces are milled for it.`,
  'rolled-not-in-table': (facts, w) => `${w.text(facts.stock)}: no table says how deep the skin of such a section goes. Look for it on a ground spot before hardening.`,
  'stock-short': () => 'The stock named does not reach for all blanks.',
  'not-in-allowances': (facts, w) => `No table says what is usually left on bars ${w.length(facts.lengthMm)} long: only bow, clean-up and skin are counted.`,
  'delivery-not-known': (facts, w) => `${w.text(facts.stock)}: no table says what a delivery of ${w.length(facts.nominalMm)} may be off.`,
  'mates-from-one': (facts, w) => `${w.text(facts.stock)}: delivered as ${w.length(facts.nominalMm)} it may be ${w.length(facts.lowMm)} to ${w.length(facts.highMm)}${grade(facts)}, ${w.micrometres(facts.apartUm)} apart: mates out of one bar, and measure.`,
  'delivery-inside': (facts, w) => `${w.text(facts.stock)}: ${w.length(facts.measuredMm)} is inside ${w.length(facts.lowMm)} to ${w.length(facts.highMm)}${grade(facts)}, ${percent(facts.sharePercent, w)} of what it may be off ${w.length(facts.nominalMm)}.`,
  'delivery-outside': (facts, w) => `${w.text(facts.stock)}: ${w.length(facts.measuredMm)} is outside ${w.length(facts.lowMm)} to ${w.length(facts.highMm)}${grade(facts)}: a ground for complaint.`,

  'size-lost': (facts, w) => `${w.bars(facts.bar)} is ${w.length(facts.nowMm)} ${facts.side === 'faces' ? 'thick' : 'high'} already, below ${w.length(facts.finishedMm)}: it becomes a ${facts.side === 'faces' ? 'thinner' : 'lower'} one.`,
  'allowance-enough': (facts, w) => `${w.bars(facts.bar)}, ${w.text(facts.side)}: a bow of ${w.length(facts.bowMm)} asks for ${w.length(facts.neededPerSideMm)} on each side, there are ${w.length(facts.perSideMm)}: enough.`,
  'allowance-not-enough': (facts, w) => `${w.bars(facts.bar)}, ${w.text(facts.side)}: a bow of ${w.length(facts.bowMm)} asks for ${w.length(facts.neededPerSideMm)} on each side and there are only ${w.length(facts.perSideMm)}. Before the last tool: straighten to ${w.length(facts.roomMm)} or less${lower(facts, w)}.`,
  'allowance-gone': (facts, w) => `${w.bars(facts.bar)}, ${w.text(facts.side)}: ${w.length(facts.perSideMm)} on each side does not even clean up a straight bar${lower(facts, w)}.`,
  'bar-softer-than-asked': (facts, w) => `${w.bars(facts.bar)}: ${w.number(facts.hrc)} HRC read, ${w.number(facts.askedHrc)} asked. Look for lost carbon under the reading before anything is done again.`,
  'bar-harder-than-published': (facts, w) => `${w.bars(facts.bar)}: ${w.number(facts.hrc)} HRC read, ${w.number(facts.highestHrc)} is the most published for ${w.text(facts.steel)} after tempering (${w.text(facts.source)}). The reading is kept: repeat it on a calibrated tester, and look which steel it is.`,
  'reading-outside': (facts, w) => `${w.bars(facts.bar)}, after ${w.text(facts.step)}: ${w.text(facts.what)} reads ${values(facts, w)}, ${limits(facts, w)}. Do not go on before it is settled.`,
}

const grade = ({ grade: name }: Facts): string => (typeof name === 'string' ? ` (${name})` : '')
const percent = (share: Facts[string] | undefined, w: Wording): string => (typeof share === 'number' ? `${w.number(Math.round(share))} %` : '?')
const lower = ({ lowerMm }: Facts, w: Wording): string => (typeof lowerMm === 'number' && lowerMm > 0 ? `; or let the pack become ${w.length(lowerMm)} instead` : '')

function values({ values: list, what }: Facts, w: Wording): string {
  const said = (one: Facts[string] | undefined) => (what === 'hardness' ? w.number(one) : w.length(one))
  return Array.isArray(list) ? list.map((one: Facts[string] | undefined) => said(one)).join(w.units.decimalMark === ',' ? '; ' : ', ') : '?'
}

function limits({ least, most }: Facts, w: Wording): string {
  if (typeof least === 'number' && typeof most === 'number') return `it has to be ${w.length(least)} to ${w.length(most)}`
  return typeof least === 'number' ? `it has to be at least ${w.length(least)}` : `at most ${w.length(most)} goes on`
}
