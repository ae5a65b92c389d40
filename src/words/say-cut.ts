import { withUnit } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'

/** How much a cut list takes and how far that is proven: `7000 mm of stock in all; less than 6800 mm cannot do`. Empty where it has no plan. */
export function sayTaken(takenMm: number | null, ofWhat: string, boundMm: number | null, units: Units): string {
  if (takenMm === null) return ''
  return `${withUnit(takenMm, units)} ${ofWhat}${boundMm === null ? '' : `; less than ${withUnit(boundMm, units)} cannot do`}`
}
