import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { CheckForm } from '#model/check-draft.ts'
import { editOf, firstChange } from '#model/record-fields.ts'
import { shopAfter, type ShopNews } from '#model/shop-news.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { addEvents } from '#store/events.ts'
import { applyChanges } from '#store/changes.ts'
import { openStore } from '#store/open.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import { inTransaction, type Store } from '#store/store.ts'
import { type Maker, makerFor } from '#tasks/maker.ts'
import { exportShop, importShop } from '#tasks/shop/backup/shop-file.ts'
import { loadDemo } from '#tasks/shop/load-demo.ts'
import { newsOf } from '#tasks/shop/news.ts'
import { snapshotOf } from '#tasks/shop/snapshot.ts'

let store: Store, by: Maker, folder: string
beforeEach(async () => { folder = mkdtempSync(join(tmpdir(), 'twinrest-news-')); store = await openStore(folder); by = makerFor('KM', 'bench') })
afterEach(async () => { await store.close(); rmSync(folder, { recursive: true }) })

const checkForm: CheckForm = {
  method: 'compare', unit: 'mm', bars: [], stations: 3, places: [], lines: 1, repeats: 1, instrumentId: null, plateId: null, blocksId: null, zeroOn: 'block', zero: '35', zeroBar: null,
  closing: '', temperature: '', asFound: false, replaces: null, note: '',
}
const read = (text: string) => JSON.parse(text) as ShopNews
const wholeOf = (news: ShopNews): ShopSnapshot => { if ('whole' in news) return news.whole; throw new Error('not the whole') }

test('whoever follows the news, in whatever strides, has the shop as a fresh look at it', async () => {
  await loadDemo(store)
  const news = newsOf(store), bar = (await recordsOf(store, 'bar'))[0]!.id
  const acts: readonly ((n: number) => Promise<unknown>)[] = [
    async (n) => applyChanges(store, [editOf('shop', await recordOf(store, 'shop', 'shop'), { name: `Shop ${n}` }, by)]),
    async (n) => applyChanges(store, [firstChange('slot', by.newId(), { code: `2222${String(1000 + n).replaceAll(/[01]/g, 'Z')}`.slice(0, 8), name: `S${n}` }, by)]).catch(() => null),
    async () => addEvents(store, [{ id: by.newId(), bar, kind: 'knocked', undoes: null, note: '', person: 'KM', device: 'bench', atIso: '2020-01-01T00:00:00.000Z' }]),
    async () => applyChanges(store, [firstChange('draft', by.newId(), { form: checkForm, typed: {}, looks: {}, state: 'open', checkId: null }, by)]),
    async () => { const [draft] = (await recordsOf(store, 'draft')).filter(({ state }) => state === 'open'); if (draft) await applyChanges(store, [editOf('draft', draft, { state: 'dropped' }, by)]) },
    async () => inTransaction(store, async (tx) => { await applyChanges(tx, [editOf('shop', await recordOf(tx, 'shop', 'shop'), { name: 'never' }, by)]); throw new Error('taken back') }).catch(() => null),
  ]
  const first = read(await news.since('none'))
  const followers = [1, 2, 5].map((stride) => ({ stride, revision: first.revision, shop: wholeOf(first) }))
  await fc.assert(fc.asyncProperty(fc.array(fc.nat({ max: acts.length - 1 }), { maxLength: 5 }), fc.nat({ max: 9999 }), async (which, n) => {
    for (const [at, one] of which.entries()) {
      await acts[one]!(n + at)
      for (const follower of followers) {
        if (at % follower.stride !== 0) continue
        const heard = read(await news.since(follower.revision))
        expect('whole' in heard).toBe(false)
        Object.assign(follower, { revision: heard.revision, shop: shopAfter(follower.shop, heard) })
        expect(follower.shop).toEqual(JSON.parse(JSON.stringify(await snapshotOf(store))))
      }
    }
  }), { numRuns: 20 })
})

test('a shop that makes way for another is news as a whole, and so is what comes after', async () => {
  const other = await openStore(':memory:')
  await loadDemo(other)
  const file = await exportShop(other), news = newsOf(store), first = read(await news.since('none'))
  await other.close()
  await importShop(store, JSON.parse(JSON.stringify(file)))
  const heard = read(await news.since(first.revision)), shop = shopAfter(wholeOf(first), heard)
  expect(shop.bars.length).toBeGreaterThan(10)
  expect(shop).toEqual(JSON.parse(JSON.stringify(await snapshotOf(store))))
  await applyChanges(store, [editOf('bar', (await recordsOf(store, 'bar'))[3]!, { note: 'by the window' }, by)])
  const after = read(await news.since(heard.revision))
  expect(shopAfter(shop, after)).toEqual(JSON.parse(JSON.stringify(await snapshotOf(store))))
})

test('the whole told later lists everything as a fresh snapshot does', async () => {
  await loadDemo(store)
  const news = newsOf(store), bar = (await recordsOf(store, 'bar'))[0]!.id
  await news.since('none')
  for (const [id, atIso] of [['zz', '2001-01-01T00:00:00.000Z'], ['aa', '2001-01-01T00:00:00.000Z'], ['mm', '2031-01-01T00:00:00.000Z']] as const) await addEvents(store, [{ id, bar, kind: 'knocked', undoes: null, note: '', person: 'KM', device: 'bench', atIso }])
  await applyChanges(store, [firstChange('slot', '0-first', { code: '2222ZZZZ', name: 'S' }, by)])
  expect(wholeOf(read(await news.since('none')))).toEqual(JSON.parse(JSON.stringify(await snapshotOf(store))))
})

test('nothing new is little, and leaves what one has as it is; another run or nonsense gets the whole', async () => {
  await loadDemo(store)
  const news = newsOf(store), { revision, ...rest } = read(await news.since('none')), shop = wholeOf({ revision, ...rest } as ShopNews)
  const nothing = read(await news.since(revision))
  expect(nothing).toEqual({ revision, put: {}, gone: {} })
  expect(shopAfter(shop, nothing)).toEqual(shop)
  for (const other of ['', 'none', '__proto__', `${revision}0`, revision.replace(/^./, 'x')]) expect(wholeOf(read(await news.since(other)))).toEqual(shop)
  expect(await newsOf(store).since(revision)).not.toContain('"put"')
})

test('a write of another program into the same database is news, too', async () => {
  const news = newsOf(store), { revision } = read(await news.since('none')), other = await openStore(folder)
  await applyChanges(other, [editOf('shop', await recordOf(other, 'shop', 'shop'), { name: 'Back room' }, by)])
  await other.close()
  expect(await news.revision()).not.toBe(revision)
  expect(read(await news.since(revision))).toMatchObject({ put: { shop: { name: 'Back room' } }, gone: {} })
})

test('many who ask at once are answered out of one look', async () => {
  await loadDemo(store)
  const news = newsOf(store), answers = await Promise.all(Array.from({ length: 50 }, () => news.since('none')))
  expect(new Set(answers).size).toBe(1)
})
