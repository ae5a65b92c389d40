import type { CheckMethod } from '#model/check-methods.ts'
import { type LengthUnit, wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { Terms } from '#words/terms.ts'

const methods: { readonly [method in CheckMethod]: string } = { 'compare': 'at the plate', 'micrometer': 'micrometer', 'turn-over': 'turned over', 'rock': 'rock', 'stated': 'marked' }

export function sayMethod(method: CheckMethod): string {
  return methods[method]
}

/** What is done, in one sentence. */
export function sayHow(method: Exclude<CheckMethod, 'stated'>, { indicator, gauge }: Terms): string {
  switch (method) {
    case 'compare': return `The ${indicator} goes from station to station on the plate, against a zero on a ${gauge} block or on one of the bars.`
    case 'micrometer': return 'The height itself, station by station. Sees no bend, and no less than the instrument does.'
    case 'turn-over': return `As at the plate, with either face up: tells a bent bar from an uneven one.`
    case 'rock': return 'Finger and feeler on the plate: does it lie still?'
  }
}

/** A height to the micrometre, or its like in inches, without its unit. */
export function wordHeight(mm: number, unit: LengthUnit, { decimalMark }: Units): string {
  return wordLength(mm, { length: unit, decimalMark }, { decimals: unit === 'in' ? 5 : 3 })
}

/** A day and time as this person writes them. */
export function sayTime(iso: string): string {
  return new Date(iso).toLocaleString(undefined, { day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' })
}
