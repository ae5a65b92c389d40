import { field, given, needed } from '#words/refusals/input.ts'
import type { Say } from '#words/wording.ts'

/** Readings, limits and uncertainties out of which nothing can be worked out. */
export const inspectRefusals: { readonly [code: string]: Say } = {
  'too-few-readings': (facts, w) => `${w.number(facts.given)} readings given; give at least ${w.number(facts.needed)}.`,
  'stations-coincide': (facts, w) => `${field(facts, w)}: two readings are from one place; read at places that differ, repeats of one place together.`,
  'readings-do-not-match-stations': (facts, w) => `${field(facts, w)}: ${w.number(facts.given)} readings for ${w.number(facts.needed)} stations; give one for each.`,
  'fit-not-determined': (facts, w) => `No line can be laid through ${w.number(facts.given)} readings: give at least ${w.number(facts.needed)}, at places that differ more.`,
  'degree-out-of-range': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; it is ${needed(facts, w)}.`,
  'middle-outside-stations': (facts, w) => `${field(facts, w)}: no stations on either side of the middle of the bar, where it rests; read on both sides, or check the length.`,
  'place-beyond-bar': (facts, w) => `${field(facts, w)}: ${given(facts, w)} lies beyond the bar; stations are ${needed(facts, w)} from its marked end.`,
  'feeler-out-of-range': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; a feeler is ${needed(facts, w)} thick.`,
  'reading-asked-about': (facts, w) => `${w.bars(facts.bar)} at station ${typeof facts.station === 'number' ? w.number(facts.station + 1) : '?'} reads ${w.text(facts.given)}: say first whether that is meant.`,
  'reading-missing': (facts, w) => `${w.bars(facts.bar)} has no reading at station ${typeof facts.station === 'number' ? w.number(facts.station + 1) : '?'}${facts.line === 1 ? ' of the second line' : ''}${facts.face === 'B' ? ' with face B up' : ''}; read it, or ask for fewer stations.`,
  'readings-uneven': (facts, w) => `${w.bars(facts.bar)} has ${w.number(facts.given)} readings in a run where others have ${w.number(facts.needed)}; read each run at as many stations.`,
  'instrument-not-known': (facts, w) => `${field(facts, w)}: there is no ${given(facts, w)} among the instruments that can be used for it; ${Array.isArray(facts.needed) && facts.needed.length > 0 ? `there is ${needed(facts, w)}` : 'enter one in Shop first'}.`,
  'nothing-checked': () => 'Nothing was read and nothing looked at; there is no check to keep.',
  'no-limit': () => 'No limit given; give a lower limit, an upper limit, or both.',
  'limits-crossed': (facts, w) => `${field(facts, w)}: ${given(facts, w)} lies above the upper limit; exchange the two.`,
  'uncertainty-negative': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; an uncertainty cannot be below 0.`,
  'too-few-parts': () => 'No part of the uncertainty is given; give at least one.',
  'part-named-twice': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is the name of an earlier part; give each part its own.`,
  'unknown-part': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is no part of this budget; name one of ${needed(facts, w)}.`,
  'dof-too-small': (facts, w) => `${field(facts, w)}: ${given(facts, w)} degrees of freedom given; give ${needed(facts, w)}, or none for endless.`,
  'coverage-out-of-range': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; a coverage is ${needed(facts, w)}.`,
  'correlation-out-of-range': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; a correlation is ${needed(facts, w)}.`,
  'correlations-impossible': () => 'These correlations cannot all hold together; give each pair of parts once, and look at the signs.',
}
