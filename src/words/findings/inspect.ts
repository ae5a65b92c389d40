import type { Facts } from '#model/refusal.ts'
import type { Say, Wording } from '#words/wording.ts'

/** What readings give reason to look at again, and what a budget leaves out or lacks. */
export const inspectWords: { readonly [code: string]: Say } = {
  'lone-high-reading': (facts, w) => `${place(facts, w)} stands ${w.micrometres(facts.aboveUm)} above the rest: perhaps a burr or a chip. Stone, wipe, read again.`,
  'unit-slip': (facts, w) => `${place(facts, w)} reads ${w.micrometres(facts.readingUm)}, about ${times(facts, w)} what its neighbours do. Is the unit or the decimal mark right?`,
  'readings-not-independent': (facts, w) => `${place(facts, w)}: each repeat follows from the one before. Lift off and set down anew between repeats, or look for drift.`,
  'zero-drifted': (facts, w) => `The zero came back ${w.micrometres(facts.driftUm)} off after ${w.bars(facts.bar)}. It is told and not taken out of the readings: let things settle, read again.`,
  'bar-rocks': (facts, w) => `${w.bars(facts.bar)} rocks${typeof facts.feelerUm === 'number' ? `, a feeler of ${w.micrometres(facts.feelerUm)} goes under` : ''}: wipe and stone, try again; if it still does it is bent, and readings from one face mix bend and height.`,
  'tool-overdue': (facts, w) => `${w.text(facts.tool)} was due on ${w.text(facts.dueOn)} and not calibrated again by ${w.text(facts.day)}: what it proved is in doubt until it is.`,
  'instrument-not-named': () => 'No instrument is named, so there is no uncertainty and nothing is proved.',
  'part-not-known': (facts, w) => `${partWord(facts, w)} has no figure in the shop's records: it is missing from the uncertainty.`,
  'temperature-not-told': () => 'No temperature was given: what the steels differ by away from 20 °C is missing from the uncertainty.',
  'temperature-away': (facts, w) => `Read at ${w.number(facts.temperatureC)} °C, ${w.number(facts.awayC)} °C from 20. Bars and steel blocks grow alike; a cold or a hand-warm one does not. Let them lie together.`,
  'value-at-limit': (facts, w) => `${facts.of === 'difference' ? 'The difference of ' : ''}${w.bars(facts.bar)}: so near to ${w.micrometres(facts.limitUm)} (${w.text(facts.use)}) that no instrument would prove it.`,
  'instrument-too-coarse': (facts, w) => `${facts.of === 'difference' ? 'The difference of ' : ''}${w.bars(facts.bar)}: ${facts.provable === true ? `not proved to ${w.micrometres(facts.limitUm)} with this instrument` : `this instrument cannot prove ${w.micrometres(facts.limitUm)}`} (${w.text(facts.use)}; standard uncertainty ${hundredths(facts.uUm, w)}). One with a standard uncertainty of at most ${hundredths(facts.neededUUm, w)} would.`,
  'height-for-reading': (facts, w) => `Read as ${w.micrometres(facts.readingUm)}: that looks like the whole height. Was ${w.text(facts.meant)} meant?`,
  'reading-unit-slip': (facts, w) => `Read as ${small(facts.readingUm, w)}. Was ${w.text(facts.meant)} meant? Type the unit with it if not.`,
  'reading-beyond-travel': (facts, w) => `Read as ${w.micrometres(facts.readingUm)}: more than the ${w.indicator} moves. Is the unit or the decimal mark right?`,
  'height-unit-slip': (facts, w) => `Read as ${w.length(facts.heightMm)} ${w.units.length}. Was ${w.text(facts.meant)} meant?`,
  'outside-instrument-range': (facts, w) => `Read as ${w.length(facts.heightMm)} ${w.units.length}: this micrometer reads from ${w.length(facts.fromMm)} to ${w.length(facts.toMm)}. Is the unit right, and the instrument?`,
  'mates-differ': (facts, w) => `${w.bars(facts.bar)} differ by ${w.micrometres(facts.worstUm)} at the worst place${facts.turned === true ? ', the second turned end for end' : ', marked ends together'}.`,
  'mates-good-for': (facts, w) => (Array.isArray(facts.uses) && facts.uses.length > 0 ? `Fit for ${w.text(facts.uses)}, by their difference and by each bar's own parallelism.` : 'Proved for no use with this instrument.'),
  'mates-of-two-checks': (facts, w) => `${w.bars(facts.bar)} were read in different checks, so plate, zero and block do not cancel. Read both in one check for less uncertainty.`,
  'mates-uncertainty-not-known': (facts, w) => `${w.bars(facts.bar)}: what the readings were taken with is not known, so nothing is proved.`,
  'mates-by-mean-height': (facts, w) => `Compared by mean heights alone: ${w.bars(facts.bar)} ${Array.isArray(facts.bar) && facts.bar.length > 1 ? 'were' : 'was'} not read at known places along the bar.`,
  'box-drilled': (facts, w) => `${w.bars(facts.bar)} is drilled into already: keep it to be cut into.`,
  'box-no-mate': (facts, w) => `${w.bars(facts.bar)} is even but has no mate here, and none comes near enough to be ground with: keep it to be cut into.`,
  'box-bent': (facts, w) => `${w.bars(facts.bar)} is bent or rocks: grinding would only follow the bend. Straighten it first, or scrap it.`,
  'box-too-worn': (facts, w) => `${w.bars(facts.bar)} is uneven by ${w.micrometres(facts.rangeUm)}, and no neighbour comes to its height for ${w.micrometres(facts.mostUm)} off: not worth the wheel.`,
  'box-regrind': (facts, w) => `${w.bars(facts.bar)} come to ${w.length(facts.newHeightMm)} ${w.units.length} together, ${w.micrometres(facts.totalUm)} off the highest place.`,
  'box-stone': (facts, w) => `${w.bars(facts.bar)}: stone the nicks off and read again before use.`,
  'box-demagnetise': (facts, w) => `${w.bars(facts.bar)}: take the magnetism out, chips cling to it.`,
  'scatter-not-known': () => 'No place was read more than once, so the scatter is missing from the uncertainty. Read one place at least three times.',
  'taper-or-rocking': () => 'The bar rocks on both faces: whether its ends differ in height or it only tipped cannot be told from these readings.',
  'coverage-factor-needed': (facts, w) => `${w.text(facts.correlated)} hang together and have finite degrees of freedom: no coverage factor follows. Give one.`,
  'cancels-along-bar': (facts, w) => `${partWord(facts, w)} is left out: it is the same all along the bar.`,
  'cancels-between-mates': (facts, w) => `${partWord(facts, w)} is left out: mates read in one check at one spot share it.`,
}

const place = (facts: Facts, w: Wording): string => `${w.bars(facts.bar)} at ${w.length(facts.xMm)}${facts.line === 1 ? ' on the second line' : ''}`

const times = (facts: Facts, w: Wording): string =>
  typeof facts.factor === 'number' && facts.factor < 1 ? `${w.number(Math.round(10 / facts.factor) / 10)} times less than` : `${w.number(facts.factor)} times`

/** Uncertainties of tenths of a micrometre lose too much at one decimal. */
const hundredths = (um: Facts[string] | undefined, w: Wording): string => (typeof um === 'number' ? `${w.number(Math.floor(um * 100 + 1e-6) / 100)} µm` : '?')
const small = (um: Facts[string] | undefined, w: Wording): string => `${w.number(um)} µm`

const partWords: { readonly [part: string]: string } = {
  'zero bar': 'The height of the bar it was zeroed on', zero: 'The setting of the zero', temperature: 'The difference in temperature', expansion: 'The difference of the steels', instrument: 'The error of the instrument', plate: 'The plate',
}
function partWord({ part }: Facts, { gauge }: Wording): string {
  if (part === 'block') return `The ${gauge} block`
  return typeof part === 'string' && Object.hasOwn(partWords, part) ? partWords[part]! : 'A part'
}
