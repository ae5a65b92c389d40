import { type LengthUnit, readLengthMm } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'

/** A length as typed, `elseMm` where nothing was; a text that cannot be read is its refusal. */
export function typedLength(text: string, unit: LengthUnit, field: string, elseMm: number | null): { readonly mm: number | null; readonly refused?: Refusal } {
  if (text.trim() === '') return { mm: elseMm }
  try {
    const mm = readLengthMm(text, unit, field)
    return mm > 0 ? { mm } : { mm: null, refused: new Refusal('size-not-positive', { field, given: text, needed: { aboveMm: 0 } }) }
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    return { mm: null, refused: error }
  }
}
