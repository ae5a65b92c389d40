import { isCode } from '#model/code.ts'
import type { LengthUnit } from '#model/length.ts'
import type { Complaint } from '#model/rack-import.ts'
import { Refusal } from '#model/refusal.ts'
import { type Column, type ColumnName, type Columns } from '#tasks/rack/csv-columns.ts'
import { unguarded } from '#tasks/rack/csv-guard.ts'
import type { CsvRecord } from '#tasks/rack/csv-records.ts'
import { readSizeMm } from '#tasks/rack/read-size.ts'

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

/** States a bar may come in with; none is ever trusted by being in a file. */
const states = ['look first', 'drill bar']
const longest: { readonly [Name in ColumnName]?: number } = { name: 40, mates: 40, slot: 20, note: 2000 }

/** Every line as a bar, or everything that is amiss with it. `unit` is what sizes are in where nothing says so. */
export function csvBarsFrom(records: readonly CsvRecord[], { columns, headless }: Columns, count: number, unit: LengthUnit): CsvBars {
  const complaints: Complaint[] = []
  const bars: CsvBar[] = []
  const unitOfColumn = new Map<Column, { readonly unit: LengthUnit; readonly line: number }>()
  const lineOfCode = new Map<string, number>()
  for (const { line, cells } of records) {
    const before = complaints.length
    const complain = (column: Column | undefined, code: string, given: string | null, needed: Complaint['needed']) =>
      complaints.push({ line, column: column?.head ?? null, code, given: given === null ? null : given.slice(0, 60), needed })
    const textOf = (name: ColumnName): string => {
      const column = columns[name], most = longest[name]
      const text = column ? unguarded((cells[column.at] ?? '').trim()) : ''
      if (most !== undefined && text.length > most) complain(column, 'text-too-long', `${text.length}`, most)
      return text
    }
    const sizeOf = (name: 'height' | 'thickness' | 'length'): number => {
      const column = columns[name]
      if (!column) return Number.NaN
      const text = (cells[column.at] ?? '').trim(), said = unitIn(text)
      try {
        const mm = readSizeMm(text, column.unit ?? unit, name)
        const own = said ?? column.unit ?? unit
        const first = unitOfColumn.get(column) ?? { unit: column.unit ?? own, line: column.unit === null ? line : 1 }
        unitOfColumn.set(column, first)
        if (own !== first.unit) complain(column, 'mixed-units', text, { unit: first.unit, line: first.line })
        return mm
      } catch (error) {
        if (!(error instanceof Refusal)) throw error
        complain(column, error.code, text === '' ? null : text, error.facts.needed ?? null)
        return Number.NaN
      }
    }
    if (cells.length !== count) { complain(undefined, 'cells-miscounted', `${cells.length}`, count); continue }
    for (const at of headless) if (cells[at]!.trim() !== '') complain(undefined, 'cell-without-head', cells[at]!, null)
    const heightMm = sizeOf('height'), thicknessMm = sizeOf('thickness'), lengthMm = sizeOf('length')
    const code = textOf('code').toUpperCase(), state = textOf('state').toLowerCase()
    if (code !== '' && !isCode(code)) complain(columns.code, 'code-unreadable', code, null)
    else if (lineOfCode.has(code)) complain(columns.code, 'code-twice', code, lineOfCode.get(code)!)
    else if (code !== '') lineOfCode.set(code, line)
    if (state !== '' && !states.includes(state)) complain(columns.state, 'unknown-word', state, states)
    const bar: CsvBar = {
      line, code, name: textOf('name'), heightMm, heightText: (cells[columns.height?.at ?? -1] ?? '').trim(), thicknessMm, lengthMm,
      mates: textOf('mates'), slot: textOf('slot'), drillBar: state === 'drill bar', note: textOf('note'),
    }
    if (complaints.length === before) bars.push(bar)
  }
  return { bars, complaints }
}

/** The system of units a text names; null for a bare number. A bare fraction is inches, as everywhere. */
function unitIn(text: string): LengthUnit | null {
  if (/([cµμu]?m|mm)$/i.test(text)) return 'mm'
  return /(in|inch|inches|thou|["″”]|'')$/i.test(text) || /[/⁄½¼¾⅛⅜⅝⅞]/.test(text) ? 'in' : null
}
