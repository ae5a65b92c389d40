import { expect, test } from 'vitest'
import type { Units } from '#model/shop-record.ts'
import { sayViseCard, type ViseCardFacts } from '#words/say-vise-card.ts'

const mm: Units = { length: 'mm', decimalMark: '.', words: 'UK' }, inch: Units = { length: 'in', decimalMark: '.', words: 'US' }
const card = (rows: ViseCardFacts['rows']): ViseCardFacts =>
  ({ vise: { name: 'Front' }, jaws: 'hard', jawHeightMm: 45, openingMm: 125, shop: { name: '' }, airMm: 1, bedAirMm: 1, runThroughMm: 1.5, rows })
const day = '4 March 2025', row = { name: 'C', calledMm: 35, slot: 'B4', worksFromMm: 11, gripMm: 10, largestDrillMm: 17.04 }

test('heights are rounded up, grips and drills down', () => {
  const [said] = sayViseCard(card([{ ...row, worksFromMm: 11.02, gripMm: 9.98 }]), day, mm).rows
  expect(said).toEqual({ pair: '35 C', slot: 'B4', from: '11.1', grip: '9.9', drill: 'Ø17' })
})

test('what is exact stays as it is, and what is so to a hundredth', () => {
  expect(sayViseCard(card([row]), day, mm).rows[0]).toMatchObject({ from: '11', grip: '10' })
  expect(sayViseCard(card([{ ...row, worksFromMm: 11.002, gripMm: 9.998 }]), day, mm).rows[0]).toMatchObject({ from: '11', grip: '10' })
})

test('an inch shop reads decimals and drills by 64ths', () => {
  // 17.04 mm = 0.67087 in, 42.9 sixty-fourths: 21/32 is the next below. 11 mm = 0.4331 in, 10 mm = 0.3937 in (25.4 mm to the inch, exact).
  expect(sayViseCard(card([row]), day, inch).rows[0]).toMatchObject({ from: '0.435', grip: '0.39', drill: 'Ø21/32' })
})

test('no drill, no slot and a drill beyond any part are said', () => {
  const rows = sayViseCard(card([{ ...row, slot: null, worksFromMm: -1, largestDrillMm: null }, { ...row, largestDrillMm: 130 }]), day, mm).rows
  expect(rows[0]).toMatchObject({ slot: '–', from: 'any', drill: '–' })
  expect(rows[1]!.drill).toBe('any')
})

test('the shop’s word for a vise, and what was not computed, stand on it', () => {
  const { description, notes } = sayViseCard(card([row]), day, mm)
  expect(description).toContain('vice')
  expect(notes.join(' ')).toContain('Not computed: holding force')
  expect(notes.join(' ')).toContain('handle off the vice')
})
