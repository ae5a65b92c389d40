import { expect, test } from 'vitest'
import { barFieldsSchema } from '#model/bar-record.ts'
import { changeSchema } from '#model/change.ts'
import { readAs } from '#model/read-as.ts'
import { Refusal } from '#model/refusal.ts'

const bar = {
  code: 'ABCD2345', name: '35 A', thicknessMm: 8, thicknessStanding: 'marked', lengthMm: 150, matesId: null, slotId: null, where: { at: 'slot' }, note: '',
}

const refusedBy = (raw: unknown, top = ''): [string, unknown] => {
  try { readAs(barFieldsSchema, raw, top) } catch (error) {
    if (error instanceof Refusal) return [error.code, error.facts.field]
    throw error
  }
  throw new Error('nothing was refused')
}

test('a right value comes back as it is', () => {
  expect(readAs(barFieldsSchema, bar)).toEqual(bar)
})

test('every kind of mistake names its field', () => {
  const { name: _name, ...nameless } = bar
  expect(refusedBy(nameless)).toEqual(['field-missing', 'name'])
  expect(refusedBy({ ...bar, colour: 'blue' })).toEqual(['unknown-key', 'colour'])
  expect(refusedBy({ ...bar, thicknessMm: '8' })).toEqual(['not-a-number', 'thicknessMm'])
  expect(refusedBy({ ...bar, thicknessMm: Number.NaN })).toEqual(['not-a-number', 'thicknessMm'])
  expect(refusedBy({ ...bar, thicknessMm: 0 })).toEqual(['size-not-positive', 'thicknessMm'])
  expect(refusedBy({ ...bar, thicknessMm: 1e308 })).toEqual(['too-large', 'thicknessMm'])
  expect(refusedBy({ ...bar, thicknessStanding: 'guessed' })).toEqual(['unknown-word', 'thicknessStanding'])
  expect(refusedBy({ ...bar, code: 'IO10' })).toEqual(['value-not-allowed', 'code'])
  expect(refusedBy({ ...bar, where: { at: 'moon' } })).toEqual(['unknown-word', 'where.at'])
  expect(refusedBy({ ...bar, where: { at: 'out' } }, 'changes[3]')).toEqual(['field-missing', 'changes[3].where.who'])
  expect(refusedBy([], 'changes[0]')[1]).toBe('changes[0]')
})

test('text is cut short and strange values are named, so that a refusal is always small JSON', () => {
  try { readAs(changeSchema, { id: 'x'.repeat(1000) }) } catch (error) {
    expect(JSON.stringify((error as Refusal).facts).length).toBeLessThan(300)
    return
  }
  throw new Error('nothing was refused')
})
