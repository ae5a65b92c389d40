import { readNumber, readSizeMm, wordLength } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import type { Condition } from '#model/stock-length.ts'
import type { StockForm, StockRecordFields } from '#model/stock-record.ts'
import { type Readers, readFields, readName, type Refused } from '#web/parts/read-fields.ts'
import { amountText, readAmount } from '#web/shop/shop-money.ts'

/** Raw material as typed. */
export type StockTexts = {
  readonly form: StockForm; readonly condition: Condition; readonly offcut: boolean
  readonly name: string; readonly steel: string; readonly length: string; readonly width: string; readonly thickness: string; readonly count: string; readonly price: string; readonly note: string
}

type Read = { name: string; steel: string; lengthMm: number; widthMm: number; thicknessMm: number; count: number | null; price: number | null }
export type StockWrong = Refused<Read>

export const newStockTexts = (form: StockForm): StockTexts => ({ form, condition: form === 'plate' ? 'annealed' : 'drawn', offcut: false, name: '', steel: '', length: '', width: '', thickness: '', count: '1', price: '', note: '' })

export function stockTexts({ form, condition, offcut, name, steel, lengthMm, widthMm, thicknessMm, count, price, note }: StockRecordFields, units: Units): StockTexts {
  const mm = (value: number) => wordLength(value, units)
  return { form, condition, offcut, name, steel, note, length: mm(lengthMm), width: mm(widthMm), thickness: mm(thicknessMm), count: amountText(count, units), price: amountText(price, units) }
}

/** The stock that was typed, or every refusal. A name left empty is made of steel and section. */
export function readStock(texts: StockTexts, units: Units): { readonly values: Omit<StockRecordFields, 'retired'> } | { readonly refused: StockWrong } {
  const size = (text: string, field: string) => readSizeMm(text, units.length, field)
  const readers: Readers<Read> = {
    name: () => texts.name.trim() || `${texts.steel} ${texts.width} × ${texts.thickness}`.slice(0, 60), steel: () => readName(texts.steel, 'steel'),
    lengthMm: () => size(texts.length, 'lengthMm'), widthMm: () => size(texts.width, 'widthMm'), thicknessMm: () => size(texts.thickness, 'thicknessMm'), count: () => readCount(texts.count), price: () => readAmount(texts.price, 'price'),
  }
  const read = readFields<Read>(readers)
  return 'refused' in read ? read : { values: { ...read.values, form: texts.form, condition: texts.condition, offcut: texts.offcut, note: texts.note } }
}

/** Empty: as many as are bought. @throws Refusal of `readNumber`, `value-not-allowed` */
function readCount(text: string): number | null {
  if (text.trim() === '') return null
  const count = readNumber(text, 'count')
  if (!Number.isInteger(count) || count < 0 || count > 10_000) throw new Refusal('value-not-allowed', { field: 'count', given: text.trim(), needed: 'a whole number from 0' })
  return count
}
