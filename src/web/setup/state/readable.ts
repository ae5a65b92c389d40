import { attempt } from '#model/attempt.ts'
import { readLengthMm, readNumber } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { SetupForm } from '#model/setup-form.ts'

/**
 * What a field would be refused for as it stands, or null: a text that reads as its kind of number, or nothing typed.
 *
 * Half-typed texts (`1 3/`, `-`) are refused like any other that is no number; whoever asks knows whether the field is still being typed in.
 */
export function textRefusal(path: string, text: string, unit: SetupForm['unit']): Refusal | null {
  if (text.trim() === '' || (path === 'wishes.grip' && text.trim().toLowerCase() === 'auto')) return null
  const read = attempt(() => (isPlainNumber(path) ? readNumber(text, path) : readLengthMm(text, unit, path)))
  return read instanceof Refusal ? read : null
}

const isPlainNumber = (path: string): boolean => /\.(pointAngle|leadThreads)$/.test(path)
