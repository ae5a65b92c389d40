import { expect, it } from 'vitest'
import { emptySetupForm } from '#engine/setup/form.ts'
import type { SetupRecord } from '#model/setup-record.ts'
import { inventedShop } from '#web/setup/invented-shop.ts'
import { copySetup, openPart, openSetup } from '#web/setup/saved/open-setup.ts'
import { sayPart, setupLines } from '#web/setup/saved/say-setup.ts'
import { benchFrom } from '#web/setup/view/bench.ts'

const form = { ...emptySetupForm('in'), height: '7/8', offTop: '3,0 mm', between: '2', along: '3' }
const setup: SetupRecord = { id: 's1', saw: {}, title: 'Block', operation: 'face', viseId: 'v1', partId: 'p1', form, bars: ['a', 'b'], stand: 'on edge', usedAtIso: '2025-03-04T05:06:07.000Z', retired: false }

it('opens as it was left, looking at the bars that were taken', () => {
  expect(openSetup(setup)).toMatchObject({ viseId: 'v1', form, chosen: 'on edge:a,b', title: 'Block', operation: 'face', setupId: 's1', partId: 'p1', drawer: null, typing: null })
  expect(openSetup({ ...setup, bars: [] }).chosen).toBeNull()
})

it('is copied as a new one, and a part is asked of the vise looked at', () => {
  expect(copySetup(setup)).toMatchObject({ title: 'Block, copy', setupId: null, form })
  expect(copySetup({ ...setup, title: 'x'.repeat(80) }).title).toHaveLength(80)
  expect(openPart({ id: 'p1', saw: {}, name: 'Block', note: '', form, retired: false }, 'v2')).toMatchObject({ viseId: 'v2', title: 'Block', partId: 'p1', setupId: null, chosen: null })
})

it('is said in two lines: what it is called, then its part and its bars', () => {
  const bench = benchFrom(inventedShop([{ heightMm: 35, name: 'C' }]), 'vise')!, units = { length: 'mm', decimalMark: '.', words: 'US' } as const
  const kept = { ...setup, bars: ['35-C-1', '35-C-2'] }
  expect(setupLines(kept, bench, units)).toEqual(['Block, face', '2 × 3 × 7/8; 3,0 mm off the top · 35 C'])
  expect(setupLines({ ...kept, title: '', operation: '' }, bench, units)).toEqual(['2 × 3 × 7/8; 3,0 mm off the top', '35 C'])
  expect(sayPart({ ...emptySetupForm('mm'), shape: 'round', height: '25', along: '80' })).toBe('⌀ 25 × 80')
})
