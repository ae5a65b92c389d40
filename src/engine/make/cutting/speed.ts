import type { CutterData } from '#model/cutting-data.ts'
import type { Finding } from '#model/finding.ts'
import { rpmFor, speedAt } from '#engine/make/cutting/rates.ts'

/** What a spindle and a table can do; null: no limit known. `speedsRpm`: the steps of a gearbox, else anything between least and most. */
export type Machine = {
  readonly leastRpm: number | null
  readonly mostRpm: number | null
  readonly speedsRpm: readonly number[] | null
  readonly powerKw: number | null
  /** Of the motor's power so much arrives at the cutter. */
  readonly efficiency: number
  readonly mostFeedMmPerMin: number | null
}

export type Speed = { readonly rpm: number; readonly mPerMin: number; readonly wantedRpm: number; readonly findings: readonly Finding[] }

/**
 * Spindle speed: the one told, or the one for the wanted cutting speed, as near below as the machine has it.
 *
 * A speed below the usual range is legal: it takes longer, and is said.
 */
export function spindleSpeed(wantedMPerMin: number, askedRpm: number | null, diameterMm: number, machine: Machine, data: CutterData | null): Speed {
  const wantedRpm = askedRpm ?? rpmFor(wantedMPerMin, diameterMm), rpm = atMachine(wantedRpm, machine), mPerMin = speedAt(rpm, diameterMm)
  const limited = rpm < wantedRpm - 1e-9 ? [{ code: 'speed-limited', facts: { rpm, wantedRpm } }] : rpm > wantedRpm + 1e-9 ? [{ code: 'speed-too-fast', facts: { rpm, wantedRpm } }] : []
  const facts = { mPerMin, rpm, fromMPerMin: data?.fromMPerMin ?? null, toMPerMin: data?.toMPerMin ?? null }
  const off = data === null ? [] : mPerMin < data.fromMPerMin * (1 - 1e-9) ? [{ code: 'speed-slow', facts }] : mPerMin > data.toMPerMin * (1 + 1e-9) ? [{ code: 'speed-fast', facts }] : []
  return { rpm, mPerMin, wantedRpm, findings: [...limited, ...off] }
}

function atMachine(wantedRpm: number, { leastRpm, mostRpm, speedsRpm }: Machine): number {
  if (speedsRpm === null) return Math.max(leastRpm ?? 0, Math.min(wantedRpm, mostRpm ?? Infinity))
  const rising = speedsRpm.toSorted((a, b) => a - b)
  return rising.findLast((rpm) => rpm <= wantedRpm * (1 + 1e-9)) ?? rising[0]!
}
