import { expect, test } from 'vitest'
import type { Units } from '#model/shop-record.ts'
import type { ViseFields } from '#model/vise-record.ts'
import { newJawTexts, readVise, viseTexts, type ViseTexts } from '#web/shop/vise-texts.ts'

const mm: Units = { length: 'mm', decimalMark: '.', words: 'US' }, inch: Units = { ...mm, length: 'in' }
const typed: ViseTexts = {
  name: 'Front', jawWidth: '125', opening: '6"', note: '', fitted: 'j1',
  jawSets: [{ ...newJawTexts('j1', 'hard'), fixed: '45' }, { ...newJawTexts('j2', 'stepped'), fixed: '1 3/4', moving: '44,45', step: '40', face: 'serrated' }],
}

test('a moving jaw nobody gave is as high as the fixed one; a fraction is in inches', () => {
  expect(readVise(typed, null, mm)).toEqual({
    values: {
      name: 'Front', jawWidthMm: 125, openingMm: 152.4, note: '', fittedJawSetId: 'j1',
      jawSets: [
        { id: 'j1', name: 'hard', fixedHeightMm: 45, movingHeightMm: 45, stepHeightMm: null, face: 'smooth' },
        { id: 'j2', name: 'stepped', fixedHeightMm: 44.45, movingHeightMm: 44.45, stepHeightMm: 40, face: 'serrated' },
      ],
    },
  })
})

test('every field in the way is named by its place, once', () => {
  const read = readVise({ ...typed, name: '', opening: '0', jawSets: [newJawTexts('j1', '')] }, null, mm)
  expect('refused' in read ? Object.keys(read.refused).toSorted() : null).toEqual(['jawSets[0].fixedHeightMm', 'jawSets[0].name', 'name', 'openingMm'])
})

test('opened and saved in another unit nothing moves', () => {
  const vise: ViseFields = {
    name: 'Back', jawWidthMm: 100.0001, openingMm: 101.23456, note: '', retired: false, measured: null, fittedJawSetId: 'j1',
    jawSets: [{ id: 'j1', name: 'hard', fixedHeightMm: 41.00004, movingHeightMm: 41.00009, stepHeightMm: 38.11111, face: 'smooth' }],
  }
  const { retired: _retired, measured: _measured, ...kept } = vise
  expect(readVise(viseTexts(vise, inch), vise, inch)).toEqual({ values: kept })
})
