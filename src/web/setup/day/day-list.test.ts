import { expect, it } from 'vitest'
import { emptySetupForm } from '#engine/setup/form.ts'
import type { SetupRecord } from '#model/setup-record.ts'
import { rackHere } from '#web/setup/beside/rack-here.ts'
import { dayList } from '#web/setup/day/day-list.ts'
import { inventedShop } from '#web/setup/invented-shop.ts'

const shop = inventedShop([{ heightMm: 20, name: 'A' }, { heightMm: 30, name: 'B' }, { heightMm: 34, name: 'C' }]), { pairs } = rackHere(shop, { length: 'mm', decimalMark: '.', words: 'UK' })
const setup = (id: string, height: string, offTop: string, viseId = 'vise'): SetupRecord =>
  ({ id, saw: {}, title: id, operation: '', viseId, partId: null, form: { ...emptySetupForm('mm'), height, offTop, between: '50', along: '60' }, bars: [], stand: 'on edge', usedAtIso: '2026-03-04T05:06:07.000Z', retired: false })
const labels = (list: ReturnType<typeof dayList>) => list.list.pull.map(({ pair, serves }) => [pairs[pair]!.label, serves] as const)

// By hand, jaws 45 high, 10 of grip, 1 of air: 20 high with 3 off works from 29 to 35; 30 high with 3 off from 19 to 35.
it('takes the lowest pair that serves all operations', () => {
  const day = dayList(shop, [setup('one', '20', '3'), setup('two', '30', '3')], pairs)
  expect(day.list.one.map((p) => pairs[p]!.label)).toEqual(['30 B', '34 C'])
  expect(labels(day)).toEqual([['30 B', [0, 1]]])
  expect(day.many?.oneMm).toEqual({ lowMm: 29, highMm: 35 })
})

it('names what no pair serves, and a setup whose vise is gone, without dropping the rest', () => {
  const day = dayList(shop, [setup('too low', '12', '3'), setup('lost', '20', '3', 'gone'), setup('one', '20', '3')], pairs)
  expect(day.list.unserved).toEqual([0, 1])
  expect(day.operations[1]!.refused?.code).toBe('unknown-vise')
  expect(labels(day)).toEqual([['30 B', [2]]])
})
