import { readdirSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import type { Hono } from 'hono'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Change } from '#model/change.ts'
import { editOf } from '#model/record-fields.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { createApp } from '#server/app.ts'
import { applyChanges, clashesOf } from '#store/changes.ts'
import { byFrom } from '#store/example-records.ts'
import { openStore } from '#store/open.ts'
import { recordOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'
import { toldOf } from '#store/told.ts'
import { unservedOf } from '#store/unserved.ts'

const folder = resolve(import.meta.dirname, '../../fixtures/outbox'), released = readdirSync(folder).filter((name) => name.endsWith('.json'))

type Entry = { readonly door: string; readonly body: unknown }
const outboxIn = (name: string) => JSON.parse(readFileSync(join(folder, name), 'utf8')) as readonly Entry[]

let store: Store, app: Hono
beforeEach(async () => { store = await openStore(':memory:'); app = createApp(store, { webFolder: '/nowhere', log: () => {} }) })
afterEach(() => store.close())

async function send({ door, body }: Entry): Promise<unknown> {
  const answer = await app.request(`http://127.0.0.1:4173/api/${door}`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) })
  const said = await answer.json() as unknown
  expect([answer.status, door, said]).toEqual([200, door, said])
  return said
}
const shopNow = async () => (await app.request('http://127.0.0.1:4173/api/shop')).json() as Promise<ShopSnapshot>

test('there is an outbox of the first program', () => {
  expect(released).toContain('schema-1.json')
})

test.each(released)('%s is taken as a whole, says what it said, and sent again changes nothing', async (name) => {
  const entries = outboxIn(name)
  const answers = []
  for (const entry of entries) answers.push(await send(entry))
  const shop = await shopNow()
  expect(shop).toMatchObject({
    shop: { name: 'Back room' }, slots: [{ id: 'o-slot', code: 'ABCD2346', name: 'B4' }], mates: [{ id: 'o-mates' }], vises: [{ id: 'o-vise', measured: null }], parts: [{ id: 'o-part' }],
    bars: [{ id: 'o-bar-0', code: 'ABCD2347', note: 'stoned', matesId: 'o-mates', slotId: 'o-slot' }, { id: 'o-bar-1', note: '' }],
    setups: [{ id: 'o-setup', viseId: 'o-vise', partId: 'o-part', bars: ['o-bar-0', 'o-bar-1'] }],
  })
  expect(shop.checks.filter(({ method }) => method === 'micrometer').map(({ id, replaces, readings }) => [id, replaces, readings[0]!.heightMm])).toEqual([['o-check', null, 35.002], ['o-check-2', 'o-check', 35.003]])
  expect(shop.events.filter(({ bar }) => bar === 'o-bar-1').map(({ kind }) => kind).sort()).toEqual(['added', 'knocked', 'looked over', 'undone'])
  expect(await toldOf(store, 'setupId', 'o-setup')).toMatchObject([{ what: 'setup sheet', data: { seatMm: 35 } }])
  expect(await unservedOf(store)).toMatchObject([{ id: 'o-unserved', lowMm: 49 }])
  for (const [at, entry] of entries.entries()) if (entry.door !== 'unserved') expect(await send(entry)).toEqual(answers[at])
  expect(await shopNow()).toEqual(shop)
})

test.each(released)('%s beside a new program: an edit that did not see the other is a clash both are shown, other fields are no matter', async (name) => {
  const entries = outboxIn(name), isEdit = ({ door, body }: Entry) => door === 'deeds' && (body as { changes: Change[] }).changes[0]?.id === 'o-edit'
  for (const entry of entries.filter((one) => !isEdit(one))) await send(entry)
  const by = byFrom('JO', 'new-tablet')
  await applyChanges(store, [editOf('bar', await recordOf(store, 'bar', 'o-bar-0'), { note: 'lent', name: '35 A' }, by)])
  await applyChanges(store, [editOf('vise', await recordOf(store, 'vise', 'o-vise'), { openingMm: 140 }, by)])
  await send(entries.find(isEdit)!)
  expect((await clashesOf(store)).map(({ record, field, stands, aside }) => [record, field, new Set([stands.value, aside.value])])).toEqual([['o-bar-0', 'note', new Set(['lent', 'stoned'])]])
  expect(await recordOf(store, 'bar', 'o-bar-0')).toMatchObject({ name: '35 A' })
  expect(await recordOf(store, 'vise', 'o-vise')).toMatchObject({ openingMm: 140 })
})
