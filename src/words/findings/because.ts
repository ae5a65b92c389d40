import type { Say } from '#words/wording.ts'

/** Why a choice stands where it stands in the order. */
export const becauseWords: { readonly [code: string]: Say } = {}
