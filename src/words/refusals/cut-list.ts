import { field, given, needed } from '#words/refusals/input.ts'
import type { Say } from '#words/wording.ts'

/** What cannot be cut out of the stock at all. */
export const cutListRefusals: { readonly [code: string]: Say } = {
  'length-too-fine': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is finer than can be reckoned with; give it in steps of ${needed(facts, w)}.`,
  'piece-longer-than-stock': (facts, w) => `${field(facts, w)}: a piece of ${given(facts, w)} is longer than the longest stock, ${needed(facts, w)}; get longer stock, or leave the piece out.`,
  'piece-wider-than-plate': (facts, w) => `${field(facts, w)}: a piece of ${given(facts, w)} is longer than the plate is wide, ${needed(facts, w)}; turn the piece, or get a wider plate.`,
}
