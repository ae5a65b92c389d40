import { mmPerInch, wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'

/** A size rounded to what people call it: two decimals in mm, the next 64th in inches where it is within half a thou. */
export function calledMm(mm: number, units: Units): number {
  if (units.length === 'mm') return Math.round(mm * 100) / 100
  const next = (Math.round((mm / mmPerInch) * 64) / 64) * mmPerInch
  return Math.abs(next - mm) <= 0.0005 * mmPerInch ? next : mm
}

/** The same in words: `34.92`, `1 3/8`. */
export function calledSize(mm: number, units: Units): string {
  return wordLength(calledMm(mm, units), units)
}

/** `35 C`: the height of a bar and what is marked on it, or the name of its mates; a name that begins with the height is enough. */
export function barCalled({ heightMm, name, mates }: { readonly heightMm: number; readonly name: string; readonly mates: string | null }, units: Units): string {
  const height = calledSize(heightMm, units), own = name || (mates ?? '')
  return own.startsWith(height) ? own : `${height} ${own}`.trim()
}
