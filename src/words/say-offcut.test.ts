import { expect, test } from 'vitest'
import { stockRecordSchema } from '#model/stock-record.ts'
import { sayOffcut } from '#words/say-offcut.ts'

test('an offcut is called after its stock, in as many letters as a name has, and its note says which job left it', () => {
  expect(sayOffcut('Plate 10', '')).toEqual({ name: 'Plate 10, rest', note: 'Left of Plate 10' })
  const { name, note } = sayOffcut('P'.repeat(60), 'Pair of 30')
  expect(stockRecordSchema.shape.name.safeParse(name).success).toBe(true)
  expect(note).toMatch(/^Left of P{60}, Pair of 30$/)
})
