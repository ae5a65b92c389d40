import { expect, test } from 'vitest'
import { changedKeys } from '#web/shop/changed-keys.ts'

// As the shop answers, keys in the order of their letters, and as a form builds them.
const kept = { name: 'Mill', jawSets: [{ face: 'smooth', fixedHeightMm: 45, id: 'j' }], note: '' }
const typed = { note: '', jawSets: [{ id: 'j', face: 'smooth', fixedHeightMm: 45 }], name: 'Mill' }

test('what was opened and saved again is no change, in whatever order its parts stand', () => expect(changedKeys(typed, kept)).toEqual([]))

test('what differs is named alone', () => {
  expect(changedKeys({ ...typed, name: 'Mill 2' }, kept)).toEqual(['name'])
  expect(changedKeys({ jawSets: [{ ...typed.jawSets[0]!, fixedHeightMm: 44 }] }, kept)).toEqual(['jawSets'])
})
