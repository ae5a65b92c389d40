import type { Say } from '#words/wording.ts'

/** A part on bars under straps. Facts: `index`, counted from 0, of the strap or of the cut. */
export const tableWords: { readonly [code: string]: Say } = {
  'strap-not-over-bar': (facts) => `Strap ${place(facts)} presses beside the bars and bends the part: put it above a bar, or a bar under it.`,
  'tips-under-thrust': (facts) => `The hole of cut ${place(facts)} lies outside what the bars carry: the part tips under the drill. Move a bar out past it.`,
}

const place = (facts: Parameters<Say>[0]): string => (typeof facts.index === 'number' ? String(facts.index + 1) : '?')
