import { expect, test } from 'vitest'
import { plainUnits } from '#words/terms.ts'
import { unreadSaid } from '#cli/commands/rack-missing.ts'

test('setups that are not counted are said as one or many, in the words of the region', () => {
  expect(unreadSaid(1, plainUnits)).toBe('1 saved setup cannot be read in its vise any more and is not counted.\n')
  expect(unreadSaid(2, { ...plainUnits, words: 'UK' })).toBe('2 saved setups cannot be read in their vice any more and are not counted.\n')
})
