import { listOf, type Say } from '#words/wording.ts'

/** What a part will come out as: what is not in it, and why nothing can be said. */
export const predictionWords: { readonly [code: string]: Say } = {
  'no-prediction-round': () => 'A round part touches along a line: what it comes out as is not foretold.',
  'no-prediction-on-edge': () => 'Foretold only for bars on edge: nobody measured how this way of resting lies.',
  'no-prediction-sizes': () => 'Give what is between the jaws and along, and what the part comes out as stands here.',
  'no-prediction-marked': (facts, w) => `Not foretold: ${w.bars(facts.bars)} ${many(facts.bars) ? 'were' : 'was'} never measured here. Check ${many(facts.bars) ? 'both' : 'it'} in Inspect.`,
  'vise-never-indicated': (_, w) => `The ${w.vise} was never indicated: bed, fixed jaw and what closing lifts are not in it. Four readings on a ground block settle it.`,
  'vise-not-indicated': (facts, w) => `Not in it, because it was not measured on this ${w.vise}: ${listOf((Array.isArray(facts.what) ? facts.what : []).map((what) => partOfVise[String(what)] ?? '?'))}.`,
  'squareness-not-known': () => 'Not in it: how square the side at the fixed jaw is to the underside.',
  'bar-uncertainty-not-known': (facts, w) => `Not in it: the measuring uncertainty of ${w.bars(facts.bars)}. The check does not say what it was taken with.`,
  'profile-not-known': (facts, w) => `${w.bars(facts.bars)}: counted as even, because no heights along ${many(facts.bars) ? 'them' : 'it'} were read at known places.`,
  'hollows-not-counted': () => 'The hollows of the underside are not in it: bars count as carrying all along.',
  'shop-scatter-not-known': (facts, w) => `The shop's own scatter is not in it yet: ${w.number(facts.count)} of the ${w.number(facts.needed)} parts that it takes were measured after the cut.`,
}

const partOfVise: { readonly [part: string]: string } = { 'bed': 'the bed', 'jaw-slope': 'the slope of the fixed jaw', 'jaw-lift': 'what closing lifts' }

const many = (list: unknown): boolean => Array.isArray(list) && list.length > 1
