import { afterAll, beforeAll, expect, test } from 'vitest'
import { readDraft } from '#engine/inspect/read-draft.ts'
import { inspectFactsFrom } from '#engine/inspect/inspect-facts.ts'
import { inspectTables } from '#reference/inspect-tables.ts'
import { openExample } from '#store/example-store.ts'
import type { Store } from '#store/store.ts'
import { checkOfShop } from '#tasks/inspect/check-of-shop.ts'
import { loadDemo } from '#tasks/shop/load-demo.ts'
import { snapshotOf } from '#tasks/shop/snapshot.ts'

let store: Store
beforeAll(async () => {
  store = await openExample()
  await loadDemo(store)
})
afterAll(() => store.close())

const checkOf = async (bar: string) => {
  const latest = (await snapshotOf(store)).checks.filter(({ readings }) => readings.some((reading) => reading.bar === bar)).at(-1)!
  return (await checkOfShop(store, latest.id)).checked
}
const codes = async (bar: string) => (await checkOf(bar)).findings.map(({ code }) => code)
const proved = async (bar: string) => { const { bars: [first], pairUses } = await checkOf(bar); return (pairUses.length > 0 ? pairUses : first!.uses).flatMap(({ use, verdict }) => (verdict === 'proved' ? [use] : [])) }

test('the demo has a pair that the plate proves for fine milling, and says what grinding would want', async () => {
  expect(await proved('demo-K-1')).toEqual(['drilling', 'milling', 'fine milling'])
  expect(await codes('demo-K-1')).toEqual(['instrument-too-coarse'])
})

test('a warm day and a zero that moved, a micrometer past its day', async () => {
  expect(await codes('demo-F-1')).toEqual(expect.arrayContaining(['zero-drifted', 'temperature-away']))
  expect(await codes('demo-D-1')).toContain('tool-overdue')
  expect(await codes('demo-H-1')).not.toContain('tool-overdue')
})

test('a half-done check that anybody can go on with', async () => {
  const shop = await snapshotOf(store), [draft] = shop.drafts
  const { cells, answer } = readDraft(draft!, inspectFactsFrom(shop, '2026-03-04', inspectTables))
  expect(cells.map(({ um }) => um)).toEqual([-4, -4, -5, -5, -6, -1, 0, null, null, null])
  expect(answer!.bars.map(({ shape }) => shape?.parallelismUm)).toEqual([2, 1])
})
