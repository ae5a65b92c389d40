import { Refusal } from '#model/refusal.ts'
import type { SeatPart } from '#engine/setup/seat/seat.ts'
import { longestMm, type RawObject } from '#engine/read/raw-object.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** µm, and µm/mm. Beyond it a height or slope is a slip of the pen. */
export const longestUm = 1000 * longestMm

/** Points that one case may hold. */
export const mostPoints = 1000

/** The part in the plan; pressed in its middle where nobody says otherwise. */
export function readSeatPart(raw: RawObject): SeatPart {
  const lengthMm = raw.number('lengthMm'), widthMm = raw.number('widthMm'), [x, y] = raw.rowOr('loadMm', [longestMm, longestMm], [lengthMm / 2, widthMm / 2])
  return { lengthMm, widthMm, loadMm: [x!, y!] }
}

/** @throws Refusal `size-not-positive` */
export function refusePart(part: SeatPart): void {
  for (const key of ['lengthMm', 'widthMm'] as const) refuseNotPositive(part[key], `part.${key}`)
}

/** @throws Refusal `size-not-positive` */
export function refuseNotPositive(given: number, field: string): void {
  if (given <= touchMm) throw new Refusal('size-not-positive', { field, given, needed: field.endsWith('Mm') ? { aboveMm: 0 } : { above: 0 } })
}

/** @throws Refusal `uncertainty-negative` */
export function refuseNegative(given: number, field: string): void {
  if (given < 0) throw new Refusal('uncertainty-negative', { field, given, needed: { least: 0 } })
}

/** @throws Refusal `too-few-points`, `wish-negative` (the tolerance) */
export function refuseSeat(points: number, toleranceUm: number | null): void {
  if (points === 0) throw new Refusal('too-few-points', { field: 'points', given: points, needed: 1 })
  if (toleranceUm !== null && toleranceUm < 0) throw new Refusal('wish-negative', { field: 'toleranceUm', given: toleranceUm, needed: 0 })
}
