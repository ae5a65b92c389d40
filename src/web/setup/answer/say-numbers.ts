import { wordLength, wordNumber } from '#model/length.ts'
import type { Choice } from '#model/setup.ts'
import type { Units } from '#model/shop-record.ts'
import { plusMinus } from '#words/say-uncertainty.ts'

/** One of the four numbers: in the person's units, in the other system, and what it is called. */
export type Number4 = { readonly name: string; readonly own: string; readonly other: string; readonly unit: string }

type Numbers = Pick<Choice, 'gripMm' | 'stickOutMm' | 'airMm' | 'matchUm' | 'matchUUm' | 'bars'>

/** Grip, above the jaws, clear of the jaws, match: `–` for what there is none of. */
export function fourNumbers({ gripMm, stickOutMm, airMm, matchUm, matchUUm, bars }: Numbers, units: Units): readonly Number4[] {
  const length = (name: string, mm: number | null): Number4 => (mm === null
    ? { name, own: '–', other: '', unit: units.length }
    : { name, own: lengthIn(mm, units), other: inOtherSystem(mm, units), unit: units.length })
  const match = matchUm === null ? '?' : bars.length < 2 ? '–' : wordNumber(matchUm, units.decimalMark, 1)
  const other = matchUm === null || bars.length < 2 ? '' : matchUUm === undefined ? `${wordNumber(matchUm / 25_400, units.decimalMark, null, 5)} in` : plusMinus(matchUUm, units)
  return [
    length('grip', gripMm), length('above jaws', stickOutMm), length('clear of jaws', airMm),
    { name: matchUm === null ? 'match, not measured' : 'µm match', own: match, other, unit: 'µm' },
  ]
}

/** Tenths of a mm where it is within a hundredth of one, else hundredths; in inches a fraction where it is one, else thousandths. */
export function lengthIn(mm: number, units: Units): string {
  if (units.length === 'mm') return wordLength(mm, units, { decimals: Math.abs(mm * 10 - Math.round(mm * 10)) < 0.1 ? 1 : 2 })
  const words = wordLength(mm, units)
  return words.includes('/') || !/[.,]/.test(words) ? words : wordLength(mm, units, { decimals: 3 })
}

export function inOtherSystem(mm: number, units: Units): string {
  const other: Units = { ...units, length: units.length === 'mm' ? 'in' : 'mm' }
  return `${other.length === 'in' ? wordLength(mm, other, { decimals: 3, fractions: false }) : wordLength(mm, other, { decimals: 2 })} ${other.length}`
}
