import type { Say } from '#words/wording.ts'

/** What was understood otherwise than it is written in a file of bars. */
export const rackFileWords: { readonly [code: string]: Say } = {
  'width-taken-as-height': () => 'The column called width was taken for the height, as boxes print it.',
  'read-as-old-text': () => 'The file is not in UTF-8 and was read in the old encoding of desktop programs: look at the letters in names and notes.',
}
