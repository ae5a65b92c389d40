import { attemptOr } from '#model/attempt.ts'
import { type LengthUnit, readLengthMm, withUnit } from '#model/length.ts'
import type { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { NumberField, type NumberFieldProps } from '#web/parts/number-field.tsx'
import { useUnits } from '#web/units.ts'

type Props = Omit<NumberFieldProps, 'error'> & { readonly refused?: Refusal | undefined }

/** A length as typed, with its value in the other system below; a refusal is said in its place. */
export function LengthField({ refused, note, ...field }: Props) {
  const units = useUnits()
  return <NumberField {...field} note={note ?? otherSystem(field.value, units)} error={refused ? sayRefusal(refused, units) : null} />
}

function otherSystem(text: string, units: Units): string | null {
  if (text.trim() === '') return null
  // What is half typed is refused when it is sent.
  const mm = attemptOr(() => readLengthMm(text, units.length), null), other: LengthUnit = readsIn(text, units.length) === 'mm' ? 'in' : 'mm'
  return mm === null ? null : `= ${withUnit(mm, { length: other, decimalMark: units.decimalMark })}`
}

function readsIn(text: string, unit: LengthUnit): LengthUnit {
  return /["/½¼¾⅛⅜⅝⅞]|in|thou/.test(text) ? 'in' : /m/.test(text) ? 'mm' : unit
}
