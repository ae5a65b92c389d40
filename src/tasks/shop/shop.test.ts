import { afterEach, beforeEach, expect, test } from 'vitest'
import { questionAt } from '#engine/rack/question-at.ts'
import { viseFrom } from '#engine/rack/vise-from.ts'
import { emptySetupForm } from '#engine/setup/form.ts'
import type { Change } from '#model/change.ts'
import { isCode } from '#model/code.ts'
import { editOf, firstChange } from '#model/record-fields.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import { applyChanges } from '#store/changes.ts'
import { setupFields, viseFields } from '#store/example-records.ts'
import { historyOf } from '#store/history.ts'
import { openExample } from '#store/example-store.ts'
import { recordOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'
import { type Maker, makerFor } from '#tasks/maker.ts'
import { addBars } from '#tasks/rack/add-bars.ts'
import { loadDemo } from '#tasks/shop/load-demo.ts'
import { snapshotOf } from '#tasks/shop/snapshot.ts'

let store: Store, by: Maker
beforeEach(async () => { store = await openExample(); by = makerFor('KM', 'bench') })
afterEach(() => store.close())

async function addVise(to: Store, fields = viseFields): Promise<ViseRecord> {
  const id = by.newId()
  await applyChanges(to, [firstChange('vise', id, fields, by)])
  return recordOf(to, 'vise', id)
}

test('a new shop has settings and nothing else', async () => {
  const { shop, ...rest } = await snapshotOf(store)
  expect(shop).toMatchObject({ id: 'shop', units: { length: 'mm', decimalMark: '.', words: 'US' }, demo: false })
  expect(Object.values(rest).every((list) => list.length === 0)).toBe(true)
})

test('a vise is added, gets another jaw set, and its history tells both', async () => {
  const vise = await addVise(store)
  const low = { ...viseFields.jawSets[0]!, id: 'low', name: 'cut down', fixedHeightMm: 44, movingHeightMm: 40 }
  await applyChanges(store, [editOf('vise', vise, { jawSets: [...viseFields.jawSets, low], fittedJawSetId: 'low' }, by)])
  // The cutter has to clear the higher jaw, the lower one limits the grip.
  expect(viseFrom(await recordOf(store, 'vise', vise.id))).toEqual({ jawHeightMm: 44, lowerJawHeightMm: 40, jawWidthMm: 125, openingMm: 150 })
  expect(viseFrom(vise)).toEqual({ jawHeightMm: 45, jawWidthMm: 125, openingMm: 150 })
  expect(await historyOf(store, 'vise', vise.id)).toHaveLength(2)
})

test('what no vise and no setup has is refused by field', async () => {
  await expect(addVise(store, { ...viseFields, openingMm: 0 })).rejects.toMatchObject({ code: 'size-not-positive', facts: { field: 'changes[0].fields.openingMm' } })
  await expect(addVise(store, { ...viseFields, jawSets: [] })).rejects.toMatchObject({ code: 'value-not-allowed' })
  const vise = await addVise(store), refused = (change: Change) => expect(applyChanges(store, [change])).rejects
  await refused(editOf('vise', vise, { fittedJawSetId: 'none' }, by)).toMatchObject({ code: 'jaw-set-not-known' })
  await refused(firstChange('setup', by.newId(), setupFields(vise.id, { bars: ['nobody'] }), by)).toMatchObject({ code: 'unknown-record', facts: { field: 'bars[0]', kind: 'bar' } })
})

test("units are the shop's, and what is typed without one is read in them", async () => {
  const { shop } = await snapshotOf(store)
  await applyChanges(store, [editOf('shop', shop, { units: { length: 'in', decimalMark: '.', words: 'US' } }, by)])
  expect(await addBars(store, { height: '.875', thickness: '1/4', length: '6' }, by)).toMatchObject([{ heightMm: 22.225, lengthMm: 152.4 }])
})

test("a question at a vise takes the shop's own limit for the use", async () => {
  const vise = await addVise(store), { shop } = await snapshotOf(store)
  const form = { ...emptySetupForm('mm'), height: '19' }
  expect(questionAt(vise, form, shop).wishes.matchUm).toBe(10)
  expect(questionAt(vise, { ...form, use: 'grinding' }, { limitsUm: { ...shop.limitsUm, grinding: 1.5 } }).wishes.matchUm).toBe(1.5)
  expect(questionAt(vise, { ...form, use: 'fine milling' }, shop).wishes.matchUm).toBe(5)
})

test('demo data comes into an empty shop alone, whole, the same every time', async () => {
  await loadDemo(store)
  const again = await openExample()
  await loadDemo(again)
  const [one, two] = [await snapshotOf(store), await snapshotOf(again)]
  const bare = ({ bars, slots, vises }: typeof one) => [bars, slots, vises].map((list) => list.map(({ saw: _saw, ...record }) => record))
  expect(bare(one)).toEqual(bare(two))
  expect([...one.bars, ...one.slots].every(({ code }) => isCode(code))).toBe(true)
  await again.close()

  const shop = await openExample()
  await addVise(shop)
  await expect(loadDemo(shop)).rejects.toMatchObject({ code: 'shop-not-empty' })
  expect((await snapshotOf(shop)).bars).toEqual([])
  await shop.close()
})

test('a shop in which somebody has said who they are is still empty', async () => {
  await applyChanges(store, [firstChange('person', 'me', { initials: 'KM', units: null }, by)])
  await loadDemo(store)
  expect((await snapshotOf(store)).people.map((person) => person.initials).sort((a, b) => (a < b ? -1 : 1))).toEqual(['JO', 'KM', 'TB'])
})

test('loading the demo keeps a name the shop already has', async () => {
  await applyChanges(store, [editOf('shop', (await snapshotOf(store)).shop, { name: 'Back room' }, by)])
  await loadDemo(store)
  expect((await snapshotOf(store)).shop).toMatchObject({ demo: true, name: 'Back room' })
})
