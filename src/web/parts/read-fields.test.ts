import { readSizeMm } from '#model/length.ts'
import { expect, test } from 'vitest'
import { readFields, readName } from '#web/parts/read-fields.ts'

test('all values come back together', () => {
  expect(readFields({ height: () => readSizeMm('1 3/8', 'mm', 'height'), name: () => readName(' C ', 'name') })).toEqual({ values: { height: 34.925, name: 'C' } })
})

test('every field that cannot be read is named, not only the first', () => {
  const read = readFields({ height: () => readSizeMm('', 'mm', 'height'), length: () => readSizeMm('0', 'mm', 'length'), name: () => readName(' ', 'name') })
  if (!('refused' in read)) throw new Error('nothing was refused')
  expect(Object.entries(read.refused).map(([name, refusal]) => [name, refusal!.code])).toEqual([
    ['height', 'field-missing'], ['length', 'size-not-positive'], ['name', 'field-missing'],
  ])
})

test('a mistake of ours is not taken for one of the person', () => {
  expect(() => readFields({ height: () => { throw new TypeError('ours') } })).toThrow(TypeError)
})
