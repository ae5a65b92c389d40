import { field, given, needed } from '#words/refusals/input.ts'
import type { Say } from '#words/wording.ts'

/** What cannot be ordered, cut or noted while bars are made. */
export const makingRefusals: { readonly [code: string]: Say } = {
  'way-not-open': (facts, w) => `${given(facts, w)} cannot be gone as things stand; open are ${needed(facts, w)}.`,
  'way-not-chosen': (facts, w) => `The order ${given(facts, w)} is still being written: choose a way first.`,
  'ladder-upside-down': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; a ladder goes up, give ${needed(facts, w)}.`,
  'length-not-left': (facts, w) => `${field(facts, w)}: so much under the width of the jaws leaves no bar; give ${needed(facts, w)}.`,
  'bad-day': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is no day of the calendar; give ${needed(facts, w)}.`,
  'steel-not-listed': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is none of the steels listed; list it, or name one of ${needed(facts, w)}.`,
  'range-upside-down': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; the end of the range is ${needed(facts, w)}.`,
  'stock-not-known': (facts, w) => `${field(facts, w)}: there is no stock ${given(facts, w)} in the lists.`,
  'height-not-ordered': (facts, w) => `${field(facts, w)}: ${given(facts, w)} was not ordered; it is one of ${needed(facts, w)}.`,
  'bar-not-in-making': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is none of the bars being made; give them their marks when they are cut.`,
  'step-not-in-route': (facts, w) => `${field(facts, w)}: this route has no step ${given(facts, w)}; it has ${needed(facts, w)}.`,
}
