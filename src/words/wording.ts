import { wordLength, wordNumber } from '#model/length.ts'
import type { Fact, Facts } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { type Terms, termsFor } from '#words/terms.ts'

/** How a bar is called by the people who use it, from its id. */
export type NameOf = (id: string) => string

/** A sentence made from the facts of one code. */
export type Say = (facts: Facts, wording: Wording) => string

/** Puts facts into words in the person's units. A fact that is missing is said as `?`, never as a number. */
export type Wording = Terms & {
  readonly units: Units
  /** A length given in mm, without its unit: `10.75`, `1 3/8`. */
  readonly length: (mm: Fact | undefined) => string
  readonly micrometres: (um: Fact | undefined) => string
  /** Any other number, at most four decimals. */
  readonly number: (value: Fact | undefined) => string
  /** A text, as it is; several as `a, b and c`. */
  readonly text: (words: Fact | undefined, last?: string) => string
  /** Bars by their names, each name once: `35 C and 35 D`. */
  readonly bars: (ids: Fact | undefined) => string
}

export function wordingFor(units: Units, nameOf: NameOf = (id) => id): Wording {
  const number = (value: Fact | undefined, mostDecimals = 4) =>
    typeof value === 'number' ? numberText(value, units, mostDecimals) : typeof value === 'string' ? value : '?'
  return {
    ...termsFor(units.words),
    units,
    length: (mm) => (typeof mm === 'number' ? (isBeyondWords(mm) ? String(mm) : wordLength(mm, units)) : '?'),
    micrometres: (um) => `${number(um, 1)} µm`,
    number: (value) => number(value),
    text: (words, last) => listOf((Array.isArray(words) ? words : [words]).map((word: Fact | undefined) => plain(word)), last),
    bars: (ids) => listOf([...new Set((Array.isArray(ids) ? ids : [ids]).map((id: Fact | undefined) => (typeof id === 'string' ? nameOf(id) : '?')))]),
  }
}

/** `a`, `a and b`, `a, b and c`. */
export function listOf(words: readonly string[], last = 'and'): string {
  if (words.length < 2) return words.join('')
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`
}

/** What stands between two numbers that follow each other: beside decimal commas another comma would be read as one. */
export function betweenNumbers({ decimalMark }: Pick<Units, 'decimalMark'>): string {
  return decimalMark === ',' ? '; ' : ', '
}

/** `hole 2`, `holes 2 and 5`, counted from 1 as on the screen. */
export function counted(one: string, many: string, indexes: Fact | undefined): string {
  const list = Array.isArray(indexes) ? indexes : [indexes]
  const numbers = list.map((index) => (typeof index === 'number' ? String(index + 1) : '?'))
  return `${numbers.length === 1 ? one : many} ${listOf(numbers)}`
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}

const plain = (word: Fact | undefined): string =>
  typeof word === 'string' ? word.slice(0, 200) : typeof word === 'number' || typeof word === 'boolean' ? String(word) : '?'

function numberText(value: number, units: Units, mostDecimals: number): string {
  if (!Number.isFinite(value)) return '?'
  return isBeyondWords(value) ? String(value) : wordNumber(value, units.decimalMark, null, mostDecimals)
}

/** So large that decimal places would be made up: said as it was given. */
const isBeyondWords = (value: number): boolean => Math.abs(value) >= 1e11
