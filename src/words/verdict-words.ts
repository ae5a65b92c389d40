/** Whether a use is proved; a mark beside each word, so that it never rests on colour. */
export const verdictWords = {
  'proved': { mark: '✓', word: 'proved' }, 'not-proved': { mark: '?', word: 'not proved' }, 'out': { mark: '×', word: 'out' },
} as const
