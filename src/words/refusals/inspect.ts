import type { Say } from '#words/wording.ts'

/** Readings out of which nothing can be worked out. */
export const inspectRefusals: { readonly [code: string]: Say } = {
  'too-few-readings': (facts, w) => `${w.number(facts.given)} readings given; give at least ${w.number(facts.needed)}.`,
  'stations-coincide': () => 'All readings are from one place; read at two places at least.',
  'readings-do-not-match-stations': (facts, w) => `${w.number(facts.given)} readings for ${w.number(facts.needed)} stations; give one for each.`,
  'fit-not-determined': (facts, w) => `No line can be laid through ${w.number(facts.given)} readings: give at least ${w.number(facts.needed)}, at places that differ.`,
}
