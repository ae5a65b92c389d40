import { field, given, needed } from '#words/refusals/input.ts'
import type { Say } from '#words/wording.ts'

/** What the shop's records do not allow. */
export const shopRefusals: { readonly [code: string]: Say } = {
  'unknown-record': (facts, w) => `${field(facts, w)}: there is no ${facts.kind ?? 'record'} ${given(facts, w)}.`,
  'shop-not-empty': () => 'The demo shop is only for an empty shop: this one holds records already.',
  'value-not-allowed': (facts, w) => `${field(facts, w)}: ${given(facts, w)} does not fit; needed is ${needed(facts, w)}.`,
}
