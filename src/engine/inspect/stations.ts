import type { CheckForm } from '#model/check-draft.ts'
import { readLengthMm } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'

/** mm. The first and the last station keep this far from the ends, where edges are rounded; of a short bar a tenth of its length. Common practice, no source. */
export const endMarginMm = 5

/** Stations enough to see taper and bow of a bar this long: 3 to 80 mm, 5 to 160, 7 to 250, 9 beyond. Common practice, no source. */
export function suggestedStations(lengthMm: number): number {
  return lengthMm <= 80 ? 3 : lengthMm <= 160 ? 5 : lengthMm <= 250 ? 7 : 9
}

/**
 * Where the stations lie, in mm from the marked end: as typed, or spread evenly between the margins at the ends.
 *
 * @param form  its `places` count where any of them is filled in, and then all of them
 * @throws Refusal as `readLengthMm`; `place-beyond-bar`; field `places[2]`
 */
export function stationPlacesMm({ stations, places, unit }: Pick<CheckForm, 'stations' | 'places' | 'unit'>, lengthMm: number): number[] {
  if (places.every((text) => text.trim() === '')) return evenly(stations, lengthMm)
  return Array.from({ length: stations }, (_, i) => {
    const field = `places[${i}]`, text = places[i] ?? '', xMm = readLengthMm(text, unit, field)
    if (xMm < 0 || xMm > lengthMm) throw new Refusal('place-beyond-bar', { field, given: text, needed: { leastMm: 0, mostMm: lengthMm } })
    return xMm
  })
}

/** Evenly from margin to margin; a single station in the middle. */
export function evenly(stations: number, lengthMm: number): number[] {
  const margin = Math.min(endMarginMm, lengthMm / 10)
  return stations === 1 ? [lengthMm / 2] : Array.from({ length: stations }, (_, i) => margin + (i * (lengthMm - 2 * margin)) / (stations - 1))
}
