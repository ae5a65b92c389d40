import { byTime } from '#engine/rack/trust-from.ts'
import type { HeightDeparture, Standing } from '#model/bar.ts'
import type { BarEvent } from '#model/bar-event.ts'
import type { Check } from '#model/check.ts'

/** The height a bar is taken to have, and what it rests on. */
export type Height = {
  readonly heightMm: number
  readonly standing: Standing
  /** Departures of the readings whose place along the bar is known, in the order of the stations. */
  readonly heightsUm: readonly HeightDeparture[]
  /** The check it comes from. */
  readonly check: string
}

/**
 * The mean of a bar's readings in its latest check that no other check replaces.
 *
 * A stated height is `marked`. So is a measured one once the bar was reground after that check: it is another bar then.
 *
 * @param checks  in any order; those without a reading of this bar are passed over
 * @param events  those of this bar that stand
 * @returns       null without any check
 */
export function heightFrom(bar: string, checks: readonly Check[], events: readonly BarEvent[]): Height | null {
  const replaced = new Set(checks.map((check) => check.replaces))
  const own = checks.filter((check) => !replaced.has(check.id) && check.readings.some((reading) => reading.bar === bar))
  const latest = own.sort(byTime).at(-1)
  if (!latest) return null
  const readings = latest.readings.filter((reading) => reading.bar === bar)
  const heightMm = meanOf(readings.map((reading) => reading.heightMm))
  const regroundSince = events.some((event) => event.kind === 'reground' && byTime(event, latest) > 0)
  return {
    heightMm,
    standing: latest.method === 'stated' || regroundSince ? 'marked' : 'measured',
    heightsUm: latest.method === 'stated' ? [] : readings
      .filter((reading) => reading.xMm !== null)
      .map((reading): HeightDeparture => [reading.xMm!, (reading.heightMm - heightMm) * 1000])
      .sort(([a], [b]) => a - b),
    check: latest.id,
  }
}

/** About the first value, so that a common height costs no digits and equal readings give exactly themselves. */
function meanOf(values: readonly number[]): number {
  const first = values[0]!
  return first + values.reduce((sum, value) => sum + (value - first), 0) / values.length
}
