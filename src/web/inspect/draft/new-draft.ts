import { suggestedStations } from '#engine/inspect/stations.ts'
import type { CheckMethod } from '#model/check-methods.ts'
import type { Check } from '#model/check.ts'
import type { CheckForm, DraftFields } from '#model/check-draft.ts'
import type { InstrumentIs, InstrumentRecord } from '#model/instrument-record.ts'
import type { LengthUnit } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'

/** What a check was most likely made with: as the last one of its method, or the only one there is. */
type Known = Pick<ShopSnapshot, 'checks' | 'instruments'>

/** A check nobody has begun yet, with what can be known beforehand filled in. `asked`: what differs. */
export function newForm(method: CheckMethod, unit: LengthUnit, known: Known, asked: Partial<CheckForm> = {}): CheckForm {
  const onPlate = method === 'compare' || method === 'turn-over', last = lastTook(method, known.checks)
  const blocksId = onPlate ? usual('gauge blocks', last?.blocks, known) : null
  return {
    method, unit, bars: [], stations: 3, places: [], lines: 1, repeats: 1,
    instrumentId: method === 'rock' ? null : usual(onPlate ? 'indicator' : 'micrometer', last?.instrument, known),
    plateId: onPlate ? usual('plate', last?.plate, known) : null, blocksId,
    zeroOn: 'block', zero: '', zeroBar: null, closing: '', temperature: '', asFound: false, replaces: null, note: '', ...asked,
  }
}

export function newDraft(form: CheckForm): DraftFields {
  return { form, typed: {}, looks: {}, state: 'open', checkId: null }
}

/** Stations as the longest of some bars asks for; what was chosen by hand stays. */
export function stationsFor(bars: readonly string[], { bars: records }: Pick<ShopSnapshot, 'bars'>): number | null {
  const lengths = records.filter(({ id }) => bars.includes(id)).map(({ lengthMm }) => lengthMm)
  return lengths.length === 0 ? null : suggestedStations(Math.max(...lengths))
}

/** Those that may be used; the retired ones stay in old checks. */
export function inUse<Is extends InstrumentIs['is']>(is: Is, instruments: readonly InstrumentRecord[]): readonly InstrumentRecord[] {
  return instruments.filter(({ figures, retired }) => figures.is === is && !retired)
}

function usual(is: InstrumentIs['is'], last: { readonly id: string | null } | null | undefined, { instruments }: Known): string | null {
  const own = inUse(is, instruments)
  return own.find(({ id }) => id === last?.id)?.id ?? (own.length === 1 ? own[0]!.id : null)
}

function lastTook(method: CheckMethod, checks: readonly Check[]): Check['took'] {
  return checks.reduce<Check | null>((latest, check) => (check.method === method && check.took !== null && (latest === null || check.atIso > latest.atIso) ? check : latest), null)?.took ?? null
}
