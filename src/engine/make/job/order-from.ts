import type { OrderForm } from '#model/job-record.ts'
import { type LengthUnit, readLengthMm, readNumber } from '#model/length.ts'
import type { HeightsWanted, LengthWanted, OrderWanted } from '#model/order.ts'
import { Refusal } from '#model/refusal.ts'

/**
 * The order that a form asks for, its texts read in the form's unit.
 *
 * @throws Refusal of `readLengthMm` and `readNumber`, `value-not-allowed` (counts); `field` is the path on the form
 */
export function orderFrom(form: OrderForm): OrderWanted {
  const { unit, use, due } = form
  return {
    heights: heightsFrom(form), length: lengthFrom(form), thicknessMm: readLengthMm(form.thickness, unit, 'thickness'),
    pairs: countFrom(form.pairs, 'pairs'), vises: countFrom(form.vises, 'vises'), use, hrc: form.hrc.trim() === '' ? null : readNumber(form.hrc, 'hrc'), dueDay: due,
  }
}

/** Where a size of the order stands on the form. */
export function orderFieldOf(path: string): string {
  return fields[path] ?? (path.startsWith('heights.heightsMm') ? 'heights' : path.replace(/^order\./, ''))
}

const fields: { readonly [path: string]: string } = {
  'heights.fromMm': 'from', 'heights.toMm': 'to', 'heights.stepMm': 'step', 'heights.jawHeightMm': 'jawHeight', 'heights.belowMm': 'below', 'heights.lowestMm': 'lowest',
  'length.lengthMm': 'length', 'length.jawWidthMm': 'jawWidth', 'length.underMm': 'under', 'thicknessMm': 'thickness', 'dueDay': 'due',
}

function heightsFrom(form: OrderForm): HeightsWanted {
  const { unit } = form, size = (field: 'from' | 'to' | 'step' | 'jawHeight' | 'below' | 'lowest') => readLengthMm(form[field], unit, field)
  switch (form.heightsBy) {
    case 'list': return { by: 'list', heightsMm: heightTexts(form.heights, unit).map((text) => readLengthMm(text, unit, 'heights')) }
    case 'ladder': return { by: 'ladder', fromMm: size('from'), toMm: size('to'), stepMm: size('step') }
    case 'jaw': return { by: 'jaw', jawHeightMm: size('jawHeight'), belowMm: size('below'), stepMm: size('step'), lowestMm: size('lowest') }
  }
}

/** Several heights in one line: `12; 14`, `12, 14`; in millimetres also `12 14`. A comma without a space after it is a decimal mark. */
function heightTexts(text: string, unit: LengthUnit): readonly string[] {
  const between = unit === 'mm' ? /\s*;\s*|,\s+|\s+(?=[\d.,])/ : /\s*;\s*|,\s+/
  const texts = text.split(between).map((one) => one.trim()).filter((one) => one !== '')
  return texts.length === 0 ? [''] : texts
}

const lengthFrom = ({ lengthBy, length, jawWidth, under, unit }: OrderForm): LengthWanted =>
  (lengthBy === 'length' ? { by: 'length', lengthMm: readLengthMm(length, unit, 'length') } : { by: 'jaw', jawWidthMm: readLengthMm(jawWidth, unit, 'jawWidth'), underMm: readLengthMm(under, unit, 'under') })

function countFrom(text: string, field: string): number {
  const count = readNumber(text, field)
  if (!Number.isInteger(count) || count < 1) throw new Refusal('value-not-allowed', { field, given: text.trim(), needed: 'a whole number from 1' })
  return count
}
