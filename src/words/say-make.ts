import type { ActualField } from '#model/make-plan.ts'
import type { MachineKind } from '#model/machine.ts'
import { wordLength, wordNumber } from '#model/length.ts'
import type { ReadingKind, StepKind } from '#model/make-step.ts'
import type { Band, Cost, Expected, JobRoute, Route, RouteStatus } from '#model/route.ts'
import type { BarSize } from '#model/bar-size.ts'
import type { Units } from '#model/shop-record.ts'
import type { Condition } from '#model/stock-length.ts'
import { saySource } from '#words/say-source.ts'
import { capital } from '#words/wording.ts'

export const routeWords: { readonly [kind in JobRoute]: string } = {
  'as drawn': 'as drawn', 'as delivered': 'ground flat, as delivered', 'milled': 'milled soft in pairs', 'rubbed': 'milled soft, then rubbed', 'milled prehardened': 'prehardened and milled',
  'hard milled': 'hardened and hard milled', 'ground': 'hardened and ground in pairs', 'bought': 'bought', 'regrind': 'regrind',
}

/** A mark beside each, so that it never rests on colour. */
export const routeStatusWords: { readonly [status in RouteStatus]: { readonly mark: string; readonly word: string } } = {
  serves: { mark: '✓', word: 'serves' }, careful: { mark: '≈', word: 'with careful work' }, short: { mark: '–', word: 'falls short' }, blocked: { mark: '×', word: 'not open' },
}

export const conditionWords: { readonly [condition in Condition]: string } = {
  'drawn': 'drawn', 'rolled': 'rolled', 'annealed': 'soft annealed, machined all over', 'ground flat': 'ground flat', 'prehardened': 'prehardened', 'prehardened ground': 'prehardened, ground flat',
}

export const machineWords: { readonly [kind in MachineKind]: string } = { 'saw': 'saw', 'mill': 'mill', 'furnace': 'furnace', 'press': 'straightening press', 'grinder': 'surface grinder', 'ground plate': 'ground plate for rubbing' }

export const sayStep = (kind: StepKind): string => capital(kind)

/** `30 × 10 × 150`: height, thickness, length, without a unit. */
export const saySize = ({ heightMm, thicknessMm, lengthMm }: BarSize, units: Units): string => [heightMm, thicknessMm, lengthMm].map((mm) => wordLength(mm, units)).join(' × ')

/** The shop's own money, which has no name here. */
export const sayMoney = (amount: number | null, { decimalMark }: Units): string => (amount === null ? 'not priced' : wordNumber(amount, decimalMark, Math.round(amount * 100) % 100 === 0 ? 0 : 2))

export function sayHours(hours: number, { decimalMark }: Units): string {
  return hours === 0 ? '0 h' : hours < 1 ? `${Math.max(1, Math.round(hours * 60))} min` : `${wordNumber(Math.round(hours * 10) / 10, decimalMark, null, 1)} h`
}

/** `2 to 5 µm`; where it is from stands beside it. */
export function sayBand({ fromUm, toUm }: Band, { decimalMark }: Units): string {
  const number = (um: number) => wordNumber(um, decimalMark, null, 1)
  return toUm === null ? (fromUm === null ? 'not known' : `from ${number(fromUm)} µm`) : fromUm === null || fromUm === toUm ? `${number(toUm)} µm` : `${number(fromUm)} to ${number(toUm)} µm`
}

/** Where what is expected of a way is from, each source once. */
export function sayExpectedFrom({ match, parallel }: Expected): string {
  const known = [match.countOn, match.careful, parallel.countOn, parallel.careful].filter((band) => band !== null && (band.fromUm !== null || band.toUm !== null))
  return [...new Set(known.map((band) => saySource(band!)))].join('; ')
}

/** What a total is made of, or what is missing for one. */
export function sayCost({ total, stock, work, outside, tools, unpriced }: Cost, units: Units): string {
  if (total === null) return `not priced: ${unpriced.join(', ')}`
  const parts = [['stock', stock], ['work', work], ['outside', outside], ['tools', tools]] as const
  return parts.flatMap(([name, amount]) => (amount === null || amount === 0 ? [] : [`${name} ${sayMoney(amount, units)}`])).join(', ') || 'nothing'
}

/** What to read: `bow of the edges, mm`. */
export const sayReading = (what: ReadingKind, { length }: Units): string => `${what === 'difference of mates' ? 'difference of the mates' : what}, ${what === 'hardness' ? 'HRC' : length}`

/** Within what the work goes on; empty: no limit. */
export function sayLimit({ what, least, most }: Pick<ActualField, 'what' | 'least' | 'most'>, units: Units): string {
  const number = (value: number) => (what === 'hardness' ? wordNumber(value, units.decimalMark) : wordLength(value, units, { fractions: false }))
  if (least !== null && most !== null) return `${number(least)} to ${number(most)}`
  return least !== null ? `at least ${number(least)}` : most !== null ? `at most ${number(most)}` : ''
}

/** `12 to 44, 17 heights` or the heights one by one. */
export function sayHeights(heightsMm: readonly number[], units: Units): string {
  const one = (mm: number | undefined) => (mm === undefined ? '?' : wordLength(mm, units))
  return heightsMm.length > 6 ? `${one(heightsMm[0])} to ${one(heightsMm.at(-1))}, ${heightsMm.length} heights` : heightsMm.map(one).join(units.decimalMark === ',' ? '; ' : ', ')
}

/** What cannot be gone is said last. */
export const isOpen = ({ status }: Pick<Route, 'status'>): boolean => status !== 'blocked'
