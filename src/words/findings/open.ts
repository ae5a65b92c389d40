import { counted, type Say } from '#words/wording.ts'

/** What an answer leaves open, because it was not given or is not computed. */
export const openWords: { readonly [code: string]: Say } = {
  'holes-not-given': () => 'Holes: none given.',
  'along-not-given': () => 'Along the jaws: not given, so nobody looked where the bars end.',
  'between-not-given': () => 'Between the jaws: not given, so nobody looked whether two bars go in.',
  'hole-along-not-given': (facts) => `${counted('Cut', 'Cuts', facts.holes)}: not given how far along the hole is, so every bar keeps clear of it on its whole length.`,
  'not-computed': (facts, w) => `Not computed: ${w.text(facts.what)}.`,
  'cut-short': (facts, w) => `Only the first ${w.number(facts.most)} choices are listed.`,
}
