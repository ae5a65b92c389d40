import { field, given, needed } from '#words/refusals/input.ts'
import type { Say } from '#words/wording.ts'

/** A cut that the books say nothing about. */
export const cuttingRefusals: { readonly [code: string]: Say } = {
  'steel-state-unknown': (facts, w) => `${field(facts, w)}: nothing is known of ${w.text(facts.steel)} ${given(facts, w)}; known is ${needed(facts, w)}.`,
  'no-cutting-data': (facts, w) => `${field(facts, w)}: no usual value is at hand for ${w.text(facts.material)} in this steel; give ${needed(facts, w)}.`,
}
