import { readNumber, wordNumber } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'

/** An amount of the shop's own money, or null where nothing was typed. @throws Refusal of `readNumber`, `wish-negative` */
export function readAmount(text: string, field: string): number | null {
  if (text.trim() === '') return null
  const value = readNumber(text, field)
  if (value < 0) throw new Refusal('wish-negative', { field, given: value, needed: 0 })
  return value
}

/** The same that has to be above 0. @throws Refusal `size-not-positive` */
export function readAbove0(text: string, field: string): number | null {
  const value = readAmount(text, field)
  if (value === 0) throw new Refusal('size-not-positive', { field, given: value, needed: { above: 0 } })
  return value
}

export const amountText = (value: number | null, { decimalMark }: Units): string => (value === null ? '' : wordNumber(value, decimalMark, null, 4))
