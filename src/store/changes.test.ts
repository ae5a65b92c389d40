import fc from 'fast-check'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Change } from '#model/change.ts'
import { editOf, firstChange } from '#model/record-fields.ts'
import { applyChanges, clashesOf } from '#store/changes.ts'
import { barFields, byFrom, matesFields, setupFields, slotFields, viseFields } from '#store/example-records.ts'
import { exampleRuns, nextDoorTo, openExample } from '#store/example-store.ts'
import type { Store } from '#store/store.ts'
import { recordOf, recordsOf } from '#store/records.ts'

let store: Store
beforeEach(async () => { store = await openExample() })
afterEach(() => store.close())

const km = byFrom('KM', 'tablet'), jo = byFrom('JO', 'phone')
const added = (id = 'bar1', code = 'ABCD2345') => firstChange('bar', id, barFields(code), km)

const edit = (id: string, saw: string[], value: string, field = 'note'): Change => ({
  id, kind: 'bar', record: 'bar1', person: 'KM', device: 'tablet', atIso: '2025-03-04T08:00:00.000Z', fields: { [field]: { value, saw } },
})
const changeCount = async () => (await store.db.selectFrom('change').select('id').where('kind', '!=', 'shop').execute()).length
const refusedBy = (changes: readonly Change[]) => expect(applyChanges(store, changes)).rejects

test('a record stands as its first change brought it, and says which change each value came from', async () => {
  const first = added()
  expect(await applyChanges(store, [first])).toEqual({ stood: [first.id], clashes: [] })
  const bar = await recordOf(store, 'bar', 'bar1')
  expect(bar).toMatchObject({ id: 'bar1', ...barFields('ABCD2345') })
  expect(bar.saw['thicknessMm']).toEqual([first.id])
})

test('every kind of record comes back as it was put in', async () => {
  const vise = firstChange('vise', 'v1', viseFields, km), setup = firstChange('setup', 's1', setupFields('v1', { bars: ['bar1'] }), km)
  const person = firstChange('person', 'p1', { initials: 'KM', units: { length: 'in', decimalMark: '.', words: 'UK' } }, km)
  await applyChanges(store, [setup, vise, added(), person, firstChange('person', 'p2', { initials: 'JO', units: null }, km)])
  expect(await recordsOf(store, 'setup')).toMatchObject([setupFields('v1', { bars: ['bar1'] })])
  expect(await recordsOf(store, 'vise')).toMatchObject([viseFields])
  expect(await recordsOf(store, 'person')).toMatchObject([{ initials: 'KM', units: { length: 'in' } }, { initials: 'JO', units: null }])
})

test('a change that saw another follows it, whatever their ids', async () => {
  const first = added()
  await applyChanges(store, [first])
  await applyChanges(store, [edit('zz', [first.id], 'dinged')])
  const answer = await applyChanges(store, [edit('aa', ['zz'], 'stoned')])
  expect(answer).toEqual({ stood: ['aa'], clashes: [] })
  expect((await recordOf(store, 'bar', 'bar1')).note).toBe('stoned')
})

test('two changes of one field that did not see each other: the greater id stands, the other is shown until one follows both', async () => {
  const first = added()
  await applyChanges(store, [first])
  await applyChanges(store, [edit('m2', [first.id], 'in drawer')])
  const clash = {
    kind: 'bar', record: 'bar1', field: 'note', stands: { change: 'm2', value: 'in drawer', person: 'KM' }, aside: { change: 'm1', value: 'on the mill', person: 'KM' },
  }
  expect(await applyChanges(store, [edit('m1', [first.id], 'on the mill')])).toEqual({ stood: [], clashes: [clash] })
  expect(await clashesOf(store)).toEqual([clash])

  const chosen = editOf('bar', await recordOf(store, 'bar', 'bar1'), { note: 'on the mill' }, jo)
  expect(chosen.fields['note']!.saw).toEqual(['m2', 'm1'])
  expect(await applyChanges(store, [chosen])).toEqual({ stood: [chosen.id], clashes: [] })
  expect(await clashesOf(store)).toEqual([])
  expect((await recordOf(store, 'bar', 'bar1')).note).toBe('on the mill')
})

test('different fields never clash, nor do two who wanted the same', async () => {
  const first = added()
  await applyChanges(store, [first, edit('m1', [first.id], 'A'), edit('m2', [first.id], 'B', 'name')])
  expect(await clashesOf(store)).toEqual([])
  await applyChanges(store, [edit('m3', [first.id], 'A')])
  expect(await clashesOf(store)).toEqual([])
})

test('a change sent again changes nothing and gets the same answer', async () => {
  const first = added()
  await applyChanges(store, [first])
  await applyChanges(store, [edit('m2', [first.id], 'in drawer')])
  const once = await applyChanges(store, [edit('m1', [first.id], 'on the mill')])
  expect(await applyChanges(store, [edit('m1', [first.id], 'on the mill'), edit('m1', [first.id], 'on the mill')])).toEqual(once)
  expect(await changeCount()).toBe(3)
})

test('an id with other content is refused, and nothing of the call is kept', async () => {
  const first = added()
  await applyChanges(store, [first])
  const other = { ...first, fields: { ...first.fields, name: { value: 'another', saw: [] } } }
  await refusedBy([added('bar2', 'ABCD2346'), other]).toMatchObject({ code: 'id-used-twice', facts: { given: first.id } })
  expect(await recordsOf(store, 'bar')).toHaveLength(1)
})

test('what cannot be kept is refused by field, all or none', async () => {
  const whole = added(), { lengthMm: _lengthMm, ...short } = whole.fields
  await refusedBy([{ ...whole, fields: short }]).toMatchObject({ code: 'field-missing', facts: { field: 'changes[0].fields.lengthMm' } })
  const withField = (field: string, value: never) => ({ ...whole, fields: { ...whole.fields, [field]: { value, saw: [] } } })
  await refusedBy([withField('colour', 'blue' as never)]).toMatchObject({ code: 'unknown-key', facts: { field: 'changes[0].fields.colour' } })
  await refusedBy([withField('constructor', 'blue' as never)]).toMatchObject({ code: 'unknown-key' })
  await refusedBy([withField('thicknessMm', '8' as never)]).toMatchObject({ code: 'not-a-number', facts: { field: 'changes[0].fields.thicknessMm', given: '8' } })
  await refusedBy([withField('thicknessMm', -8 as never)]).toMatchObject({ code: 'size-not-positive' })
  await refusedBy([withField('matesId', 'nobody' as never)]).toMatchObject({ code: 'unknown-record', facts: { field: 'matesId', kind: 'mates', given: 'nobody' } })
  await refusedBy([withField('where', { at: 'vise', viseId: 'nobody' } as never)]).toMatchObject({ code: 'unknown-record', facts: { field: 'where.viseId' } })
  await refusedBy([firstChange('vise', 'v1', { ...viseFields, fittedJawSetId: 'other' }, km)]).toMatchObject({ code: 'jaw-set-not-known', facts: { needed: ['standard'] } })
  await refusedBy([firstChange('setup', 's1', setupFields('nobody'), km)]).toMatchObject({ code: 'unknown-record', facts: { kind: 'vise' } })
  expect(await changeCount()).toBe(0)
})

test('a code is borne by one bar or slot alone', async () => {
  await applyChanges(store, [added()])
  await refusedBy([added('bar2')]).toMatchObject({ code: 'code-used-twice', facts: { given: 'ABCD2345' } })
  await refusedBy([firstChange('slot', 's1', slotFields('ABCD2345'), km)]).toMatchObject({ code: 'code-used-twice' })
})

test('changes that saw each other in a circle are refused', async () => {
  await applyChanges(store, [added()])
  await refusedBy([edit('x', ['x'], 'a')]).toMatchObject({ code: 'saw-in-circle' })
  const all = (id: string, saw: string[]): Change => ({ ...added('bar9', 'ABCD2349'), id, fields: Object.fromEntries(Object.entries(added('bar9', 'ABCD2349').fields).map(([field, { value }]) => [field, { value, saw }])) })
  await refusedBy([all('x', ['y']), all('y', ['x'])]).toMatchObject({ code: 'saw-in-circle' })
})

test('another shop in the same database is neither seen nor touched', async () => {
  const neighbour = await nextDoorTo(store)
  await applyChanges(neighbour, [added()])
  expect(await recordsOf(store, 'bar')).toEqual([])
  await applyChanges(store, [added()])
  expect(await recordsOf(store, 'bar')).toHaveLength(1)
  await neighbour.close()
})

test('in any order and sent any number of times, the same stands', async () => {
  const fields = ['name', 'note'] as const
  const edits = fc.array(fc.record({ field: fc.constantFrom(...fields), value: fc.constantFrom('a', 'b', 'c'), saw: fc.array(fc.nat(9), { maxLength: 2 }), id: fc.nat(1e6) }), { maxLength: 9 })
  const order = fc.array(fc.nat(), { minLength: 30, maxLength: 30 })
  await fc.assert(fc.asyncProperty(edits, order, order, async (made, one, two) => {
    const first = firstChange('bar', 'bar1', barFields('ABCD2345'), byFrom('KM'))
    const ids = made.map(({ id }, at) => `c${id}-${at}`)
    // A change may have seen the first one and any made before it, as on a real device.
    const changes = made.map(({ field, value, saw }, at): Change => ({
      ...edit(ids[at]!, [...new Set([first.id, ...saw.filter((seen) => seen < at).map((seen) => ids[seen]!)])], value, field),
    }))
    const ends = await Promise.all([one, two].map(async (shuffle) => {
      const arriving = await openExample()
      await applyChanges(arriving, [first])
      const sent = [...changes, ...changes.filter((_change, at) => shuffle[at]! % 3 === 0)]
        .map((change, at) => ({ change, key: shuffle[at + 10] ?? 0 })).sort((a, b) => a.key - b.key).map(({ change }) => change)
      for (let from = 0; from < sent.length;) {
        const portion = 1 + (shuffle[from]! % 3)
        await applyChanges(arriving, sent.slice(from, from + portion))
        from += portion
      }
      const end = { bar: await recordOf(arriving, 'bar', 'bar1'), clashes: await clashesOf(arriving), rows: (await arriving.db.selectFrom('bar').selectAll().execute()).map((row) => ({ ...row, shop: '' })) }
      await arriving.close()
      return end
    }))
    expect(ends[0]).toEqual(ends[1])
    for (const field of fields) expect(ends[0]!.bar[field]).toBe(byTheRule([first, ...changes], field))
  }), { numRuns: exampleRuns(60) })
})

/** The rule in its plainest words: of the changes of a field that no other one saw, the greatest id. */
function byTheRule(changes: readonly Change[], field: string): unknown {
  const touching = changes.filter((change) => field in change.fields)
  const unseen = touching.filter((change) => !touching.some((other) => other.fields[field]!.saw.includes(change.id)))
  return unseen.sort((a, b) => (a.id < b.id ? 1 : -1))[0]!.fields[field]!.value
}

test('a whole record may come in any order within one call', async () => {
  const mates = firstChange('mates', 'm1', matesFields, km)
  const bar = firstChange('bar', 'bar1', barFields('ABCD2345', { matesId: 'm1' }), km)
  await applyChanges(store, [edit('e1', [bar.id], 'ok'), bar, mates])
  expect(await recordOf(store, 'bar', 'bar1')).toMatchObject({ note: 'ok', matesId: 'm1' })
})
