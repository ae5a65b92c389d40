import { field, given, needed } from '#words/refusals/input.ts'
import type { Say } from '#words/wording.ts'

/** A hardness that no table vouches for. */
export const heatRefusals: { readonly [code: string]: Say } = {
  'hardness-outside-table': (facts, w) => `${field(facts, w)}: ${given(facts, w)} HRC asked of ${w.text(facts.steel)}; after a temper ${needed(facts, w)} is published (${w.text(facts.source)})${facts.asQuenchedHrc === null ? '' : `, as quenched up to ${w.number(facts.asQuenchedHrc)}`}. Ask for less, take another steel, or bring rows of your own.`,
  'no-tempering-rows': (facts, w) => `${field(facts, w)}: ${given(facts, w)} HRC asked of ${w.text(facts.steel)}, for which no tempering table is at hand; bring ${needed(facts, w)}.`,
}
