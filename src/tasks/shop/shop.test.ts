import { afterEach, beforeEach, expect, test } from 'vitest'
import { questionAt } from '#engine/rack/question-at.ts'
import { viseFrom } from '#engine/rack/vise-from.ts'
import { emptySetupForm } from '#engine/setup/form.ts'
import { isCode } from '#model/code.ts'
import { editOf, firstChange } from '#model/record-fields.ts'
import { applyChanges } from '#store/changes.ts'
import { setupFields, setupForm, viseFields } from '#store/example-records.ts'
import { historyOf } from '#store/history.ts'
import { openExample } from '#store/example-store.ts'
import { recordOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'
import { type Maker, makerFor } from '#tasks/maker.ts'
import { addBars } from '#tasks/rack/add-bars.ts'
import { loadDemo } from '#tasks/shop/load-demo.ts'
import { snapshotOf } from '#tasks/shop/snapshot.ts'
import { addVise, editVise, setUnits } from '#tasks/shop/vises.ts'
import { lastSetups, saveSetup } from '#tasks/setup/save-setup.ts'

let store: Store, by: Maker
beforeEach(async () => { store = await openExample(); by = makerFor('KM', 'bench') })
afterEach(() => store.close())

test('a new shop has settings and nothing else', async () => {
  const { shop, ...rest } = await snapshotOf(store)
  expect(shop).toMatchObject({ id: 'shop', units: { length: 'mm', decimalMark: '.', words: 'US' }, demo: false })
  expect(Object.values(rest).every((list) => list.length === 0)).toBe(true)
})

test('a vise is added, gets another jaw set, and its history tells both', async () => {
  const vise = await addVise(store, viseFields, by)
  const low = { ...viseFields.jawSets[0]!, id: 'low', name: 'cut down', fixedHeightMm: 44, movingHeightMm: 40 }
  await editVise(store, vise.id, { jawSets: [...viseFields.jawSets, low], fittedJawSetId: 'low' }, by)
  // The cutter has to clear the higher jaw, the lower one limits the grip.
  expect(viseFrom(await recordOf(store, 'vise', vise.id))).toEqual({ jawHeightMm: 44, lowerJawHeightMm: 40, jawWidthMm: 125, openingMm: 150 })
  expect(viseFrom(vise)).toEqual({ jawHeightMm: 45, jawWidthMm: 125, openingMm: 150 })
  expect(await historyOf(store, 'vise', vise.id)).toHaveLength(2)
})

test('what no vise has is refused by field', async () => {
  await expect(addVise(store, { ...viseFields, openingMm: 0 }, by)).rejects.toMatchObject({ code: 'size-not-positive', facts: { field: 'changes[0].fields.openingMm' } })
  await expect(addVise(store, { ...viseFields, jawSets: [] }, by)).rejects.toMatchObject({ code: 'value-not-allowed' })
  const vise = await addVise(store, viseFields, by)
  await expect(editVise(store, vise.id, { fittedJawSetId: 'none' }, by)).rejects.toMatchObject({ code: 'jaw-set-not-known' })
  await expect(editVise(store, 'nobody', { note: '' }, by)).rejects.toMatchObject({ code: 'unknown-record', facts: { field: 'vise', given: 'nobody' } })
})

test("units are the shop's, and what is typed without one is read in them", async () => {
  await setUnits(store, { length: 'in', decimalMark: '.', words: 'US' }, by)
  expect(await addBars(store, { height: '.875', thickness: '1/4', length: '6' }, by)).toMatchObject([{ heightMm: 22.225, lengthMm: 152.4 }])
})

test("a question at a vise takes the shop's own limit for the use", async () => {
  const vise = await addVise(store, viseFields, by), { shop } = await snapshotOf(store)
  const form = { ...emptySetupForm('mm'), height: '19' }
  expect(questionAt(vise, form, shop).wishes.matchUm).toBe(10)
  expect(questionAt(vise, { ...form, use: 'grinding' }, { limitsUm: { ...shop.limitsUm, grinding: 1.5 } }).wishes.matchUm).toBe(1.5)
  expect(questionAt(vise, { ...form, use: 'fine milling' }, shop).wishes.matchUm).toBe(5)
})

test('the last setups of a vise come latest first, at most five, and none that were put away', async () => {
  const vise = await addVise(store, viseFields, by), other = await addVise(store, { ...viseFields, name: 'Vise 2' }, by)
  for (const day of ['03', '01', '02', '06', '05', '04']) await saveSetup(store, setupFields(vise.id, { title: day, usedAtIso: `2025-03-${day}T08:00:00.000Z` }), by)
  await saveSetup(store, setupFields(vise.id, { title: 'away', retired: true, usedAtIso: '2025-03-09T08:00:00.000Z' }), by)
  await saveSetup(store, setupFields(other.id, { title: 'other' }), by)
  expect((await lastSetups(store, vise.id)).map((setup) => setup.title)).toEqual(['06', '05', '04', '03', '02'])
  expect((await lastSetups(store, vise.id, 1))[0]).toMatchObject({ form: setupForm, stand: 'on edge' })
  await expect(saveSetup(store, setupFields(vise.id, { bars: ['nobody'] }), by)).rejects.toMatchObject({ code: 'unknown-record', facts: { field: 'bars[0]', kind: 'bar' } })
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
  await addVise(shop, viseFields, by)
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
