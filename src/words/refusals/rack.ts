import { field, given, needed } from '#words/refusals/input.ts'
import type { Say } from '#words/wording.ts'

/** What cannot be ground. */
export const rackRefusals: { readonly [code: string]: Say } = {
  'nothing-to-order': (facts, w) => `All ${w.number(facts.given)} heights of this ladder are in the rack already, with mates enough.`,
  'height-not-measured': (facts, w) => `${field(facts, w)}: this bar is only marked ${given(facts, w)}; measure it first, so that the lowest place is known.`,
  'profile-not-read': (facts, w) => `${field(facts, w)}: ${given(facts, w)} places along this bar are known, ${needed(facts, w)} are needed: check it at the plate first, so that its lowest place is known.`,
  'bar-gone': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is gone; take it back into the rack first.`,
  'bar-in-work': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is still being made; it is not worn.`,
  'bar-in-job': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is in a job already, ${w.text(facts.job)}; finish or drop that first.`,
  'bar-out': (facts, w) => `${field(facts, w)}: this bar is out, with ${given(facts, w)}; take it back first.`,
  'too-few-stages': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; give at least ${needed(facts, w)}, with what a pass takes.`,
  'nothing-left': (facts, w) => `${field(facts, w)}: with ${w.micrometres(facts.given)} off each face nothing is left of the bars; take less, or leave out the worn one.`,
}
