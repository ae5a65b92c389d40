import { field, given, needed } from '#words/refusals/input.ts'
import type { Say } from '#words/wording.ts'

/** A part, its cuts and its vise that cannot go together. */
export const setupRefusals: { readonly [code: string]: Say } = {
  'spot-through': (facts, w) => `${field(facts, w)}: a spot or countersink does not go through; take through away, or make it a drilled hole.`,
  'lower-jaw-above-higher': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given, the other is ${needed(facts, w)}; exchange the two.`,
  'too-few-bars': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; give at least ${needed(facts, w)}.`,
  'too-many-bars': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; give at most ${needed(facts, w)}.`,
  'part-wider-than-opening': (facts, w) =>
    `${field(facts, w)}: the part is ${given(facts, w)} between the jaws and the ${w.vise} opens ${needed(facts, w)}; turn the part or take a larger ${w.vise}.`,
  'cut-deeper-than-part': (facts, w) =>
    `${field(facts, w)}: ${given(facts, w)} given, the part is ${needed(facts, w)} high; a cut cannot be deeper than the part.`,
  'hole-off-part': (facts, w) => `${field(facts, w)}: at ${given(facts, w)} the middle of the hole lies beside the part; it must be ${needed(facts, w)}.`,
  'blind-hole-breaks-through': (facts, w) =>
    `${field(facts, w)}: at ${given(facts, w)} deep the point of the drill comes out below; make it ${needed(facts, w)} or a through hole.`,
  'too-few-vises': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; give at least ${needed(facts, w)}.`,
  'too-few-pairs': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; a row needs one for each ${w.vise}, ${needed(facts, w)}.`,
  'too-few-windows': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; give at least ${needed(facts, w)}.`,
  'difference-negative': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; a difference of two heights is 0 or more.`,
  'finish-above-raw': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; finished it is ${needed(facts, w)}, the raw size.`,
  'bar-id-twice': (facts, w) => `${field(facts, w)}: the id ${given(facts, w)} stands there twice; give each bar its own.`,
}
