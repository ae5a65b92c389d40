import { attempt } from '#model/attempt.ts'
import { type LengthUnit, readSizeMm } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'

/** A length as typed, `elseMm` where nothing was; a text that cannot be read is its refusal. */
export function typedLength(text: string, unit: LengthUnit, field: string, elseMm: number | null): { readonly mm: number | null; readonly refused?: Refusal } {
  if (text.trim() === '') return { mm: elseMm }
  const mm = attempt(() => readSizeMm(text, unit, field))
  return mm instanceof Refusal ? { mm: null, refused: mm } : { mm }
}
