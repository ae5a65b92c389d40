import type { ReadCell } from '#engine/inspect/read-cell.ts'
import { mmPerInch, wordNumber } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'

/** What a reading was taken for, in both systems: `+3 µm (0.00012 in) · 25.003 mm (0.98437 in)`; null while it says nothing. */
export function sayEcho({ um, heightMm }: Pick<ReadCell, 'um' | 'heightMm'>, units: Units): string | null {
  const parts = [...(um === null ? [] : [sayDeparture(um, units)]), ...(heightMm === null ? [] : [sayHeight(heightMm, units)])]
  return parts.length === 0 ? null : parts.join(' · ')
}

/** To a tenth of a micrometre and its like in inches, the sign always there. */
export function sayDeparture(um: number, { decimalMark }: Units): string {
  const sign = um > 0 ? '+' : ''
  return `${sign}${wordNumber(um, decimalMark, null, 2)} µm (${sign}${wordNumber(um / 1000 / mmPerInch, decimalMark, null, 6)} in)`
}

export function sayHeight(mm: number, { decimalMark, length }: Units): string {
  const inMm = `${wordNumber(mm, decimalMark, null, 4)} mm`, inInches = `${wordNumber(mm / mmPerInch, decimalMark, null, 6)} in`
  return length === 'in' ? `${inInches} (${inMm})` : `${inMm} (${inInches})`
}
