import { bareUnitOf, readDepartureUm } from '#engine/inspect/read-reading.ts'
import { evenly } from '#engine/inspect/stations.ts'
import { attemptOr } from '#model/attempt.ts'
import type { Check, Reading } from '#model/check.ts'
import type { CheckForm, DraftFields } from '#model/check-draft.ts'
import { type LengthUnit, readLengthMm, wordLength } from '#model/length.ts'

/** A kept check opened again to be put right: every text as it was typed. What comes of it names the check it replaces. */
export function draftFromCheck(check: Check, lengthMmOf: (bar: string) => number | null): DraftFields {
  const { method, readings, zero, closing, temperature, took, looks, asFound, note } = check, unit = unitOf(check)
  const bars = [...new Set([...readings, ...looks].map(({ bar }) => bar))], keys = keyed(readings)
  const form: CheckForm = {
    method, unit, asFound, note, replaces: check.id,
    bars: bars.map((bar) => ({ bar, isNew: false, name: '', thickness: '', length: '' })),
    stations: Math.max(0, ...readings.map(({ station }) => station)) + 1, places: placesOf(check, unit, lengthMmOf),
    lines: readings.some(({ line }) => line === 1) ? 2 : 1, repeats: Math.max(0, ...keys.map(({ repeat }) => repeat)) + 1,
    instrumentId: took?.instrument?.id ?? null, plateId: took?.plate?.id ?? null, blocksId: took?.blocks?.id ?? null,
    zeroOn: zero?.on ?? 'block', zero: zero?.text ?? '', zeroBar: zero?.on === 'bar' ? zero.bar : null,
    closing: closing?.text ?? '', temperature: temperature?.text ?? '',
  }
  return {
    form, state: 'open', checkId: null, typed: Object.fromEntries(keys.map(({ key, text }) => [key, text])),
    looks: Object.fromEntries(looks.map(({ bar, wiped, stoned, rock, feelerText, seen }) => [bar, { wiped, stoned, rock, feeler: feelerText, seen }])),
  }
}

/** Readings of one place follow each other: the how-manieth of them makes the repeat. */
function keyed(readings: readonly Reading[]): readonly { readonly key: string; readonly repeat: number; readonly text: string }[] {
  const seen = new Map<string, number>()
  return readings.map(({ bar, line, face, station, text }) => {
    const place = `${bar}/${line}/${face}/${station}`, repeat = seen.get(place) ?? 0
    seen.set(place, repeat + 1)
    return { key: `${place}/${repeat}`, repeat, text }
  })
}

/** Empty where the stations were spread evenly. */
function placesOf({ readings }: Check, unit: LengthUnit, lengthMmOf: (bar: string) => number | null): string[] {
  const [first] = readings, lengthMm = first ? lengthMmOf(first.bar) : null
  if (!first || lengthMm === null) return []
  const xs = new Map(readings.filter(({ bar }) => bar === first.bar).map(({ station, xMm }) => [station, xMm])), stations = Math.max(...readings.map(({ station }) => station)) + 1
  const even = evenly(stations, lengthMm)
  if (even.every((x, at) => (xs.get(at) ?? x) === null || Math.abs((xs.get(at) ?? x) - x) < 1e-6)) return []
  return even.map((x, at) => wordLength(xs.get(at) ?? x, { length: unit, decimalMark: '.' }, { fractions: false }))
}

/** What its texts were typed in: the unit in which every one of them says what was kept of it. */
function unitOf(check: Check): LengthUnit {
  return inUnit(check, 'mm') ? 'mm' : 'in'
}

function inUnit({ method, zero, readings, took }: Check, unit: LengthUnit): boolean {
  const bare = bareUnitOf({ method, unit }, took?.readWith.resolutionUm ?? null)
  return attemptOr(() => (zero === null || zero.text.trim() === '' || near(readLengthMm(zero.text, unit), zero.heightMm))
    && readings.every(({ text, heightMm }) => near(zero === null ? readLengthMm(text, unit) : zero.heightMm + readDepartureUm(text, bare, 'reading') / 1000, heightMm)), false)
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6
