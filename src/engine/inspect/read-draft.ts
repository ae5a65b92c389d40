import type { Look, Reading, Zero } from '#model/check.ts'
import type { DraftFields } from '#model/check-draft.ts'
import type { Finding } from '#model/finding.ts'
import { readLengthMm, readNumber, readSizeMm } from '#model/length.ts'
import { type Facts, Refusal } from '#model/refusal.ts'
import { type Cell, cellsOf } from '#engine/inspect/cells.ts'
import { aboveUm, type CheckBody, zeroMmOf } from '#engine/inspect/check-readings.ts'
import { type Checked, checkedOf } from '#engine/inspect/checked.ts'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import { askedOfReading, type BareUnit, bareUnitOf, readDepartureUm } from '#engine/inspect/read-reading.ts'
import { stationPlacesMm } from '#engine/inspect/stations.ts'
import { tookFrom } from '#engine/inspect/took-from.ts'
import { unitSlipOf } from '#engine/inspect/unit-slip.ts'

/** A half-done check as it is being typed. */
export type TypedCheck = Pick<DraftFields, 'form' | 'typed' | 'looks'>

/** What is wrong with a field, or to be asked about it: worded at the door. */
export type Said = Finding

/** A cell with what its text means. `um` counts from the zero, or from the first reading where there is none. */
export type ReadCell = {
  readonly cell: Cell
  readonly text: string
  readonly um: number | null
  readonly heightMm: number | null
  readonly wrong: Said | null
  readonly asks: Said | null
}

export type DraftRead = {
  /** In the order of entry. */
  readonly cells: readonly ReadCell[]
  /** What is wrong outside the cells, by field: `zero`, `closing`, `temperature`, `places[2]`, `looks.<bar>.feeler`, `bars[0].length`. */
  readonly wrong: { readonly [field: string]: Said }
  /** What a number without a unit means in a cell. */
  readonly bareUnit: BareUnit
  /** What `um` counts from; null: nothing was read yet. */
  readonly zeroMm: number | null
  /** What the readings so far say; null without any. */
  readonly answer: Checked | null
}

/** What a hand has typed so far, read cell by cell; never throws for it. */
export function readDraft(draft: TypedCheck, facts: InspectFacts): DraftRead {
  const { cells, wrong, bareUnit, body } = gather(draft, facts), zeroMm = body.readings.length > 0 || body.zero ? zeroMmOf(body) : null
  const answer = body.readings.length + body.looks.length === 0 ? null
    : checkedOf({ ...body, atIso: facts.today }, { limitsUm: facts.limitsUm, lengthMmOf: (bar) => lengthMmOf(draft, facts, bar) })
  return { cells: cells.map((cell) => ({ ...cell, um: cell.heightMm === null || zeroMm === null ? cell.um : aboveUm(cell.heightMm, zeroMm) })), wrong, bareUnit, zeroMm, answer }
}

/**
 * A finished check out of what was typed. Cells of further repeats may be empty; each place needs one reading.
 *
 * @throws Refusal with what is wrong first, of a cell with its key in `cell`; `reading-missing`; `too-few-bars`; `nothing-checked`
 */
export function checkFromDraft(draft: TypedCheck, facts: InspectFacts): CheckBody {
  const { cells, wrong, body } = gather(draft, facts)
  if (draft.form.bars.length === 0) throw new Refusal('too-few-bars', { field: 'bars', given: 0, needed: 1 })
  for (const said of [...Object.values(wrong), ...cells.flatMap((cell) => cell.wrong ?? [])]) throw new Refusal(said.code, said.facts)
  const read = new Set(body.readings.map(placeOf)), missing = cells.find(({ cell }) => !read.has(placeOf(cell)))
  if (missing) {
    const { key, bar, station, line, face } = missing.cell
    throw new Refusal('reading-missing', { field: 'readings', given: body.readings.length, needed: cells.length, cell: key, bar, station, line, face })
  }
  if (body.readings.length + body.looks.length === 0) throw new Refusal('nothing-checked', { field: 'looks', given: 0, needed: 1 })
  return body
}

type Gathered = { readonly cells: readonly ReadCell[]; readonly wrong: { readonly [field: string]: Said }; readonly bareUnit: BareUnit; readonly body: CheckBody }

function gather(draft: TypedCheck, facts: InspectFacts): Gathered {
  const { form } = draft, wrong: { [field: string]: Said } = {}
  const tried = <Value>(field: string, read: () => Value): Value | null => {
    const [value, said] = attempt(read)
    if (said) wrong[field] = said
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
    return [bar, lengthMm === null || form.method === 'stated' ? null : tried(`places`, () => stationPlacesMm(form, lengthMm))] as const
  }))
  const read = cellsOf(form).map((cell): ReadCell => {
    const text = draft.typed[cell.key] ?? '', nothing = { cell, text, um: null, heightMm: null, wrong: null, asks: null }
    if (text.trim() === '') return nothing
    const [value, said] = attempt(() => (onPlate ? readDepartureUm(text, bareUnit, 'reading') : readSizeMm(text, form.unit, 'reading')))
    if (value === null) return { ...nothing, wrong: said && { code: said.code, facts: { ...said.facts, cell: cell.key } } }
    if (!onPlate) return { ...nothing, heightMm: value }
    const heightMm = zero === null ? null : zero.heightMm + value / 1000
    if (heightMm !== null && heightMm <= 0) return { ...nothing, wrong: { code: 'size-not-positive', facts: { field: 'reading', given: text, needed: { aboveMm: 0 }, cell: cell.key } } }
    return { ...nothing, um: value, heightMm, asks: askedOfReading(text, value, bareUnit, resolutionUm, zero?.heightMm ?? null) }
  })
  const readings = read.flatMap(({ cell, text, heightMm }): Reading[] => (heightMm === null ? [] : [{
    bar: cell.bar, station: cell.station, xMm: places.get(cell.bar)?.[cell.station] ?? null, line: cell.line, face: cell.face, text, heightMm,
  }]))
  return {
    cells: askedOfNeighbours(read, draft, facts), wrong, bareUnit,
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

/** Heights and readings that are a slip of the unit away from what else is known of their bar. */
function askedOfNeighbours(cells: readonly ReadCell[], { form }: TypedCheck, { heights }: InspectFacts): readonly ReadCell[] {
  const onPlate = form.method === 'compare' || form.method === 'turn-over'
  return cells.map((one) => {
    const value = onPlate ? one.um : one.heightMm
    if (value === null || one.asks) return one
    const others = cells.flatMap((other) => (other === one || (onPlate && (other.cell.bar !== one.cell.bar || other.cell.face !== one.cell.face)) ? [] : (onPlate ? other.um : other.heightMm) ?? []))
    const known = onPlate ? [] : heights(one.cell.bar)?.heightMm ?? []
    const neighbours = onPlate ? others : [known].flat().length > 0 ? [known].flat() : others, factor = unitSlipOf(value, neighbours)
    if (factor === null || (onPlate && Math.min(...others.map((other) => Math.abs(other - value))) < slipToldUm)) return one
    const meant = value / factor
    return { ...one, asks: onPlate
      ? { code: 'reading-unit-slip', facts: { readingUm: value, factor, meantUm: meant, meant: `${meant > 0 ? '+' : ''}${shown(meant)} µm` } }
      : { code: 'height-unit-slip', facts: { heightMm: value, factor, meantMm: meant, meant: `${shown(meant)} mm` } } }
  })
}

/** µm. Around zero readings differ by large factors; nearer to a neighbour than this none is asked about. Common practice, no source. */
const slipToldUm = 2

const shown = (value: number): string => String(Math.round(value * 1e4) / 1e4)

/** Length of a bar of the draft: of its record, or as typed for a new one; null: not told. */
function barLengthMm({ form }: TypedCheck, { bars }: InspectFacts, bar: string, field: string): number | null {
  const own = form.bars.find((one) => one.bar === bar)
  if (!own?.isNew) return bars.find(({ id }) => id === bar)?.lengthMm ?? null
  return own.length.trim() === '' ? null : readSizeMm(own.length, form.unit, field)
}

const lengthMmOf = (draft: TypedCheck, facts: InspectFacts, bar: string): number | null => attempt(() => barLengthMm(draft, facts, bar, 'length'))[0]

const placeOf = ({ bar, line, face, station }: Pick<Cell, 'bar' | 'line' | 'face' | 'station'>): string => `${bar}/${line}/${face}/${station}`

function attempt<Value>(read: () => Value): readonly [Value | null, Said | null] {
  try {
    return [read(), null]
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    return [null, { code: error.code, facts: error.facts satisfies Facts }]
  }
}
