import { barUncertainty } from '#engine/inspect/bar-uncertainty.ts'
import { meanHeightMm, zeroMmOf } from '#engine/inspect/check-readings.ts'
import { type TurnedOver, turnOverFrom } from '#engine/inspect/turn-over-from.ts'
import { turnOverGrows } from '#engine/inspect/turn-over-uncertainty.ts'
import { meanOf } from '#engine/numeric/total.ts'
import { remembered } from '#engine/rack/remembered.ts'
import { byTime } from '#engine/rack/trust-from.ts'
import type { HeightDeparture, Standing } from '#model/bar.ts'
import type { BarEvent } from '#model/bar-event.ts'
import type { Check, Reading } from '#model/check.ts'

/** The height a bar is taken to have, and what it rests on. */
export type Height = {
  readonly heightMm: number
  readonly standing: Standing
  /** Departures of the readings whose place along the bar is known, in the order of the stations. */
  readonly heightsUm: readonly HeightDeparture[]
  /** Standard uncertainty of the height, and the part of it that a bar read in the same check does not share; null: not known. */
  readonly uUm: number | null
  readonly uAloneUm: number | null
  /** The check it comes from, and when that was. */
  readonly check: string
  readonly atIso: string
}

/**
 * The height of a bar by its latest check that no other check replaces: the mean over its places, or of a check with either
 * face up the local height in the middle.
 *
 * A stated height is `marked`. So is a measured one once the bar was reground after that check: it is another bar then.
 *
 * @param checks    in any order; those without a reading of this bar are passed over
 * @param events    those of this bar that stand
 * @param lengthMm  of the bar
 * @returns         null without any reading
 */
export function heightFrom(bar: string, checks: readonly Check[], events: readonly BarEvent[], lengthMm: number | null): Height | null {
  const replaced = new Set(checks.map((check) => check.replaces))
  const own = checks.filter((check) => !replaced.has(check.id) && check.readings.some((reading) => reading.bar === bar))
  const latest = own.sort(byTime).at(-1)
  if (!latest) return null
  const regroundSince = events.some((event) => event.kind === 'reground' && byTime(event, latest) > 0)
  return { ...readFrom(latest, bar, lengthMm), standing: latest.method === 'stated' || regroundSince ? 'marked' : 'measured', check: latest.id, atIso: latest.atIso }
}

/** What one check says of a bar's height. */
const readFrom = remembered((check: Check, bar: string, lengthMm: number | null): Pick<Height, 'heightMm' | 'heightsUm' | 'uUm' | 'uAloneUm'> => {
  const readings = check.readings.filter((reading) => reading.bar === bar), stated = check.method === 'stated'
  const turned = check.method === 'turn-over' ? turnOverFrom(check, bar, lengthMm) : null
  const heightMm = turned?.heightAtMiddleMm ?? meanHeightMm(readings)!
  return {
    heightMm,
    heightsUm: stated ? [] : turned ? turnedDepartures(turned, heightMm - zeroMmOf(check)) : departures(readings, heightMm),
    ...(stated ? nothingKnown : heightUncertainty(check, bar, lengthMm, heightMm)),
  }
})

/** Of the places whose x somebody told, repeats and lines at one x taken together. */
function departures(readings: readonly Reading[], heightMm: number): readonly HeightDeparture[] {
  const told = readings.flatMap(({ xMm, heightMm: at }) => (xMm === null ? [] : [{ xMm, um: (at - heightMm) * 1000 }]))
  return [...new Set(told.map(({ xMm }) => xMm))].sort((a, b) => a - b).map((x) => [x, meanOf(told.filter(({ xMm }) => xMm === x).map(({ um }) => um))])
}

const turnedDepartures = ({ stationsMm, heightsUm }: TurnedOver, aboveZeroMm: number): readonly HeightDeparture[] =>
  (heightsUm ?? []).map((um, i) => [stationsMm[i]!, um - aboveZeroMm * 1000])

const nothingKnown = { uUm: null, uAloneUm: null }

/** Of the mean height; what mates of one check do not share is step, scatter and drift of the mean. */
function heightUncertainty(check: Check, bar: string, lengthMm: number | null, heightMm: number): Pick<Height, 'uUm' | 'uAloneUm'> {
  const budget = barUncertainty(check, bar, lengthMm, heightMm)?.height
  if (!budget) return nothingKnown
  const alone = budget.contributions.flatMap(({ name, u }) => (ownParts.has(name) ? [u] : []))
  return { uUm: budget.u * turnOverGrows(check.method), uAloneUm: Math.hypot(...alone) * turnOverGrows(check.method) }
}

const ownParts: ReadonlySet<string> = new Set(['reading step', 'repeats', 'drift'])
