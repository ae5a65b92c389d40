import { Refusal } from '#model/refusal.ts'
import type { BarReadings } from '#engine/inspect/shape.ts'

/** mm. Stations nearer than this are one and the same. */
export const sameStationMm = 1e-6

/**
 * Refuses readings from which no shape follows: the first code that applies to any of the bars.
 *
 * @throws Refusal `readings-do-not-match-stations`, `too-few-readings` below two stations, `stations-coincide`, `size-not-positive` (the length)
 */
export function refuseReadings(bars: readonly BarReadings[]): void {
  const every = (refuse: (bar: BarReadings, field: string) => void): void => bars.forEach((bar, i) => refuse(bar, `bars[${i}]`))
  every((bar, field) => {
    if (bar.lines.length === 0) throw new Refusal('readings-do-not-match-stations', { field: `${field}.lines`, given: 0, needed: 1 })
    bar.lines.forEach((line, l) => refuseMismatch(line, bar.stationsMm.length, `${field}.lines[${l}]`))
    bar.lines.forEach((line, l) => line.forEach((repeats, s) => {
      if (repeats.length === 0) throw new Refusal('readings-do-not-match-stations', { field: `${field}.lines[${l}][${s}]`, given: 0, needed: 1 })
    }))
  })
  every((bar, field) => refuseFew(bar.stationsMm, 2, `${field}.stationsMm`))
  every((bar, field) => refuseCoinciding(bar.stationsMm, `${field}.stationsMm`))
  every((bar, field) => {
    if (bar.lengthMm !== null && bar.lengthMm <= sameStationMm) throw new Refusal('size-not-positive', { field: `${field}.lengthMm`, given: bar.lengthMm, needed: { above: 0 } })
  })
}

/** @throws Refusal `readings-do-not-match-stations` */
export function refuseMismatch(readings: readonly unknown[], stations: number, field: string): void {
  if (readings.length !== stations) throw new Refusal('readings-do-not-match-stations', { field, given: readings.length, needed: stations })
}

/** @throws Refusal `too-few-readings` */
export function refuseFew(stationsMm: readonly number[], least: number, field: string): void {
  if (stationsMm.length < least) throw new Refusal('too-few-readings', { field, given: stationsMm.length, needed: least })
}

/** @throws Refusal `stations-coincide` */
export function refuseCoinciding(stationsMm: readonly number[], field: string): void {
  const sorted = stationsMm.toSorted((a, b) => a - b), at = sorted.findIndex((x, i) => i > 0 && x - sorted[i - 1]! <= sameStationMm)
  if (at !== -1) throw new Refusal('stations-coincide', { field, given: sorted[at]!, needed: { apartMm: sameStationMm } })
}
