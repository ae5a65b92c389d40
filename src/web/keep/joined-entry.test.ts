import { expect, test } from 'vitest'
import type { Change } from '#model/change.ts'
import type { Entry } from '#web/keep/entry.ts'
import { joinedEntry } from '#web/keep/joined-entry.ts'

const edit = (part: Partial<Change>): Entry => ({
  door: 'deeds', body: { changes: [{ id: 'c1', kind: 'draft', record: 'r', person: 'A', device: 'd', atIso: '2025-01-01T00:00:00Z', fields: {}, ...part }], checks: [], events: [] },
})
const changeOf = (entry: Entry | null) => (entry?.door === 'deeds' ? entry.body.changes[0] : null)

test('a new record and the first key in it are a new record with that key', () => {
  const made = edit({ fields: { state: { value: 'open', saw: [] }, typed: { value: {}, saw: [] } } })
  const typed = edit({ id: 'c2', fields: { typed: { value: { a: '3' }, saw: ['c1'] } } })
  expect(changeOf(joinedEntry(made, typed))).toMatchObject({ id: 'c2', fields: { state: { value: 'open', saw: [] }, typed: { value: { a: '3' }, saw: [] } } })
})

test('a change by another that was seen in between stays seen', () => {
  const mine = edit({ fields: { typed: { value: 'x', saw: ['c0'] } } })
  const next = edit({ id: 'c2', fields: { typed: { value: 'xy', saw: ['b9', 'c1'] } } })
  expect(changeOf(joinedEntry(mine, next))?.fields['typed']!.saw).toEqual(['b9', 'c0'])
})

test('of another record, another person, or with a check beside it: two entries', () => {
  const mine = edit({})
  expect(joinedEntry(mine, edit({ id: 'c2', record: 's' }))).toBeNull()
  expect(joinedEntry(mine, edit({ id: 'c2', person: 'B' }))).toBeNull()
  expect(joinedEntry(mine, { door: 'unserved', body: [] })).toBeNull()
})

test('keys in two cells travel as two fields of one change', () => {
  const one = edit({ fields: { 'typed.A/0/A/0/0': { value: '+3', saw: [] } } })
  const other = edit({ id: 'c2', fields: { 'typed.A/0/A/1/0': { value: '+4', saw: [] } } })
  expect(changeOf(joinedEntry(one, other))?.fields).toEqual({ 'typed.A/0/A/0/0': { value: '+3', saw: [] }, 'typed.A/0/A/1/0': { value: '+4', saw: [] } })
})
