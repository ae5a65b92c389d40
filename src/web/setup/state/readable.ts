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
  try {
    if (isPlainNumber(path)) readNumber(text, path)
    else readLengthMm(text, unit, path)
    return null
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal
    throw refusal
  }
}

const isPlainNumber = (path: string): boolean => /\.(pointAngle|leadThreads)$/.test(path)
