import { expect, test } from 'vitest'
import type { InstrumentFields } from '#model/instrument-record.ts'
import type { Units } from '#model/shop-record.ts'
import { sourceOf } from '#web/shop/instruments/book-figures.ts'
import { instrumentTexts, newInstrumentTexts, readInstrument, readUm } from '#web/shop/instruments/instrument-texts.ts'

const mm: Units = { length: 'mm', decimalMark: '.', words: 'US' }, inch: Units = { ...mm, length: 'in' }
const micrometer: InstrumentFields = {
  name: 'Micrometer 25', figures: { is: 'micrometer', resolutionUm: 1, limitUm: 4, repeatabilityUm: 0.123456, fromMm: 0, toMm: 25.00001 }, dueOn: '2027-03-31', retired: false, note: '',
}

test('an instrument opened and saved in another unit stays what it was', () => {
  const { retired: _retired, ...kept } = micrometer
  for (const units of [mm, inch]) expect(readInstrument(instrumentTexts(micrometer, units), micrometer, units)).toEqual({ values: kept })
})

test('a figure without a unit is in µm, one with a unit in that', () => {
  expect(readUm('2', 'limitUm')).toBe(2)
  expect(readUm('0,5', 'limitUm')).toBe(0.5)
  expect(readUm('.0001"', 'limitUm')).toBeCloseTo(2.54, 12)
  expect(readUm('2 µm', 'limitUm')).toBe(2)
  expect(() => readUm('-1', 'limitUm')).toThrow('size-not-positive')
})

test('what is missing is named at each field, and what belongs to another kind is not asked', () => {
  const refused = (texts: Parameters<typeof readInstrument>[0]) => { const read = readInstrument(texts, null, mm); return 'refused' in read ? Object.keys(read.refused).toSorted() : [] }
  expect(refused(newInstrumentTexts('micrometer'))).toEqual(['name', 'rangeFromMm', 'rangeToMm', 'resolutionUm'])
  expect(refused(newInstrumentTexts('plate'))).toEqual(['name'])
  expect(refused({ ...newInstrumentTexts('plate'), name: 'Plate', grade: 'DIN 876 0' })).toEqual(['lengthMm', 'widthMm'])
  expect(refused({ ...newInstrumentTexts('micrometer'), name: 'M', resolution: '1', from: '25', to: '25' })).toEqual(['rangeToMm'])
  expect(refused({ ...newInstrumentTexts('indicator'), name: 'I', resolution: '0' })).toEqual(['resolutionUm'])
})

// DIN 863: 4 µm up to 50 mm, 5 µm from there to 100 (fixtures/published/micrometer-din863.csv); dials JIS B 7503: 0.001 mm to 1 mm, 2 µm over a tenth of a turn.
test('a figure of a book names it, and any other is the shop’s own', () => {
  expect(sourceOf('micrometer', 'limitUm', { fromMm: 50, toMm: 75, limitUm: 5 })?.source).toBe('DIN-863')
  expect(sourceOf('micrometer', 'limitUm', { fromMm: 50, toMm: 75, limitUm: 4 })).toBeNull()
  expect(sourceOf('indicator', 'limitUm', { resolutionUm: 1, limitUm: 2 })).toEqual({ source: 'JIS-B-7503', standing: 'published' })
  expect(sourceOf('micrometer', 'repeatabilityUm', { resolutionUm: 1, repeatabilityUm: 1 })?.standing).toBe('common practice')
  expect(sourceOf('indicator', 'limitUm', { resolutionUm: 1, limitUm: null })).toBeNull()
})
