import { Refusal } from '#model/refusal.ts'

/** Places after the decimal mark that lengths may have. */
const mostPlaces = 6

/**
 * The least power of ten that makes whole numbers of all these, so that sums of them are exact.
 *
 * @throws Refusal `length-too-fine`
 */
export function wholeScale(lengths: readonly (readonly [field: string, given: number])[]): number {
  for (let places = 0, scale = 1; places <= mostPlaces; places += 1, scale *= 10) if (lengths.every(([, given]) => isWhole(given * scale))) return scale
  const [field, given] = lengths.find(([, length]) => !isWhole(length * 10 ** mostPlaces))!
  throw new Refusal('length-too-fine', { field, given, needed: 10 ** -mostPlaces })
}

/** Near enough to a whole number that only the way it is written can be the reason: 0.1 × 10 is 1. */
const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) <= 1e-9 * Math.max(1, Math.abs(value))
