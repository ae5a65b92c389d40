import type { LengthUnit } from '#model/length.ts'
import type { Complaint } from '#model/rack-import.ts'
import type { CsvRecord } from '#tasks/rack/csv-records.ts'

export const columnNames = ['code', 'name', 'height', 'thickness', 'length', 'mates', 'slot', 'state', 'note'] as const
export type ColumnName = (typeof columnNames)[number]

export const sizeNames = ['height', 'thickness', 'length'] as const
export type SizeName = (typeof sizeNames)[number]

/** A column of the file: its head as written, and the unit its head names. */
export type Column = { readonly at: number; readonly head: string; readonly unit: LengthUnit | null }

export type Columns = {
  /** The line of the heads. */
  readonly line: number
  readonly columns: { readonly [Name in ColumnName]?: Column }
  readonly width: boolean
  /** Columns without a head, as some programs leave at the end; nothing may stand in them. */
  readonly headless: readonly number[]
  readonly complaints: readonly Complaint[]
}

/** Which column is which, by the first record. `width` is taken for the height, as boxes print it. */
export function columnsFrom({ line, cells }: CsvRecord): Columns {
  const columns: { [Name in ColumnName]?: Column } = {}
  const complaints: Complaint[] = []
  const headless: number[] = []
  let width = false
  cells.forEach((cell, at) => {
    const head = cell.trim().slice(0, 60)
    if (head === '') { headless.push(at); return }
    const { word, unit } = headOf(head)
    const name = columnNames.find((one) => one === (word === 'width' ? 'height' : word))
    if (name === undefined || (unit !== null && !(sizeNames as readonly string[]).includes(name))) {
      complaints.push({ line, column: head, code: 'column-unknown', given: head, needed: [...columnNames] })
    } else if (columns[name]) complaints.push({ line, column: head, code: 'column-twice', given: columns[name].head, needed: name })
    else {
      columns[name] = { at, head, unit }
      width ||= word === 'width'
    }
  })
  for (const name of sizeNames) {
    if (!columns[name]) complaints.push({ line, column: null, code: 'column-missing', given: null, needed: name })
  }
  return { line, columns, width, headless, complaints }
}

/** `Height (mm)`, `height_mm`, `height [in]`, `height in` → the word and the unit. */
function headOf(head: string): { readonly word: string; readonly unit: LengthUnit | null } {
  const plain = head.toLowerCase().replaceAll(/[_()[\]]+/g, ' ').trim()
  const parts = /^(\S+?)\s*(?:\s(mm|in|inch|inches)|(″|"))?$/.exec(plain)
  if (!parts) return { word: plain, unit: null }
  const unit = parts[2] ?? parts[3]
  return { word: parts[1]!, unit: unit === undefined ? null : unit === 'mm' ? 'mm' : 'in' }
}
