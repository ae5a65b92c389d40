import { type LengthUnit, readLengthMm } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'

/** A size of a bar as typed. @throws Refusal what `readLengthMm` refuses, and `size-not-positive` */
export function readSizeMm(text: string, unit: LengthUnit, field: string): number {
  const mm = readLengthMm(text, unit, field)
  if (mm <= 0) throw new Refusal('size-not-positive', { field, given: text, needed: { aboveMm: 0 } })
  return mm
}
