import type { Say } from '#words/wording.ts'

/** What else would do when no pair serves as it is. */
export const otherWayWords: { readonly [code: string]: Say } = {}
