import { field, given, needed } from '#words/refusals/input.ts'
import type { Say } from '#words/wording.ts'

/** A wheel that must not run so. */
export const grindRefusals: { readonly [code: string]: Say } = {
  'wheel-above-marked': (facts, w) => `${field(facts, w)}: ${given(facts, w)} 1/min is above what is marked on the wheel; it must be ${needed(facts, w)}.`,
}
