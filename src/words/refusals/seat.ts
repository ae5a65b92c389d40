import { field, given, needed } from '#words/refusals/input.ts'
import type { Say } from '#words/wording.ts'

/** A seat, its prediction or a clamp that cannot be worked out. */
export const seatRefusals: { readonly [code: string]: Say } = {
  'too-few-points': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; give at least ${needed(facts, w)} place that carries.`,
  'bar-off-part': (facts, w) => `${field(facts, w)}: at ${given(facts, w)} the bar stands beside the part; it has to reach under it.`,
  'no-such-bar': (facts, w) => `${field(facts, w)}: there is no bar ${given(facts, w)}; bars are counted from 0, so it must be ${needed(facts, w)}.`,
  'too-few-trials': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; give ${needed(facts, w)}.`,
  'no-vector-instructions': () => 'A prediction needs WebAssembly with vector instructions, and there is none here. Browsers have had it since spring 2023: take a newer one, or allow WebAssembly in its settings; if neither helps, another machine.',
  'force-negative': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; it cannot be below 0.`,
  'cut-wider-than-cutter': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; a cutter cuts ${needed(facts, w)}, its diameter.`,
  'angle-too-steep': (facts, w) => `${field(facts, w)}: ${given(facts, w)} degrees given; it must be ${needed(facts, w)}.`,
}
