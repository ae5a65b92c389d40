import { readSizeMm } from '#model/length.ts'
import { isCode } from '#model/code.ts'
import type { LengthUnit } from '#model/length.ts'
import type { Complaint } from '#model/rack-import.ts'
import { Refusal } from '#model/refusal.ts'
import type { Column, ColumnName, Columns, SizeName } from '#tasks/rack/csv-columns.ts'
import { unguarded } from '#tasks/rack/csv-guard.ts'
import type { CsvRecord } from '#tasks/rack/csv-records.ts'

/** A bar as a line of the file gives it; no code where it gives none. */
export type CsvBar = {
  readonly line: number
  readonly code: string
  readonly name: string
  readonly heightMm: number
  readonly heightText: string
  readonly thicknessMm: number
  readonly lengthMm: number
  readonly mates: string
  readonly slot: string
  readonly drillBar: boolean
  readonly note: string
}

export type CsvBars = { readonly bars: readonly CsvBar[]; readonly complaints: readonly Complaint[] }

/** What the lines before have settled: the unit of each column and where, and the line of each code. */
type Sheet = {
  readonly columns: Columns
  readonly cellCount: number
  readonly unit: LengthUnit
  readonly unitOf: Map<Column, { readonly unit: LengthUnit; readonly line: number }>
  readonly lineOfCode: Map<string, number>
}

/** States a bar may come in with; none is ever trusted by being in a file. */
const states = ['look first', 'drill bar']
const longest: { readonly [Name in ColumnName]?: number } = { name: 40, mates: 40, slot: 20, note: 2000 }

/**
 * Every line as a bar, or everything that is amiss with it.
 *
 * @param head  the record of the heads; `unit` what sizes are in where nothing says so
 */
export function csvBarsFrom(records: readonly CsvRecord[], head: CsvRecord, columns: Columns, unit: LengthUnit): CsvBars {
  const sheet: Sheet = { columns, cellCount: head.cells.length, unit, unitOf: new Map(), lineOfCode: new Map() }
  const read = records.map((record) => barOn(record, sheet))
  return { bars: read.flatMap(({ bar, complaints }) => (complaints.length > 0 || bar === null ? [] : [bar])), complaints: read.flatMap(({ complaints }) => complaints) }
}

function barOn({ line, cells }: CsvRecord, sheet: Sheet): { readonly bar: CsvBar | null; readonly complaints: readonly Complaint[] } {
  const complaints: Complaint[] = []
  const complain = (column: Column | undefined, code: string, given: string, needed: Complaint['needed'] = null) => {
    complaints.push({ line, column: column?.head ?? null, code, given: given === '' ? null : given.slice(0, 60), needed })
  }
  const { columns, headless } = sheet.columns
  if (cells.length !== sheet.cellCount) { complain(undefined, 'cells-miscounted', `${cells.length}`, sheet.cellCount); return { bar: null, complaints } }
  for (const at of headless) if (cells[at]!.trim() !== '') complain(undefined, 'cell-without-head', cells[at]!)

  const cellOf = (name: ColumnName) => (columns[name] ? cells[columns[name].at]!.trim() : '')
  const textOf = (name: ColumnName): string => {
    const text = unguarded(cellOf(name)), most = longest[name]
    if (most !== undefined && text.length > most) complain(columns[name], 'text-too-long', `${text.length}`, most)
    return text
  }
  const sizeOf = (name: SizeName): number => {
    const column = columns[name], text = cellOf(name)
    if (!column) return Number.NaN
    try {
      const mm = readSizeMm(text, column.unit ?? sheet.unit, name)
      const own = unitIn(text) ?? column.unit ?? sheet.unit
      const first = sheet.unitOf.get(column) ?? { unit: column.unit ?? own, line: column.unit === null ? line : sheet.columns.line }
      sheet.unitOf.set(column, first)
      if (own !== first.unit) complain(column, 'mixed-units', text, first)
      return mm
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      complain(column, error.code, text, error.facts.needed ?? null)
      return Number.NaN
    }
  }
  const codeOf = (): string => {
    const code = cellOf('code').toUpperCase(), before = sheet.lineOfCode.get(code)
    if (code === '') return code
    if (!isCode(code)) complain(columns.code, 'code-unreadable', code)
    else if (before !== undefined) complain(columns.code, 'code-twice', code, before)
    else sheet.lineOfCode.set(code, line)
    return code
  }
  const stateOf = (): string => {
    const state = cellOf('state').toLowerCase()
    if (state !== '' && !states.includes(state)) complain(columns.state, 'unknown-word', state, states)
    return state
  }
  const bar: CsvBar = {
    line, code: codeOf(), name: textOf('name'), heightMm: sizeOf('height'), heightText: cellOf('height'), thicknessMm: sizeOf('thickness'),
    lengthMm: sizeOf('length'), mates: textOf('mates'), slot: textOf('slot'), drillBar: stateOf() === 'drill bar', note: textOf('note'),
  }
  return { bar, complaints }
}

/** The system of units a text names; null for a bare number. A bare fraction is inches, as everywhere. */
function unitIn(text: string): LengthUnit | null {
  if (/[a-zµμ]m$/i.test(text)) return 'mm'
  return /(in|inch|inches|thou|["″”]|'')$/i.test(text) || /[/⁄½¼¾⅛⅜⅝⅞]/.test(text) ? 'in' : null
}
