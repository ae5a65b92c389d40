import { isCode } from '#model/code.ts'

export type Labelled = 'bar' | 'slot'

/** First letters of the text in a QR code, by what the label is on. */
const heads: { readonly [kind in Labelled]: string } = { bar: 'TWB', slot: 'TWS' }

/** Text of a label's QR code: three letters and the code of the bar or slot, capitals and digits only, so that the smallest code holds it. */
export const labelText = (kind: Labelled, code: string): string => `${heads[kind]}${code}`

/** What a scanned text, or a code as a hand types it, stands for; a bare code of eight letters may be a bar's or a slot's. Null: neither. */
export function readLabel(text: string): { readonly kind: Labelled | null; readonly code: string } | null {
  const plain = text.replace(/[\s-]/g, '').toUpperCase(), kind = (['bar', 'slot'] as const).find((one) => plain.startsWith(heads[one]) && isCode(plain.slice(3))) ?? null
  if (kind !== null) return { kind, code: plain.slice(3) }
  return isCode(plain) ? { kind: null, code: plain } : null
}
