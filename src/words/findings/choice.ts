import { setFrom } from '#words/findings/because.ts'
import { counted, type Say } from '#words/wording.ts'

/** What to know about one choice before using it. */
export const choiceWords: { readonly [code: string]: Say } = {
  'hole-outside-base': (facts) => `${counted('Hole', 'Holes', facts.holes)} ${many(facts.holes) ? 'lie' : 'lies'} outside what the bars carry: the part may tip under the drill. Hold it down, or put a bar nearer.`,
  'bar-far-from-middle': (facts, w) => `${w.bars(facts.bars)} ${many(facts.bars) ? 'stand' : 'stands'} far from the middle of the part: see that it does not tip when it is tightened.`,
  'stick-out-per-grip': (facts, w) => `${w.length(facts.stickOutMm)} stands above the jaws on ${w.length(facts.gripMm)} of grip, more than ${w.number(facts.limit)} to 1: take light cuts or a lower pair.`,
  'stick-out-per-thickness': (facts, w) => `${w.length(facts.stickOutMm)} stands above the jaws, more than ${w.number(facts.limit)} times what is between them: take light cuts or a lower pair.`,
  'demagnetise-first': (facts, w) => `${w.bars(facts.bars)}: was on a magnetic chuck. Demagnetise first: chips cling to it and get under the part.`,
  'look-first': (facts, w) => `Look first at ${w.bars(facts.bars)}: new here, knocked, drilled or reground, and not looked over since. Wipe, feel for burrs, check at the plate.`,
  'below-jaws': (facts, w) => `The part lies ${w.length(facts.belowMm)} below the jaw tops: see that no cutter or holder comes down there.`,
  'placed-by-hand': (facts, w) => `${w.bars(facts.bar)} is set by hand, ${w.length(facts.airMm)} from a hole or cut: ${
    typeof facts.from === 'string' && facts.from.endsWith('end') ? `keep ${w.length(facts.spacerMm)} to the ${setFrom(facts, w)}` : `put ${w.length(facts.spacerMm)} between it and the ${setFrom(facts, w)}`}.`,
  'thin-nip': (facts, w) => `Only ${w.length(facts.gripMm)} of grip, a thin nip: light cuts, and nothing that pulls up.`,
  'out': (facts, w) => `${w.bars(facts.bars)} ${many(facts.bars) ? 'are' : 'is'} out: ask for ${many(facts.bars) ? 'them' : 'it'} back first.`,
  'through-cut-not-placed': () => 'A cut comes out below, and nobody said where: see for yourself that it misses the bars.',
  'plate-check-wanted': (facts, w) => `${w.bars(facts.bars)}: not proved for ${w.text(facts.use)}. Check ${many(facts.bars) ? 'them' : 'it'} at the plate first, both ends and the middle.`,
  'match-not-measured': (facts, w) => `${w.bars(facts.bars)}: sizes only marked, so how well they match is not known. Measure both before it matters.`,
}

const many = (list: unknown): boolean => Array.isArray(list) && list.length > 1
