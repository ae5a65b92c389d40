import type { Look, Reading, Zero } from '#model/check.ts'
import type { Finding } from '#model/finding.ts'
import { readLengthMm, readNumber, readSizeMm } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import { askHeights, askReadings } from '#engine/inspect/ask-neighbours.ts'
import { readOrFinding } from '#engine/inspect/read-or-finding.ts'
import { cellsOf } from '#engine/inspect/cells.ts'
import type { CheckBody } from '#engine/inspect/check-readings.ts'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import type { ReadCell, TypedCheck } from '#engine/inspect/read-cell.ts'
import { askedOfReading, type BareUnit, bareUnitOf, readDepartureUm } from '#engine/inspect/read-reading.ts'
import { stationPlacesMm } from '#engine/inspect/stations.ts'
import { tookFrom } from '#engine/inspect/took-from.ts'

/** All of a draft as read: cells in the order of entry, what is wrong by field, and the check it would make. */
export type Gathered = { readonly cells: readonly ReadCell[]; readonly wrong: { readonly [field: string]: Finding }; readonly bareUnit: BareUnit; readonly body: CheckBody }

/** Reads every field of a draft and keeps what is wrong beside what could be read. @param counts  which of the readings go into the check */
export function gatherDraft(draft: TypedCheck, facts: InspectFacts, counts: (cell: ReadCell) => boolean = () => true): Gathered {
  const { form } = draft, wrong: { [field: string]: Finding } = {}
  const tried = <Value>(field: string, read: () => Value): Value | null => {
    const [value, said] = readOrFinding(read)
    if (said) wrong[typeof said.facts.field === 'string' ? said.facts.field : field] = said
    return value
  }
  const typed = <Value>(field: string, text: string, read: (text: string) => Value): { text: string; value: Value } | null => {
    const value = text.trim() === '' ? null : tried(field, () => read(text))
    return value === null ? null : { text, value }
  }
  const gauge = facts.instruments.find(({ id }) => id === form.instrumentId)?.figures
  const resolutionUm = gauge && 'resolutionUm' in gauge ? gauge.resolutionUm : null, bareUnit = bareUnitOf(form, resolutionUm)
  const onPlate = form.method === 'compare' || form.method === 'turn-over'
  const zero = onPlate ? tried('zero', () => zeroFrom(draft, facts)) : null
  const closing = onPlate ? typed('closing', form.closing, (text) => readDepartureUm(text, bareUnit, 'closing')) : null
  const temperature = typed('temperature', form.temperature, (text) => readNumber(text.replace(/\s*°?\s*C?\s*$/i, ''), 'temperature'))
  const places = new Map(form.bars.map(({ bar }, i) => {
    const lengthMm = tried(`bars[${i}].length`, () => barLengthMm(draft, facts, bar, `bars[${i}].length`))
    return [bar, lengthMm === null || form.method === 'stated' ? null : tried('places', () => stationPlacesMm(form, lengthMm))] as const
  }))
  const read = cellsOf(form).map((cell): ReadCell => {
    const text = draft.typed[cell.key] ?? '', nothing = { cell, text, um: null, heightMm: null, wrong: null, asks: null }
    if (text.trim() === '') return nothing
    const [value, said] = readOrFinding(() => (onPlate ? readDepartureUm(text, bareUnit, 'reading') : readSizeMm(text, form.unit, 'reading')))
    if (value === null) return { ...nothing, wrong: said && { code: said.code, facts: { ...said.facts, cell: cell.key } } }
    if (!onPlate) return { ...nothing, heightMm: value }
    const heightMm = zero === null ? null : zero.heightMm + value / 1000
    if (heightMm !== null && heightMm <= 0) return { ...nothing, wrong: { code: 'size-not-positive', facts: { field: 'reading', given: text, needed: { aboveMm: 0 }, cell: cell.key } } }
    return { ...nothing, um: value, heightMm, asks: askedOfReading(text, value, bareUnit, resolutionUm, zero?.heightMm ?? null) }
  })
  const cells = onPlate ? askReadings(read) : askHeights(read, gauge ?? null, facts.heights, form.unit)
  const readings = cells.filter(counts).flatMap(({ cell, text, heightMm }): Reading[] => (heightMm === null ? [] : [{
    bar: cell.bar, station: cell.station, xMm: places.get(cell.bar)?.[cell.station] ?? null, line: cell.line, face: cell.face, text, heightMm,
  }]))
  return {
    cells, wrong, bareUnit,
    body: {
      method: form.method, replaces: form.replaces, readings, zero,
      closing: closing && { text: closing.text, um: closing.value },
      temperature: temperature && { text: temperature.text, c: temperature.value },
      took: tookFrom(form, zero?.heightMm ?? null, temperature?.value ?? null, facts),
      looks: form.bars.flatMap(({ bar }) => tried(`looks.${bar}.feeler`, () => lookFrom(draft, bar)) ?? []),
      asFound: form.asFound, note: form.note,
    },
  }
}

/** What it was zeroed on: the block's height as typed, or a bar at its middle station with the height it is taken to have. */
function zeroFrom({ form }: TypedCheck, { heights }: InspectFacts): Zero | null {
  if (form.zeroOn === 'block') return { on: 'block', heightMm: readSizeMm(form.zero, form.unit, 'zero'), text: form.zero }
  if (form.zeroBar === null) throw new Refusal('field-missing', { field: 'zeroBar', given: null, needed: 'a bar' })
  const heightMm = form.zero.trim() === '' ? heights(form.zeroBar)?.heightMm : readSizeMm(form.zero, form.unit, 'zero')
  if (heightMm === undefined) throw new Refusal('field-missing', { field: 'zero', given: null, needed: 'number' })
  return { on: 'bar', bar: form.zeroBar, station: Math.floor(form.stations / 2), heightMm, text: form.zero }
}

/** A look is kept once anything of it was ticked, tried or typed. */
function lookFrom({ form, looks }: TypedCheck, bar: string): Look | null {
  const look = looks[bar]
  if (!look || !(look.wiped || look.stoned || look.rock !== 'not tried' || look.seen.length > 0 || look.feeler.trim() !== '')) return null
  const { feeler, ...rest } = look, field = `looks.${bar}.feeler`
  const feelerUm = feeler.trim() === '' ? null : Math.round(readLengthMm(feeler, form.unit, field) * 1e9) / 1e6
  if (feelerUm !== null && (feelerUm < 0 || feelerUm > thickestFeelerUm)) throw new Refusal('feeler-out-of-range', { field, given: feeler, needed: { leastMm: 0, mostMm: thickestFeelerUm / 1000 } })
  return { bar, ...rest, feelerText: feeler, feelerUm }
}

/** µm. Common practice, no source. */
const thickestFeelerUm = 2000

/** Length of a bar of the draft: of its record, or as typed for a new one; null: not told. */
export function barLengthMm({ form }: TypedCheck, { bars }: InspectFacts, bar: string, field: string): number | null {
  const own = form.bars.find((one) => one.bar === bar)
  if (!own?.isNew) return bars.find(({ id }) => id === bar)?.lengthMm ?? null
  return own.length.trim() === '' ? null : readSizeMm(own.length, form.unit, field)
}
