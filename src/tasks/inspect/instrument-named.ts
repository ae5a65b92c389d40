import type { InstrumentIs, InstrumentRecord } from '#model/instrument-record.ts'
import { Refusal } from '#model/refusal.ts'

/**
 * The id of an instrument given by its id or name, large or small letters; null where none is given.
 *
 * @param kinds  what it may be
 * @throws Refusal `instrument-not-known` with those there are
 */
export function instrumentNamed(instruments: readonly InstrumentRecord[], given: string | undefined, field: string, kinds: readonly InstrumentIs['is'][]): string | null {
  if (given === undefined || given.trim() === '') return null
  const fit = instruments.filter(({ figures, retired }) => !retired && kinds.includes(figures.is)), text = given.trim()
  const named = fit.find(({ id }) => id === text) ?? fit.find(({ name }) => name.toLowerCase() === text.toLowerCase())
  if (!named) throw new Refusal('instrument-not-known', { field, given: text.slice(0, 80), needed: fit.map(({ name }) => name) })
  return named.id
}
