// Which uses want the plate is common practice, no source.
import { expect, test } from 'vitest'
import { emptySetupForm } from '#engine/setup/form.ts'
import type { Use } from '#model/wishes.ts'
import { inventedShop } from '#web/setup/invented-shop.ts'
import { benchFrom } from '#web/setup/view/bench.ts'
import { viewFrom } from '#web/setup/view/view-from.ts'
import { pointsOf } from '#web/setup/answer/say-points.ts'

const bench = benchFrom(inventedShop([{ heightMm: 35, name: 'C', measuredUm: [0, 1] }]), 'vise')!
const points = (use: Use, provedOf = bench.provedOf) => {
  const { answered } = viewFrom({ ...emptySetupForm('mm'), height: '19', offTop: '6', use }, bench, null)
  return pointsOf(answered!, use, { provedOf }).filter(({ code }) => code === 'plate-check-wanted')
}

test('a pair read by micrometer alone wants the plate before grinding, and nothing for milling', () => {
  expect(points('grinding')).toEqual([{ code: 'plate-check-wanted', facts: { bars: ['35-C-1', '35-C-2'], use: 'grinding' } }])
  expect([points('milling'), points('grinding', () => ['grinding'])]).toEqual([[], []])
})

test('what is wanted changes no choice and no order', () => {
  const answers = (['milling', 'fine milling'] as const).map((use) => viewFrom({ ...emptySetupForm('mm'), height: '19', offTop: '6', use }, bench, null).answered!.answer.choices.map(({ bars }) => bars))
  expect(answers[0]).toEqual(answers[1])
})
