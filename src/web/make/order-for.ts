import type { JobFields, OrderForm } from '#model/job-record.ts'
import { mmPerInch, wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { listOf } from '#words/wording.ts'
import { newOrder } from '#web/make/job-edits.ts'

/** A height to make, and from where to where it may lie and still serve. */
export type HeightFor = { readonly heightMm: number; readonly lowMm: number; readonly highMm: number }

/** Heights are made in steps of half a millimetre, or of a 32nd of an inch. */
export const heightStepMm = ({ length }: Pick<Units, 'length'>): number => (length === 'mm' ? 0.5 : mmPerInch / 32)

/** An order for heights that were found missing. What each is for stays with it: how far it may be moved stands in its name and its note. */
export function orderFor(shop: ShopSnapshot, heights: readonly HeightFor[], units: Units, asked: Partial<OrderForm> = {}): JobFields {
  const order = newOrder(shop, { heights: heights.map(({ heightMm }) => wordLength(heightMm, units, { fractions: false })).join(' '), ...asked })
  return { ...order, name: nameOf(heights, units), note: sayAsGood(heights, units) }
}

/** `As good: any from 32 to 32.4.` */
export function sayAsGood(heights: readonly HeightFor[], units: Units): string {
  const said = heights.map(({ lowMm, highMm }) => (highMm - lowMm < 0.005 ? `just ${wordLength(lowMm, units)}` : `any from ${wordLength(Math.ceil(lowMm * 1000 - 1e-6) / 1000, units)} to ${wordLength(Math.floor(highMm * 1000 + 1e-6) / 1000, units)}`))
  return `As good: ${listOf(said)}.`
}

const mostLetters = 80

/** `32 (32 to 32.4), 38 (38 to 38.4)` */
function nameOf(heights: readonly HeightFor[], units: Units): string {
  const say = (mm: number) => wordLength(mm, units)
  return heights.map(({ heightMm, lowMm, highMm }) => `${say(heightMm)} (${say(lowMm)} to ${say(highMm)})`).join(units.decimalMark === ',' ? '; ' : ', ').slice(0, mostLetters)
}
