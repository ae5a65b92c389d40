import { afterEach, beforeEach, expect, test } from 'vitest'
import { firstChange } from '#model/record-fields.ts'
import { applyChanges } from '#store/changes.ts'
import { addEvents, eventsOf } from '#store/events.ts'
import { barFields, byFrom, event } from '#store/example-records.ts'
import { openExample } from '#store/example-store.ts'
import type { Store } from '#store/store.ts'

let store: Store
beforeEach(async () => {
  store = await openExample()
  const by = byFrom('KM')
  await applyChanges(store, [firstChange('bar', 'left', barFields('ABCD2345'), by), firstChange('bar', 'right', barFields('ABCD2346'), by)])
})
afterEach(() => store.close())

test('events come back in the order of time, then of ids; sent again they change nothing', async () => {
  const later = event('e0', 'left', 'undone', { undoes: 'e2', atIso: '2025-03-05T08:00:00.000Z' })
  const all = [event('e2', 'left', 'gone'), event('e1', 'left', 'added'), later, event('e3', 'right', 'added')]
  await addEvents(store, all)
  await addEvents(store, all)
  expect((await eventsOf(store)).map((one) => one.id)).toEqual(['e1', 'e2', 'e3', 'e0'])
  expect(await eventsOf(store, 'left')).toEqual([all[1], all[0], later])
})

test('an event that cannot be kept is refused, and none of those sent with it is kept', async () => {
  const refused = (one: ReturnType<typeof event>) => expect(addEvents(store, [event('ok', 'left', 'added'), one])).rejects
  await refused(event('e9', 'nobody', 'gone')).toMatchObject({ code: 'bar-not-known', facts: { field: 'bar', given: 'nobody' } })
  await refused(event('ok', 'left', 'gone')).toMatchObject({ code: 'id-used-twice' })
  await refused(event('e9', 'left', 'undone', { undoes: 'none' })).toMatchObject({ code: 'event-not-known', facts: { field: 'undoes', given: 'none' } })
  await refused(event('e9', 'left', 'undone')).toMatchObject({ code: 'event-not-known' })
  await refused(event('e9', 'right', 'undone', { undoes: 'ok' })).toMatchObject({ code: 'event-not-known' })
  await refused(event('e9', 'left', 'undone', { undoes: 'e9' })).toMatchObject({ code: 'event-not-known' })
  await refused(event('e9', 'left', 'gone', { undoes: 'ok' })).toMatchObject({ code: 'value-not-allowed', facts: { field: 'undoes' } })
  expect(await eventsOf(store)).toEqual([])
  await addEvents(store, [event('ok', 'left', 'added')])
  expect(await eventsOf(store)).toHaveLength(1)
})
