import { afterEach, beforeEach, expect, test } from 'vitest'
import { onTheFirstLine } from '#model/plain-check.ts'
import { firstChange } from '#model/record-fields.ts'
import { applyChanges } from '#store/changes.ts'
import { addChecks, checksOf } from '#store/checks.ts'
import { barFields, byFrom, stated } from '#store/example-records.ts'
import { openExample } from '#store/example-store.ts'
import type { Store } from '#store/store.ts'

let store: Store
beforeEach(async () => {
  store = await openExample()
  const by = byFrom('KM')
  await applyChanges(store, [firstChange('bar', 'left', barFields('ABCD2345'), by), firstChange('bar', 'right', barFields('ABCD2346'), by)])
})
afterEach(() => store.close())

const measured = stated('c2', 'left', 35.002, {
  method: 'micrometer', atIso: '2025-03-05T08:00:00.000Z',
  readings: [{ bar: 'left', station: 0, xMm: 10, ...onTheFirstLine, text: '35,002', heightMm: 35.002 }, { bar: 'right', station: 0, xMm: null, ...onTheFirstLine, text: '35,003', heightMm: 35.003 }],
})

test('a check comes back as typed, in the order of its readings; sent again it changes nothing', async () => {
  await addChecks(store, [measured])
  await addChecks(store, [measured])
  await addChecks(store, [stated('c1', 'left', 35)])
  expect(await checksOf(store)).toEqual([stated('c1', 'left', 35), measured])
  expect((await checksOf(store, 'right')).map((check) => check.id)).toEqual(['c2'])
  expect(await checksOf(store, 'nobody')).toEqual([])
})

test('a look at a bar belongs to its history as a reading does', async () => {
  const rocked = stated('c3', 'left', 35, { method: 'rock', readings: [], looks: [{ bar: 'right', wiped: true, stoned: true, rock: 'rocks', feelerText: '0,02', feelerUm: 20, seen: ['bent'] }] })
  await addChecks(store, [rocked])
  expect(await checksOf(store, 'right')).toEqual([rocked])
  expect(await checksOf(store, 'left')).toEqual([])
})

test('a check that cannot be kept is refused, and none of those sent with it is kept', async () => {
  const refused = (check: typeof measured) => expect(addChecks(store, [stated('ok', 'left', 35), check])).rejects
  await refused(stated('c9', 'nobody', 35)).toMatchObject({ code: 'bar-not-known', facts: { field: 'readings[0].bar', given: 'nobody' } })
  await refused(stated('ok', 'left', 36)).toMatchObject({ code: 'id-used-twice', facts: { given: 'ok' } })
  await refused(stated('c9', 'left', 35, { replaces: 'none' })).toMatchObject({ code: 'check-not-known', facts: { field: 'replaces', given: 'none' } })
  await refused(stated('c9', 'left', 35, { replaces: 'c9' })).toMatchObject({ code: 'check-not-known' })
  expect(await checksOf(store)).toEqual([])
})

test('a correction keeps a height for every bar of the check it replaces', async () => {
  await addChecks(store, [measured])
  await expect(addChecks(store, [stated('c3', 'left', 35.001, { replaces: 'c2' })])).rejects
    .toMatchObject({ code: 'bar-left-out', facts: { given: 'c2', needed: 'right' } })
  await addChecks(store, [{ ...measured, id: 'c3', replaces: 'c2' }])
  expect(await checksOf(store)).toHaveLength(2)
})
