import type { Say } from '#words/wording.ts'

/** Readings out of which nothing can be worked out. */
export const inspectRefusals: { readonly [code: string]: Say } = {
  'fit-not-determined': (facts, w) => `No line can be laid through ${w.number(facts.given)} readings: give at least ${w.number(facts.needed)}, at places that differ.`,
}
