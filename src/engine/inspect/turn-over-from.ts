import { attemptOr } from '#model/attempt.ts'
import { barReadingsOf, type CheckBody, zeroMmOf } from '#engine/inspect/check-readings.ts'
import type { BarReadings } from '#engine/inspect/shape.ts'
import { turnOverOf, type TurnOverAnswer } from '#engine/inspect/turn-over.ts'
import { meanOf } from '#engine/numeric/total.ts'

/** `heightsUm` of the answer are at these stations. */
export type TurnedOver = TurnOverAnswer & { readonly stationsMm: readonly number[] }

/** What the readings of one bar with either face up say, at the stations both faces share; null until they suffice. */
export function turnOverFrom(check: Pick<CheckBody, 'readings' | 'zero' | 'closing'>, bar: string, lengthMm: number | null): TurnedOver | null {
  const a = barReadingsOf(check, bar, lengthMm, 'A'), b = barReadingsOf(check, bar, lengthMm, 'B')
  if (!a || !b || lengthMm === null) return null
  const up = meansByPlace(a), over = meansByPlace(b), stationsMm = a.stationsMm.filter((x) => over.has(x))
  return attemptOr(() => ({
    stationsMm, ...turnOverOf({ zeroMm: zeroMmOf(check), lengthMm, stationsMm, faceAUpUm: stationsMm.map((x) => up.get(x)!), faceBUpUm: stationsMm.map((x) => over.get(x)!) }),
  }), null)
}

const meansByPlace = ({ stationsMm, lines }: BarReadings): ReadonlyMap<number, number> => new Map(stationsMm.map((x, i) => [x, meanOf(lines.flatMap((line) => line[i]!))]))
