import { describe, expect, test } from 'vitest'
import { plainUnits } from '#words/terms.ts'
import { machineTexts, newMachineTexts, readMachine } from '#web/shop/machines/machine-texts.ts'
import { newStockTexts, readStock, stockTexts } from '#web/shop/stock/stock-texts.ts'

const commas = { ...plainUnits, decimalMark: ',' } as const

describe('a machine as typed', () => {
  test('a mill with a gearbox comes back as it was typed, its speeds rising', () => {
    const texts = { ...newMachineTexts, name: 'Knee mill', perHour: '27,5', longest: '600', speeds: '1600 400 800', power: '2,2', hardMilling: true }, read = readMachine(texts, null, commas)
    expect(read).toMatchObject({ values: { kind: 'mill', perHour: 27.5, longestMm: 600, kerfMm: null, hardMilling: true, spindle: { speedsRpm: [400, 800, 1600], powerKw: 2.2, leastRpm: null, efficiency: null } } })
    if ('values' in read) expect(machineTexts({ ...read.values, retired: false }, commas)).toMatchObject({ perHour: '27,5', speeds: '400 800 1600', power: '2,2' })
  })

  test('what belongs to another kind does not count, and what cannot be is refused by its field', () => {
    expect(readMachine({ ...newMachineTexts, kind: 'saw', name: 'Saw', kerf: '1.5', mostRpm: 'fast', hardMilling: true }, null, plainUnits)).toMatchObject({ values: { kerfMm: 1.5, hardMilling: false, spindle: null } })
    const refused = readMachine({ ...newMachineTexts, perHour: '-3', speeds: '0 400' }, null, plainUnits)
    expect(refused).toMatchObject({ refused: { name: { code: 'field-missing' }, perHour: { code: 'wish-negative' }, speedsRpm: { code: 'size-not-positive' } } })
  })
})

describe('stock as typed', () => {
  test('comes back as it was typed, named by steel and section where nobody named it', () => {
    const read = readStock({ ...newStockTexts('plate'), steel: '1.2842', length: '1000', width: '260', thickness: '4', price: '118', count: '' }, plainUnits)
    expect(read).toMatchObject({ values: { name: '1.2842 260 × 4', form: 'plate', count: null, price: 118, lengthMm: 1000 } })
    if ('values' in read) expect(stockTexts({ ...read.values, retired: false }, plainUnits)).toMatchObject({ length: '1000', count: '', price: '118' })
  })

  test('pieces are counted whole', () => {
    expect(readStock({ ...newStockTexts('length'), steel: 'C45', length: '3000', width: '30', thickness: '10', count: '1.5' }, plainUnits)).toMatchObject({ refused: { count: { code: 'value-not-allowed', facts: { field: 'count' } } } })
  })
})
