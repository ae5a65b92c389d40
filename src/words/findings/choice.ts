import { counted, type Say } from '#words/wording.ts'

/** What to know about one choice before using it. */
export const choiceWords: { readonly [code: string]: Say } = {
  'hole-outside-base': (facts) => `${counted('Hole', 'Holes', facts.holes ?? facts.hole)} lies outside what the bars carry: the part may tip under the drill. Hold it down, or put a bar nearer.`,
  'bar-far-from-middle': (facts, w) => `${w.bars(facts.bars ?? facts.bar)} stands far from the middle of the part. Watch that the part does not tip when it is tightened.`,
  'stick-out-per-grip': (facts, w) => `${w.length(facts.stickOutMm)} stands above the jaws on ${w.length(facts.gripMm)} of grip: more than ${w.number(facts.limit)} to 1. Take light cuts or a lower pair.`,
  'stick-out-per-thickness': (facts, w) => `${w.length(facts.stickOutMm)} stands above the jaws, more than ${w.number(facts.limit)} times what is between them. Take light cuts or a lower pair.`,
  'look-first': (facts, w) => `Look first: ${w.bars(facts.bars)} has not been looked over since it came in or was hit. Wipe it, feel for burrs, check it at the plate.`,
  'below-jaws': (facts, w) => `The part lies ${w.length(facts.belowMm)} below the jaw tops. See that no cutter or holder comes down there.`,
  'placed-by-hand': (facts, w) => `${w.bars(facts.bars ?? facts.bar)} stands by hand, ${w.length(facts.airMm)} from a hole or cut. Put a spacer in: ${w.length(facts.spacerMm)}.`,
  'thin-nip': (facts, w) => `Only ${w.length(facts.gripMm)} of grip: a thin nip. Light cuts, and nothing that pulls up.`,
  'out': (facts, w) => `${w.bars(facts.bars)} is out: ask for it back first.`,
  'through-cut-not-placed': () => 'A cut comes out below, and nobody said where: see for yourself that it misses the bars.',
  'match-not-measured': (facts, w) => `${w.bars(facts.bars)}: marked sizes only, so their match is not known. Measure both before it matters.`,
}
