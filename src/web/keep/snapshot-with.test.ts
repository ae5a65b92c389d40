import { expect, test } from 'vitest'
import type { Change } from '#model/change.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { Entry } from '#web/keep/entry.ts'
import { openClashes } from '#web/keep/open-clashes.ts'
import { snapshotWith } from '#web/keep/snapshot-with.ts'

const atIso = '2025-01-01T00:00:00Z'
const units = { length: 'mm', decimalMark: '.', words: 'US' } as const
const empty: ShopSnapshot = {
  shop: { id: 'shop', saw: {}, name: '', units, paper: 'A4', limitsUm: { drilling: 25, milling: 10, fineMilling: 5, grinding: 2 }, due: null, making: null, demo: false },
  people: [], vises: [], slots: [], mates: [], bars: [], checks: [], events: [], parts: [], setups: [], instruments: [], drafts: [], outcomes: [], machines: [], stock: [], jobs: [],
}
const change = (id: string, fields: Change['fields']): Change => ({ id, kind: 'slot', record: 's', person: 'A', device: 'd', atIso, fields })
const deed = (...changes: Change[]): Entry => ({ door: 'deeds', body: { changes, checks: [], events: [] } })
const after = (...changes: Change[]) => changes.reduce((shop, one) => snapshotWith(shop, deed(one)), empty)
const first = change('c1', { name: { value: 'B4', saw: [] }, code: { value: 'ABCD2345', saw: [] } })

test('a new record stands at once, with the change each field came from', () => {
  expect(after(first).slots).toEqual([{ id: 's', name: 'B4', code: 'ABCD2345', saw: { name: ['c1'], code: ['c1'] } }])
})

test('a change that saw what stands follows it, whatever the ids', () => {
  const { slots } = after(first, change('a0', { name: { value: 'B5', saw: ['c1'] } }))
  expect(slots[0]).toMatchObject({ name: 'B5', saw: { name: ['a0'] } })
})

test('of two changes that did not see each other the greater id stands in either order, and the clash is open until followed', () => {
  const low = change('d1', { name: { value: 'low', saw: ['c1'] } }), high = change('d2', { name: { value: 'high', saw: ['c1'] } })
  for (const order of [[low, high], [high, low]]) {
    const shop = after(first, ...order)
    expect(shop.slots[0]!.name).toBe('high')
    expect(openClashes(shop)).toEqual([{ kind: 'slot', record: 's', field: 'name' }])
    const settled = snapshotWith(shop, deed(change('a1', { name: { value: 'low', saw: ['d1', 'd2'] } })))
    expect(settled.slots[0]!.name).toBe('low')
    expect(openClashes(settled)).toEqual([])
  }
})

test('an entry that is in already changes nothing', () => {
  expect(after(first, first)).toEqual(after(first))
})

test('a key typed into a check that was finished elsewhere shows nothing; brought back whole, it stands again', () => {
  const draft = (fields: Change['fields']): Change => ({ ...change('k1', fields), kind: 'draft', record: 'r' })
  const typed = { value: { 'A/0/A/0/0': '+3' }, saw: ['c9'] }
  expect(after(draft({ typed })).drafts).toEqual([])
  expect(after(draft({ typed, form: { value: {}, saw: ['c9'] }, state: { value: 'open', saw: ['c8'] } })).drafts).toHaveLength(1)
})

test('cells of one check typed by two who did not see each other stand beside each other; only in the same cell is a clash', () => {
  const draft = (id: string, fields: Change['fields']): Change => ({ ...change(id, fields), kind: 'draft', record: 'r' })
  const begun = draft('c1', { 'form': { value: {}, saw: [] }, 'typed': { value: { 'A/0/A/0/0': '+1' }, saw: [] } })
  const mine = draft('d1', { 'typed.A/0/A/1/0': { value: '+2', saw: [] } }), theirs = draft('d2', { 'typed.A/0/A/2/0': { value: '+3', saw: [] }, 'typed.A/0/A/0/0': { value: '', saw: [] } })
  for (const order of [[mine, theirs], [theirs, mine]]) {
    const shop = after(begun, ...order)
    expect(shop.drafts[0]!.typed).toEqual({ 'A/0/A/1/0': '+2', 'A/0/A/2/0': '+3' })
    expect(openClashes(shop)).toEqual([])
    expect(openClashes(snapshotWith(shop, deed(draft('d3', { 'typed.A/0/A/1/0': { value: '+9', saw: [] } }))))).toEqual([{ kind: 'draft', record: 'r', field: 'typed.A/0/A/1/0' }])
  }
})
