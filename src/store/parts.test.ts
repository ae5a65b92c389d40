import fc from 'fast-check'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Change } from '#model/change.ts'
import type { DraftFields } from '#model/check-draft.ts'
import { editOf, firstChange } from '#model/record-fields.ts'
import { applyChanges, clashesOf } from '#store/changes.ts'
import { byFrom } from '#store/example-records.ts'
import { openExample } from '#store/example-store.ts'
import { recordOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'

let store: Store
beforeEach(async () => { store = await openExample() })
afterEach(() => store.close())

const km = byFrom('KM', 'tablet'), jo = byFrom('JO', 'phone')
const look = { wiped: true, stoned: false, rock: 'not tried' as const, feeler: '', seen: [] }
const draft: DraftFields = {
  form: {
    method: 'compare', unit: 'mm', bars: [], stations: 3, places: [], lines: 1, repeats: 1, instrumentId: null, plateId: null, blocksId: null,
    zeroOn: 'block', zero: '', zeroBar: null, closing: '', temperature: '', asFound: false, replaces: null, note: '',
  },
  typed: { 'A/0/A/0/0': '+1' }, looks: {}, state: 'open', checkId: null,
}
const first = firstChange('draft', 'd1', draft, km)
const now = () => recordOf(store, 'draft', 'd1')

test('who types into different cells, or looks at different bars, without seeing each other clashes in none: both stand', async () => {
  await applyChanges(store, [first])
  const seen = await now()
  await applyChanges(store, [editOf('draft', seen, { 'typed.A/0/A/1/0': '+2', 'looks.A': look }, km)])
  expect(await applyChanges(store, [editOf('draft', seen, { 'typed.B/0/A/0/0': '+3', 'looks.B': look }, jo)])).toMatchObject({ clashes: [] })
  expect(await now()).toMatchObject({ typed: { 'A/0/A/0/0': '+1', 'A/0/A/1/0': '+2', 'B/0/A/0/0': '+3' }, looks: { A: look, B: look } })
  expect(await clashesOf(store)).toEqual([])
})

test('in one cell they clash there and nowhere else, until one follows both', async () => {
  await applyChanges(store, [first])
  const seen = await now()
  const [low, high] = [editOf('draft', seen, { 'typed.A/0/A/1/0': '+2' }, jo), editOf('draft', seen, { 'typed.A/0/A/1/0': '+7' }, km)]
  await applyChanges(store, [high, low])
  expect(await clashesOf(store)).toMatchObject([{ kind: 'draft', record: 'd1', field: 'typed.A/0/A/1/0', stands: { value: '+7', person: 'KM' }, aside: { value: '+2', person: 'JO' } }])
  await applyChanges(store, [editOf('draft', await now(), { 'typed.A/0/A/1/0': '+2' }, km)])
  expect(await clashesOf(store)).toEqual([])
  expect((await now()).typed).toEqual({ 'A/0/A/0/0': '+1', 'A/0/A/1/0': '+2' })
})

test('an emptied cell is gone, whether it came with the whole or by itself', async () => {
  await applyChanges(store, [first])
  await applyChanges(store, [editOf('draft', await now(), { 'typed.A/0/A/1/0': '+2' }, km)])
  await applyChanges(store, [editOf('draft', await now(), { 'typed.A/0/A/0/0': '', 'typed.A/0/A/1/0': '' }, km)])
  expect((await now()).typed).toEqual({})
})

test.each([
  ['draft', 'd1', 'form.unit', 'mm', 'unknown-key'],
  ['draft', 'd1', 'typed.A/0/A/0/0', 'x'.repeat(41), 'value-not-allowed'],
  ['draft', 'd1', 'looks.A', { wiped: 'yes' }, 'value-not-allowed'],
  ['slot', 's1', 'name.first', 'A', 'unknown-key'],
] as const)('%s %s: %s is refused', async (kind, record, field, value, code) => {
  await applyChanges(store, [first])
  const change: Change = { id: 'c9', kind, record, person: 'KM', device: 'tablet', atIso: km.atIso, fields: { [field]: { value, saw: [] } } }
  await expect(applyChanges(store, [change])).rejects.toMatchObject({ code })
  expect((await now()).typed).toEqual(draft.typed)
})

test('in any order of arrival the same cells stand', async () => {
  const cells = fc.array(fc.tuple(fc.constantFrom('A/0/A/0/0', 'A/0/A/1/0', 'B/0/A/0/0'), fc.constantFrom('', '+1', '+2')), { minLength: 1, maxLength: 6 })
  await fc.assert(fc.asyncProperty(cells, fc.infiniteStream(fc.nat(5)), async (typed, picks) => {
    const by = byFrom('LU', 'laptop'), changes = typed.map(([cell, text]) => editOf('draft', { id: 'd1', ...draft, saw: {} }, Object.fromEntries([[`typed.${cell}`, text]]) as { readonly [key: `typed.${string}`]: string }, by))
    const shuffled = changes.map((change) => ({ change, at: picks.next().value })).sort((a, b) => a.at - b.at).map(({ change }) => change)
    const stands = async (order: readonly Change[]) => {
      const own = await openExample()
      try {
        await applyChanges(own, [first])
        for (const change of order) await applyChanges(own, [change])
        const { typed: cellsNow, saw } = await recordOf(own, 'draft', 'd1')
        return { cellsNow, saw }
      } finally { await own.close() }
    }
    expect(await stands(shuffled)).toEqual(await stands(changes))
  }), { numRuns: 15 })
})
