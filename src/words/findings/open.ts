import type { Say } from '#words/wording.ts'

/** What an answer leaves open, because it was not given or is not computed. */
export const openWords: { readonly [code: string]: Say } = {
  'holes-not-given': () => 'Holes: none given.',
  'along-not-given': () => 'Along the jaws: not given, so nobody looked where the bars end.',
  'between-not-given': () => 'Between the jaws: not given, so nobody looked whether two bars go in.',
}
