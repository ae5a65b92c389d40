import type { CheckForm } from '#model/check-draft.ts'
import { mmPerInch, readLengthMm } from '#model/length.ts'
import type { Finding } from '#model/finding.ts'

/** What a number without a unit means in the field of a reading. */
export type BareUnit = 'µm' | 'mm' | 'in'

/** µm. An indicator that steps finer than this, or as fine, is read in µm where the unit is mm. Common practice, no source. */
const readInUm = 10

/**
 * What a number without a unit means: heights (`stated`, `micrometer`) are in the unit of the check; readings of an indicator
 * are in inches where that is the unit, else in µm, or in mm if its step is coarser than 10 µm.
 *
 * @param resolutionUm  of the indicator; null: not known, taken to be fine
 */
export function bareUnitOf({ method, unit }: Pick<CheckForm, 'method' | 'unit'>, resolutionUm: number | null): BareUnit {
  if (method === 'micrometer' || method === 'stated' || unit === 'in') return unit
  return (resolutionUm ?? 0) <= readInUm ? 'µm' : 'mm'
}

/** A reading of an indicator as typed, in µm. A unit typed with it counts. @throws Refusal as `readLengthMm` */
export function readDepartureUm(text: string, bare: BareUnit, field: string): number {
  const um = readLengthMm(isBare(text) && bare === 'µm' ? `${text} um` : text, bare === 'in' ? 'in' : 'mm', field) * 1000
  return Math.round(um * 1e6) / 1e6
}

const isBare = (text: string): boolean => /^[^a-zµμ"″”'/½¼¾⅛⅜⅝⅞⁄]*$/i.test(text)

/** µm. What an indicator on the plate moves at most. Common practice, no source. */
const travelUm = 1000

/**
 * What a reading of an indicator, taken alone, gives reason to ask: a number finer than the indicator steps (millimetres
 * typed for micrometres), the whole height of the bar, or more than an indicator moves (tenths typed for inches). `meant` is
 * what may have been meant, ready to be typed.
 */
export function askedOfReading(text: string, um: number, bare: BareUnit, resolutionUm: number | null, zeroMm: number | null): Finding | null {
  if (!isBare(text) || um === 0) return null
  const ask = (code: string, factor: number, meantUm: number): Finding => ({ code, facts: { readingUm: um, factor, meantUm, meant: `${meantUm > 0 ? '+' : ''}${plain(meantUm)} µm` } })
  if (bare === 'µm') {
    const aboveZeroUm = zeroMm === null ? Infinity : (um - zeroMm) * 1000
    if (decimalsOf(text) >= 2 && Math.abs(aboveZeroUm) <= travelUm) return ask('height-for-reading', 1, Math.round(aboveZeroUm * 1000) / 1000)
    if (Math.abs(um) < (resolutionUm ?? 1) / 10 || decimalsOf(text) >= 3) return ask('reading-unit-slip', 1 / 1000, Math.round(um * 1e6) / 1000)
  }
  if (Math.abs(um) <= travelUm) return null
  if (bare === 'in') {
    const tenthsUm = Math.round((um / mmPerInch / 1000) * 2.54e6) / 1e6
    return Math.abs(tenthsUm) <= travelUm ? ask('reading-unit-slip', 10_000, tenthsUm) : ask('reading-beyond-travel', 1, um)
  }
  return bare === 'mm' ? ask('reading-unit-slip', 1000, um / 1000) : ask('reading-beyond-travel', 1, um)
}

const decimalsOf = (text: string): number => /[.,](\d*)/.exec(text)?.[1]?.length ?? 0
const plain = (value: number): string => String(Math.round(value * 1e4) / 1e4)
