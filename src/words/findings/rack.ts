import { counted, type Say } from '#words/wording.ts'

/** What a rack leaves unserved, and what an answer about it does not look at. */
export const rackWords: { readonly [code: string]: Say } = {
  'window-between-heights': (facts) => `${counted('Window', 'Windows', facts.windows)}: none of the heights that can be had lies inside. Take a finer step.`,
  'places-not-looked-at': () => 'Where bars would stand among holes and how long they are was not looked at: a setup that counts as served may still want other bars.',
  'vise-not-of-this-shop': (facts, w) => `${w.bars(facts.bars)}: was in a ${w.vise} that this shop does not have, and comes into its slot.`,
  'no-place': () => 'The height is there, but its bars find no place clear of the holes and cuts.',
  'bars-too-thick': () => 'The height is there, but its bars do not go under the part beside each other: thinner ones would.',
  'no-bar-of-height': () => 'No bars of such a height.',
  'only-above-advice': () => 'Only heights above the advised one would do: too much of the part would stand above the jaws.',
  'no-height-serves': (_facts, w) => `No height leaves the grip and clears the cutter and the bed: work for step or soft jaws, or another ${w.vise}.`,
  'wider-than-vises': (_facts, w) => `The part is wider than any ${w.vise} it is for opens.`,
}
