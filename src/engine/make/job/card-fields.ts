import type { JobFields } from '#model/job-record.ts'
import { type LengthUnit, readLengthMm, readNumber } from '#model/length.ts'

/** The fields of the step cards. Sizes are read in the unit of the order, the rest as numbers. */
export const cardFields = [
  'cutting.diameter', 'cutting.stickOut', 'cutting.depth', 'cutting.teeth', 'cutting.rpm', 'cutting.feed', 'cutting.material',
  'heat.hrc', 'straighten.yield', 'straighten.e', 'grind.wheelWidth', 'grind.wheelDiameter', 'grind.wheelRpm', 'grind.markedRpm',
] as const
export type CardField = (typeof cardFields)[number]

/** What a card takes until somebody types something else. A cutter of 10 with four teeth and an elastic modulus of 210 000 N/mm²: common practice, no source. */
export const usualFields: { readonly [field in CardField]?: number } = { 'cutting.diameter': 10, 'cutting.teeth': 4, 'straighten.e': 210_000 }

type Typed = Pick<JobFields, 'tools' | 'form'>

/** A typed number, what is usual, or null where neither is there. @throws Refusal of `readNumber` with `field` the field of the card */
export function cardNumber({ tools }: Typed, field: CardField): number | null {
  const text = tools[field] ?? ''
  return text.trim() === '' ? (usualFields[field] ?? null) : readNumber(text, field)
}

/** The same for a size. @throws Refusal of `readLengthMm` */
export function cardMm({ tools, form }: Typed, field: CardField): number | null {
  const text = tools[field] ?? ''
  return text.trim() === '' ? (usualFields[field] ?? null) : readLengthMm(text, form.unit as LengthUnit, field)
}
