import { expect, test } from 'vitest'
import { sayUnread } from '#words/say-unread.ts'
import { termsFor } from '#words/terms.ts'

test('setups that are not counted are said as one or many, in the words of the region', () => {
  expect(sayUnread(1, termsFor('US'))).toBe('1 saved setup lacks a size or does not go into the vise as it is now: left out.')
  expect(sayUnread(2, termsFor('UK'))).toBe('2 saved setups lack a size or do not go into the vice as it is now: left out.')
})
