import type { Say } from '#words/wording.ts'

/** What to know of a cut list that is not shown to be the best. */
export const cutListWords: { readonly [code: string]: Say } = {
  'not-enough-stock': () => 'The stock at hand does not do: not all pieces come out of it, however it is cut. Get more, or leave pieces out.',
  'no-plan-found': () => 'No way to cut all pieces was found in the time given, and none was ruled out. Give it more time, or get more stock.',
  'plan-not-proved-least': (facts, w) => `This takes ${w.number(facts.found)}; that less than ${w.number(facts.bound)} cannot do is proven, what lies between is not. More time may find a better one.`,
}
