import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'

export type LengthUnit = 'mm' | 'in'

/** One inch in millimetres, exact by definition. @source INCH-1959 */
export const mmPerInch = 25.4

/** A ratio of whole numbers: what was typed, before anything is rounded. */
type Ratio = { readonly over: bigint; readonly under: bigint }

const longestText = 40
const largestMm = 1e6

const vulgarFractions: { readonly [sign: string]: string } = {
  '½': '1/2', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8',
}

/** Units as hands type them, as exact ratios of a millimetre. */
const unitRatios: { readonly [word: string]: Ratio } = {
  'mm': { over: 1n, under: 1n },
  'cm': { over: 10n, under: 1n },
  'um': { over: 1n, under: 1000n },
  'in': { over: 254n, under: 10n },
  'inch': { over: 254n, under: 10n },
  'inches': { over: 254n, under: 10n },
  '"': { over: 254n, under: 10n },
  'thou': { over: 254n, under: 10_000n },
}

/**
 * A length as a hand types it, in millimetres: `25,003` `+3` `-0.5` `.0002"` `7/8` `1 3/8` `1-3/8` `22.225mm` `0.875 in` `12 µm`.
 *
 * A single point or comma is the decimal mark; two are refused and nothing is a thousands mark. A unit typed counts before
 * `unit`, and a bare fraction is inches in either. Worked out exactly and rounded once, to the nearest double.
 *
 * @param unit   what a number without a unit is in
 * @param field  path of the field, for the refusal
 * @throws Refusal `field-missing` for nothing, `not-a-number`, `two-decimal-marks`, `zero-denominator`, `unknown-unit`, `too-large` beyond 1e6 mm
 * @source INCH-1959
 */
export function readLengthMm(text: string, unit: LengthUnit, field = 'length'): number {
  const { number, unitWord } = takeApart(text, field)
  const value = ratioFrom(number, text, field)
  const bareUnit = number.includes('/') ? 'in' : unit
  const factor = unitRatios[unitWord === '' ? bareUnit : unitWord]
  if (!factor) throw new Refusal('unknown-unit', { field, given: text, needed: ['mm', 'in', 'µm', 'thou'] })
  const mm = nearestNumber({ over: value.over * factor.over, under: value.under * factor.under })
  if (Math.abs(mm) > largestMm) throw new Refusal('too-large', { field, given: text, needed: { mostMm: largestMm } })
  return mm
}

/** The size of a real thing as a hand types it. @throws Refusal as `readLengthMm`, and `size-not-positive` at 0 and below */
export function readSizeMm(text: string, unit: LengthUnit, field = 'length'): number {
  const mm = readLengthMm(text, unit, field)
  if (mm <= 0) throw new Refusal('size-not-positive', { field, given: text, needed: { aboveMm: 0 } })
  return mm
}

/**
 * A plain number as a hand types it (an angle, a count of threads), by the rules of `readLengthMm` and without a unit.
 *
 * @throws Refusal `field-missing`, `not-a-number`, `two-decimal-marks`, `zero-denominator`
 */
export function readNumber(text: string, field = 'number'): number {
  const { number, unitWord } = takeApart(text, field)
  if (unitWord !== '') throw new Refusal('not-a-number', { field, given: text, needed: 'number' })
  return nearestNumber(ratioFrom(number, text, field))
}

/**
 * A length in words, without its unit: `35`, `10.75`, `1 3/8`, `−0.5`.
 *
 * Inches that lie on a 64th are said as a fraction unless `fractions` is false. Trailing zeros are dropped unless
 * `decimals` asks for a fixed number of places (left out: at most 3 in mm, 4 in inches).
 */
export function wordLength(
  mm: number, units: Pick<Units, 'length' | 'decimalMark'>, style: { readonly decimals?: number; readonly fractions?: boolean } = {},
): string {
  const inches = units.length === 'in'
  if (inches && style.fractions !== false && style.decimals === undefined) {
    const fraction = fractionOf(mm)
    if (fraction !== null) return fraction
  }
  return wordNumber(inches ? mm / mmPerInch : mm, units.decimalMark, style.decimals ?? null, inches ? 4 : 3)
}

/** A length with its unit: `35 mm`, `1 3/8 in`. */
export function withUnit(mm: number, units: Pick<Units, 'length' | 'decimalMark'>): string {
  return `${wordLength(mm, units)} ${units.length}`
}

/** A length in both systems, the person's own first: `28.575 mm (1 1/8 in)`. */
export function bothSystems(mm: number, units: Pick<Units, 'length' | 'decimalMark'>): string {
  const other: Pick<Units, 'length' | 'decimalMark'> = { length: units.length === 'mm' ? 'in' : 'mm', decimalMark: units.decimalMark }
  return `${withUnit(mm, units)} (${withUnit(mm, other)})`
}

/** A number in words with the person's decimal mark; `decimals` null: as many places as it needs, at most `mostDecimals`. */
export function wordNumber(value: number, decimalMark: Units['decimalMark'], decimals: number | null = null, mostDecimals = 3): string {
  const places = decimals ?? mostDecimals
  const scale = 10 ** places
  const away = Math.abs(value) * scale
  const whole = Math.round(away * (1 + Number.EPSILON))
  let digits = (whole / scale).toFixed(places)
  if (decimals === null && digits.includes('.')) digits = digits.replace(/\.?0+$/, '')
  const signed = value < 0 && whole !== 0 ? `−${digits}` : digits
  return signed.replace('.', decimalMark)
}

function takeApart(text: string, field: string): { number: string; unitWord: string } {
  if (text.trim() === '') throw new Refusal('field-missing', { field, given: null, needed: 'number' })
  if (text.length > longestText) throw new Refusal('not-a-number', { field, given: `${text.slice(0, longestText)}…`, needed: 'number' })
  const plain = text.trim()
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${vulgarFractions[sign]}`)
    .replace(/[µμ]m/g, 'um').replace(/[−–]/g, '-').replace(/[″”]|''/g, '"').replace(/⁄/g, '/')
    .trim().toLowerCase()
  const parts = /^([^a-z"]*?)\s*([a-z"]*)$/.exec(plain)
  if (!parts || parts[1] === '') throw new Refusal('not-a-number', { field, given: text, needed: 'number' })
  return { number: parts[1]!, unitWord: parts[2]! }
}

function ratioFrom(number: string, text: string, field: string): Ratio {
  if ((number.match(/[.,]/g) ?? []).length > 1) throw new Refusal('two-decimal-marks', { field, given: text, needed: 'number' })
  const decimal = /^([+-]?)(\d*)(?:[.,](\d*))?$/.exec(number)
  if (decimal && (decimal[2] || decimal[3])) {
    const after = decimal[3] ?? ''
    return signed(decimal[1]!, { over: BigInt(`${decimal[2]}${after}`), under: 10n ** BigInt(after.length) })
  }
  const fraction = /^([+-]?)\s*(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*\/\s*(\d+)$/.exec(number)
  if (!fraction) throw new Refusal('not-a-number', { field, given: text, needed: 'number' })
  const under = BigInt(fraction[4]!)
  if (under === 0n) throw new Refusal('zero-denominator', { field, given: text, needed: 'number' })
  return signed(fraction[1]!, { over: BigInt(fraction[2] ?? '0') * under + BigInt(fraction[3]!), under })
}

const signed = (sign: string, ratio: Ratio): Ratio => (sign === '-' ? { over: -ratio.over, under: ratio.under } : ratio)

/** The double nearest to a ratio: one rounded division where both sides are exact, a long decimal otherwise. */
function nearestNumber({ over, under }: Ratio): number {
  const shared = divisor(over < 0n ? -over : over, under)
  const top = over / shared, bottom = under / shared
  if (top > -(2n ** 53n) && top < 2n ** 53n && bottom < 2n ** 53n) return Number(top) / Number(bottom)
  const digits = (top * 10n ** 40n) / bottom
  return Number(`${digits}e-40`)
}

function divisor(a: bigint, b: bigint): bigint {
  return b === 0n ? (a === 0n ? 1n : a) : divisor(b, a % b)
}

/** `1 3/8` where the length lies on a 64th of an inch (to 1e-6 mm); null elsewhere. */
function fractionOf(mm: number): string | null {
  const parts64 = Math.round((Math.abs(mm) / mmPerInch) * 64)
  if (Math.abs(parts64 * (mmPerInch / 64) - Math.abs(mm)) > 1e-6) return null
  const whole = Math.floor(parts64 / 64)
  let over = parts64 % 64, under = 64
  while (over > 0 && over % 2 === 0) { over /= 2; under /= 2 }
  const words = over === 0 ? `${whole}` : whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`
  return mm < 0 && parts64 !== 0 ? `−${words}` : words
}
