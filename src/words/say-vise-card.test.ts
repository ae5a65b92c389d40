import { expect, test } from 'vitest'
import type { Units } from '#model/shop-record.ts'
import { sayViseCard, type ViseCardFacts } from '#words/say-vise-card.ts'

const mm: Units = { length: 'mm', decimalMark: '.', words: 'UK' }, inch: Units = { length: 'in', decimalMark: '.', words: 'US' }
const card = (rows: ViseCardFacts['rows']): ViseCardFacts =>
  ({ vise: 'Front', jaws: 'hard', jawHeightMm: 45, openingMm: 125, shop: '', day: '4 March 2025', airMm: 1, bedAirMm: 1, runThroughMm: 1.5, rows })
const row = { name: '35 C', slot: 'B4', worksFromMm: 11, gripMm: 10, largestDrillMm: 17.04 }

test('heights are rounded up, grips and drills down', () => {
  const [said] = sayViseCard(card([{ ...row, worksFromMm: 11.02, gripMm: 9.98 }]), mm).rows
  expect(said).toEqual({ pair: '35 C', slot: 'B4', from: '11.1', grip: '9.9', drill: 'Ø17' })
})

test('what is exact stays as it is', () => {
  expect(sayViseCard(card([row]), mm).rows[0]).toMatchObject({ from: '11', grip: '10' })
})

test('an inch shop reads decimals and drills by 64ths', () => {
  // 17.04 mm = 0.67087 in, 42.9 sixty-fourths: 21/32 is the next below. 11 mm = 0.4331 in, 10 mm = 0.3937 in (25.4 mm to the inch, exact).
  expect(sayViseCard(card([row]), inch).rows[0]).toMatchObject({ from: '0.435', grip: '0.39', drill: 'Ø21/32' })
})

test('no drill, no slot and a drill beyond any part are said', () => {
  const rows = sayViseCard(card([{ ...row, slot: null, worksFromMm: -1, largestDrillMm: null }, { ...row, largestDrillMm: 130 }]), mm).rows
  expect(rows[0]).toMatchObject({ slot: '–', from: 'any', drill: '–' })
  expect(rows[1]!.drill).toBe('any')
})

test('the shop’s word for a vise, and what was not computed, stand on it', () => {
  const { description, notes } = sayViseCard(card([row]), mm)
  expect(description).toContain('vice')
  expect(notes.join(' ')).toContain('Not computed: holding force')
  expect(notes.join(' ')).toContain('handle off the vice')
})
