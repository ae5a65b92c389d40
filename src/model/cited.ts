/**
 * How well a number is known: it can be looked up there; a published source quoted from memory; of the trade without a source;
 * it follows from geometry or arithmetic; or the shop's own.
 */
export const citedAs = ['published', 'memory', 'common practice', 'computed', 'shop'] as const
export type CitedAs = (typeof citedAs)[number]

/** Where the numbers of a row are from. `source` is a key of docs/sources.md; a row of the shop's own names `SHOP`. */
export type Cited = { readonly source: string; readonly standing: CitedAs }
