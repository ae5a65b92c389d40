import type { Say } from '#words/wording.ts'

/** What to know before bars go into the furnace, and of a hardness that was read. */
export const heatWords: { readonly [code: string]: Say } = {
  'measured-above-published': (facts, w) => `${w.number(facts.measuredHrc)} HRC was read; of ${w.text(facts.steel)} ${w.number(facts.fromHrc)} to ${w.number(facts.toHrc)} HRC as quenched is the most that is published (${w.text(facts.source)}). Read again on the calibrated tester, several places, the block beside it: a thin or hollow-lying bar, the wrong scale or another steel are the usual causes.`,
  'measured-above-tempered': (facts, w) => `${w.number(facts.measuredHrc)} HRC was read; after a temper no more than ${w.number(facts.mostHrc)} is published of ${w.text(facts.steel)}: not tempered, or too cool.`,
  'measured-below-table': (facts, w) => `${w.number(facts.measuredHrc)} HRC was read, below the ${w.number(facts.leastHrc)} where the table of ${w.text(facts.steel)} ends: quenched too slowly, skin without carbon, or tempered too hot.`,
  'hardness-at-edge': (facts, w) => `${w.number(facts.hrc)} HRC is at the edge of what is usual: after ${w.number(facts.atC)} °C bars come out between ${w.number(facts.fromHrc)} and ${w.number(facts.toHrc)}.`,
  'may-shrink': (facts, w) => `The ${w.text(facts.size)} may shrink by ${w.micrometres(facts.byUm)} (or grow by ${w.micrometres(facts.toUm)}): leave that much more to grind.`,
  'growth-not-counted': (facts, w) => `The ${w.text(facts.size)} grows by about ${w.micrometres(facts.usualUm)}, ${w.micrometres(facts.fromUm)} to ${w.micrometres(facts.toUm)}; it is not counted as stock to grind.`,
  'conversion-indication': (facts, w) => `${w.number(facts.hrc)} HRC is about ${w.text(String(Math.round(Number(facts.hv))))} HV${facts.rmMPa === null ? '; no tensile strength is published for it' : ` and ${String(Math.round(Number(facts.rmMPa)))} N/mm²`}: converted, an indication only. Write down the scale that was read.`,
  'heat-mates-together': () => 'Mates out of one bar, end to end, heated and quenched together: what they grow by is then alike.',
  'skin-loses-carbon': () => 'In an open furnace the skin loses carbon and scales: foil, a pack or inert gas, or leave it on to grind off; the hotter and the longer, the deeper.',
}
