import type { Check, Reading } from '#model/check.ts'
import { onTheFirstLine } from '#model/plain-check.ts'
import { meanOf } from '#engine/numeric/total.ts'
import { evenly } from '#engine/inspect/stations.ts'
import type { BarReadings } from '#engine/inspect/shape.ts'

/** What was measured, before it is known whose check it is and when. */
export type CheckBody = Omit<Check, 'id' | 'person' | 'device' | 'atIso'>

/** What readings count from: the zero, or else the first reading. */
export const zeroMmOf = ({ zero, readings }: Pick<CheckBody, 'zero' | 'readings'>): number => zero?.heightMm ?? readings[0]?.heightMm ?? 0

/** µm above the zero, to a millionth: what a sum in mm rounds away is no reading. */
export const aboveUm = (heightMm: number, zeroMm: number): number => Math.round((heightMm - zeroMm) * 1e9) / 1e6

/**
 * The readings of one bar with one face up, as far as they make up whole stations: a station counts once every line that
 * was begun has a reading there.
 *
 * @param lengthMm  of the bar; null: not known
 * @returns         null below two stations, or where nobody knows where along the bar they lie
 */
export function barReadingsOf(check: Pick<CheckBody, 'readings' | 'zero' | 'closing'>, bar: string, lengthMm: number | null, face: Reading['face'] = onTheFirstLine.face): BarReadings | null {
  const own = check.readings.filter((reading) => reading.bar === bar && reading.face === face), zeroMm = zeroMmOf(check)
  const begun = ([0, 1] as const).filter((line) => own.some((reading) => reading.line === line))
  const at = (line: 0 | 1, station: number): readonly Reading[] => own.filter((reading) => reading.line === line && reading.station === station)
  const stations = [...new Set(own.map(({ station }) => station))].sort((a, b) => a - b).filter((station) => begun.every((line) => at(line, station).length > 0))
  if (stations.length < 2) return null
  const told = stations.map((station) => at(begun[0]!, station)[0]!.xMm)
  const stationsMm = told.every((xMm) => xMm !== null) ? told : lengthMm === null ? null : spread(stations, lengthMm)
  if (stationsMm === null || new Set(stationsMm).size < stations.length) return null
  return {
    id: bar, stationsMm, lengthMm, closingZeroUm: check.closing?.um ?? null,
    lines: begun.map((line) => stations.map((station) => at(line, station).map((reading) => aboveUm(reading.heightMm, zeroMm)))),
  }
}

/** Of stations that nobody placed: evenly, as many as there are up to the last. */
function spread(stations: readonly number[], lengthMm: number): number[] {
  const places = evenly(stations.at(-1)! + 1, lengthMm)
  return stations.map((station) => places[station]!)
}

/** Mean height over the places of a bar, each place with equal weight; null without a reading. */
export function meanHeightMm(readings: readonly Reading[]): number | null {
  const zeroMm = readings[0]?.heightMm
  if (zeroMm === undefined) return null
  const places = new Map<string, number[]>()
  for (const { line, face, station, heightMm } of readings) {
    const place = `${line}/${face}/${station}`
    places.set(place, [...(places.get(place) ?? []), aboveUm(heightMm, zeroMm)])
  }
  return zeroMm + meanOf([...places.values()].map(meanOf)) / 1000
}
