import type { InstrumentFields, InstrumentIs } from '#model/instrument-record.ts'
import { readLengthMm, readNumber, readSizeMm, wordLength, wordNumber } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { type Readers, readFields, readName, type Refused } from '#web/parts/read-fields.ts'

/** An instrument as typed; fields its kind does not have stay as they are and do not count. `grade` empty: none. */
export type InstrumentTexts = {
  readonly is: InstrumentIs['is']
  readonly name: string
  readonly resolution: string
  readonly limit: string
  readonly repeatability: string
  readonly from: string
  readonly to: string
  readonly grade: string
  readonly u: string
  readonly length: string
  readonly width: string
  readonly flatness: string
  readonly due: string
  readonly note: string
}

type Read = {
  name: string; resolutionUm: number; limitUm: number | null; repeatabilityUm: number | null; rangeFromMm: number; rangeToMm: number; grade: string | null
  uUm: number | null; lengthMm: number | null; widthMm: number | null; flatnessUm: number | null
}
export type InstrumentWrong = Refused<Read>

export const newInstrumentTexts = (is: InstrumentIs['is']): InstrumentTexts =>
  ({ is, name: '', resolution: '', limit: '', repeatability: '', from: '', to: '', grade: '', u: '', length: '', width: '', flatness: '', due: '', note: '' })

export function instrumentTexts({ name, figures, dueOn, note }: InstrumentFields, units: Units): InstrumentTexts {
  const um = (value: number | null) => (value === null ? '' : wordNumber(value, units.decimalMark, null, 4))
  const mm = (value: number | null) => (value === null ? '' : wordLength(value, units))
  const texts = { ...newInstrumentTexts(figures.is), name, due: dueOn ?? '', note }
  switch (figures.is) {
    case 'indicator': return { ...texts, resolution: um(figures.resolutionUm), limit: um(figures.limitUm), repeatability: um(figures.repeatabilityUm) }
    case 'micrometer': return { ...texts, resolution: um(figures.resolutionUm), limit: um(figures.limitUm), repeatability: um(figures.repeatabilityUm), from: figures.fromMm === 0 ? '0' : mm(figures.fromMm), to: mm(figures.toMm) }
    case 'gauge blocks': return { ...texts, grade: figures.grade ?? '', limit: um(figures.limitUm), u: um(figures.uUm) }
    case 'plate': return { ...texts, grade: figures.grade ?? '', length: mm(figures.lengthMm), width: mm(figures.widthMm), flatness: um(figures.flatnessUm) }
  }
}

/** The instrument that was typed, or every refusal. A text that is as it was before keeps its full digits. */
export function readInstrument(texts: InstrumentTexts, before: InstrumentFields | null, units: Units): { readonly values: Omit<InstrumentFields, 'retired'> } | { readonly refused: InstrumentWrong } {
  const read = readFields<Read>(readersOf(texts, before, units))
  if ('refused' in read) return read
  const { name, grade, limitUm, uUm, resolutionUm, repeatabilityUm, lengthMm, widthMm, flatnessUm, rangeFromMm: fromMm, rangeToMm: toMm } = read.values
  const figuresOf = (): InstrumentIs => {
    switch (texts.is) {
      case 'indicator': return { is: 'indicator', resolutionUm, limitUm, repeatabilityUm }
      case 'micrometer': return { is: 'micrometer', resolutionUm, limitUm, repeatabilityUm, fromMm, toMm }
      case 'gauge blocks': return { is: 'gauge blocks', grade, limitUm, uUm }
      case 'plate': return { is: 'plate', lengthMm, widthMm, grade, flatnessUm }
    }
  }
  return { values: { name, figures: figuresOf(), dueOn: texts.due === '' ? null : texts.due, note: texts.note } }
}

/** What of another kind of instrument was typed is not read. */
function readersOf(texts: InstrumentTexts, before: InstrumentFields | null, units: Units): Readers<Read> {
  const old = before && before.figures.is === texts.is ? { texts: instrumentTexts(before, units), figures: before.figures } : null
  const kept = (key: keyof InstrumentTexts, figure: string): number | null => {
    const value: unknown = old?.texts[key] === texts[key] && old !== null ? (old.figures as { readonly [figure: string]: unknown })[figure] : null
    return typeof value === 'number' ? value : null
  }
  const um = (key: keyof InstrumentTexts, figure: string) => (texts[key].trim() === '' ? null : kept(key, figure) ?? readUm(texts[key], figure))
  const mm = (key: keyof InstrumentTexts, figure: string, field: string) => kept(key, figure) ?? readSizeMm(texts[key], units.length, field)
  const { is } = texts, reads = is === 'indicator' || is === 'micrometer', hasSize = texts.length.trim() !== '' || texts.width.trim() !== '' || (is === 'plate' && texts.grade !== '')
  return {
    name: () => readName(texts.name, 'name'),
    resolutionUm: () => (reads ? above0(um('resolution', 'resolutionUm') ?? readUm('', 'resolutionUm'), texts.resolution, 'resolutionUm') : 1),
    limitUm: () => (is === 'plate' ? null : um('limit', 'limitUm')),
    repeatabilityUm: () => (reads ? um('repeatability', 'repeatabilityUm') : null),
    rangeFromMm: () => (is === 'micrometer' ? kept('from', 'fromMm') ?? notBelow0(readLengthMm(texts.from, units.length, 'rangeFromMm'), texts.from, 'rangeFromMm') : 0),
    rangeToMm: () => (is === 'micrometer' ? beyond(mm('to', 'toMm', 'rangeToMm'), texts, units) : 1),
    grade: () => texts.grade || null,
    uUm: () => (is === 'gauge blocks' ? um('u', 'uUm') : null),
    lengthMm: () => (is === 'plate' && hasSize ? mm('length', 'lengthMm', 'lengthMm') : null),
    widthMm: () => (is === 'plate' && hasSize ? mm('width', 'widthMm', 'widthMm') : null),
    flatnessUm: () => (is === 'plate' ? um('flatness', 'flatnessUm') : null),
  }
}

/**
 * A figure in µm as a hand types it: a bare number is in µm, one with a unit (`.0001"`) is in that.
 *
 * @throws Refusal as `readLengthMm`, and `size-not-positive` below 0
 */
export function readUm(text: string, field: string): number {
  const um = /[a-zµμ"″”']/i.test(text) ? readLengthMm(text, 'mm', field) * 1000 : readNumber(text, field)
  return notBelow0(um, text, field)
}

function notBelow0(value: number, given: string, field: string): number {
  if (value < 0) throw new Refusal('size-not-positive', { field, given, needed: { least: 0 } })
  return value
}

/** A range ends above its begin; one whose begin cannot be read is refused there. */
function beyond(toMm: number, { from, to }: InstrumentTexts, units: Units): number {
  const read = readFields({ fromMm: () => readLengthMm(from, units.length, 'rangeFromMm') })
  if ('values' in read && toMm <= read.values.fromMm) throw new Refusal('size-not-positive', { field: 'rangeToMm', given: to, needed: { moreMm: read.values.fromMm } })
  return toMm
}

function above0(value: number, given: string, field: string): number {
  if (value <= 0) throw new Refusal('size-not-positive', { field, given, needed: { above: 0 } })
  return value
}
