import { expect, it } from 'vitest'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { inventedShop } from '#web/setup/invented-shop.ts'
import { rackHere } from '#web/setup/beside/rack-here.ts'
import { lockRow } from '#web/setup/row/lock-row.ts'
import { measuredPairs } from '#web/setup/row/row-pairs.ts'
import { newState } from '#web/setup/state/setup-state.ts'

const units = { length: 'mm', decimalMark: '.', words: 'UK' } as const
const one = inventedShop([{ heightMm: 30, name: 'A', measuredUm: [1, 2] }, { heightMm: 30, name: 'B', measuredUm: [-2, -1] }, { heightMm: 30, name: 'C' }, { heightMm: 35, name: 'D', measuredUm: [0, 0] }])
const shop: ShopSnapshot = { ...one, vises: [...one.vises, { ...one.vises[0]!, id: 'second', name: 'Mill 2' }] }
const at = { atIso: '2026-03-04T05:06:07.000Z', newId: (() => { let made = 0; return () => `new${(made += 1)}` })() }
const places = [{ viseId: 'vise', bars: ['30-A-1', '30-A-2'] }, { viseId: 'second', bars: ['30-B-1', '30-B-2'] }]
const withWhere = (bar: string, viseId: string): ShopSnapshot => ({ ...shop, bars: shop.bars.map((record) => (record.id === bar ? { ...record, where: { at: 'vise', viseId } } : record)) })

it('offers measured pairs by height, and says how many were never measured', () => {
  const { classes, notMeasured } = measuredPairs(shop, rackHere(shop, units).pairs)
  expect(classes.map(({ pairs }) => pairs.map(({ label }) => label))).toEqual([['30 B', '30 A'], ['35 D']])
  expect(classes[0]!.pairs[1]!.matchUm).toBeCloseTo(1, 6)
  expect(notMeasured).toBe(1)
})

it('offers no bar that is signed out', () => {
  const out: ShopSnapshot = { ...shop, bars: shop.bars.map((bar) => (bar.id === '30-A-1' ? { ...bar, where: { at: 'out', who: 'KM' } } : bar)) }
  expect(measuredPairs(out, rackHere(out, units).pairs).classes.flatMap(({ pairs }) => pairs.map(({ label }) => label))).toEqual(['30 B', '35 D'])
})

it('puts each pair into its vise, sends back what stood there, and takes all of it back', () => {
  const before = withWhere('35-D-1', 'vise'), { edits, undo, setupIds } = lockRow(before, { state: newState('mm'), places, ...at })
  expect(setupIds).toEqual([])
  const moved = new Map(edits.map(({ record, fields }) => [record, fields]))
  expect(moved.get('30-B-2')).toEqual({ where: { at: 'vise', viseId: 'second' } })
  expect(moved.get('35-D-1')).toEqual({ where: { at: 'slot' } })
  expect(edits).toHaveLength(5)
  expect(undo.find(({ record }) => record === '35-D-1')?.fields).toEqual({ where: { at: 'vise', viseId: 'vise' } })
})

it('writes each bar once where two vises exchange their pairs, and keeps the setup for each', () => {
  const state = { ...newState('mm'), form: { ...newState('mm').form, height: '20' } }
  const { edits, setupIds } = lockRow(withWhere('30-A-1', 'second'), { state, places, ...at })
  const bars = edits.filter(({ kind }) => kind === 'bar').map(({ record }) => record)
  expect(new Set(bars).size).toBe(bars.length)
  expect(edits.filter(({ kind }) => kind === 'setup').map(({ fields }) => ('viseId' in fields ? fields.viseId : null))).toEqual(['vise', 'second'])
  expect(setupIds).toHaveLength(2)
})
