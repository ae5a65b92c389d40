import type { Facts } from '#model/refusal.ts'
import type { Say, Wording } from '#words/wording.ts'

/** What readings give reason to look at again, and what a budget leaves out or lacks. */
export const inspectWords: { readonly [code: string]: Say } = {
  'lone-high-reading': (facts, w) => `${place(facts, w)} stands ${w.micrometres(facts.aboveUm)} above the rest: perhaps a burr or a chip. Stone, wipe, read again.`,
  'unit-slip': (facts, w) => `${place(facts, w)} reads ${w.micrometres(facts.readingUm)}, about ${times(facts, w)} what its neighbours do. Is the unit or the decimal mark right?`,
  'readings-not-independent': (facts, w) => `${place(facts, w)}: each repeat follows from the one before. Lift off and set down anew between repeats, or look for drift.`,
  'zero-drifted': (facts, w) => `The zero came back ${w.micrometres(facts.driftUm)} off after ${w.bars(facts.bar)}. It is told and not taken out of the readings: let things settle, read again.`,
  'scatter-not-known': () => 'No place was read more than once, so the scatter is missing from the uncertainty. Read one place at least three times.',
  'taper-or-rocking': () => 'The bar rocks on both faces: whether its ends differ in height or it only tipped cannot be told from these readings.',
  'coverage-factor-needed': (facts, w) => `${w.text(facts.correlated)} hang together and have finite degrees of freedom: no coverage factor follows. Give one.`,
  'cancels-along-bar': (facts) => `${partWord(facts)} is left out: it is the same all along the bar.`,
  'cancels-between-mates': (facts) => `${partWord(facts)} is left out: mates read in one check at one spot share it.`,
}

const place = (facts: Facts, w: Wording): string => `${w.bars(facts.bar)} at ${w.length(facts.xMm)}${facts.line === 1 ? ' on the second line' : ''}`

const times = (facts: Facts, w: Wording): string =>
  typeof facts.factor === 'number' && facts.factor < 1 ? `${w.number(Math.round(10 / facts.factor) / 10)} times less than` : `${w.number(facts.factor)} times`

const partWords: { readonly [part: string]: string } = {
  block: 'The gauge block', zero: 'The setting of the zero', temperature: 'The difference in temperature', expansion: 'The difference of the steels', instrument: 'The error of the instrument', plate: 'The plate',
}
const partWord = ({ part }: Facts): string => (typeof part === 'string' && Object.hasOwn(partWords, part) ? partWords[part]! : 'A part')
